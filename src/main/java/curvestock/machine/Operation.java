package curvestock.machine;

import java.util.Locale;

/**
 * What is done along a line or within an area; groups of the SVG and layers of the DXF bear these
 * names.
 */
public enum Operation {
  /** Cut through the sheet. */
  CUT("#000000"),
  /** Drawn or scored on the face: centre lines. */
  MARK("#1f5f8b"),
  /** Engraved letters: the pieces' numbers, and what is to be known of their faces and ends. */
  LABEL("#2e7d32"),
  /** Closed areas cleared to a depth from the face that lies up. */
  POCKET_TOP("#c2185b"),
  /** The same from the underside: in files of their own, for the sheet turned over. */
  POCKET_BOTTOM("#7b1fa2"),
  /** Round holes, drilled through. */
  DRILL("#e64a19"),
  /** Where holding tabs are proposed; not to be cut. */
  TAB("#b26a00"),
  /** The edge of the sheet and its defects, for laying out; not to be cut. */
  SHEET("#6b6b6b"),
  /** What is kept of the sheet for another job; not to be cut. */
  REMNANT("#00897b"),
  /** The line over which the sheet is turned, and the dowels that it is set on; not to be cut. */
  FLIP("#0097a7"),
  /** What the file is, in words; not to be cut. */
  TITLE("#9e9e9e");

  private final String colour;

  Operation(String colour) {
    this.colour = colour;
  }

  /** The group's id, such as {@code pocket-top}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The colour if the user chooses none, as {@code #rrggbb}. */
  public String colour() {
    return colour;
  }
}
