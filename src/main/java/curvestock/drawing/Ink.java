package curvestock.drawing;

/**
 * The few colours of our drawings; all of them differ in black and white too, by line and shade.
 */
public final class Ink {

  public static final String CUT = "#000000";
  public static final String PIECE = "#f3efe6";
  public static final String MARK = "#1f5f8b";
  public static final String LABEL = "#000000";
  public static final String SHEET = "#6b6b6b";
  public static final String DEFECT = "#b5b5b5";

  private Ink() {}
}
