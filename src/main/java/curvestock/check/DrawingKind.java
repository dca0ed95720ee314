package curvestock.check;

/** The forms in which one sheet is drawn; by what they say of themselves. */
public enum DrawingKind {
  /** An SVG for people, with a title block round the sheet. */
  ANNOTATED("drawings for people (SVG)"),
  /** An SVG for a machine, exactly as large as the sheet. */
  MACHINE_SVG("cut files (SVG)"),
  /** A DXF, always for a machine. */
  DXF("cut files (DXF)");

  private final String words;

  DrawingKind(String words) {
    this.words = words;
  }

  /** What drawings of this kind are called, in the plural. */
  public String words() {
    return words;
  }
}
