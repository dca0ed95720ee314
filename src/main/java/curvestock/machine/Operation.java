package curvestock.machine;

import java.util.Locale;

/** What is done along a line; groups of the SVG and layers of the DXF bear these names. */
public enum Operation {
  /** Cut through the sheet. */
  CUT("#000000", 7),
  /** Drawn or scored on the face: centre lines. */
  MARK("#1f5f8b", 5),
  /** Engraved letters: the pieces' numbers. */
  LABEL("#2e7d32", 3),
  /** Where holding tabs are proposed; not to be cut. */
  TAB("#b26a00", 30),
  /** The edge of the sheet and its defects, for laying out; not to be cut. */
  SHEET("#6b6b6b", 8);

  private final String colour;
  private final int index;

  Operation(String colour, int index) {
    this.colour = colour;
    this.index = index;
  }

  /** The group's id, such as {@code cut}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The colour if the user chooses none, as {@code #rrggbb}. */
  public String colour() {
    return colour;
  }

  /** The number of a like colour in DXF's fixed list of 255. */
  public int colourIndex() {
    return index;
  }
}
