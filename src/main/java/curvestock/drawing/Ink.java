package curvestock.drawing;

/**
 * The few colours of our drawings; all of them differ in black and white too, by line and shade.
 */
final class Ink {

  static final String CUT = "#000000";
  static final String PIECE = "#f3efe6";
  static final String MARK = "#1f5f8b";
  static final String LABEL = "#000000";
  static final String SHEET = "#6b6b6b";
  static final String DEFECT = "#b5b5b5";

  private Ink() {}
}
