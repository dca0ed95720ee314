package curvestock.machine;

import curvestock.units.Length;

/** A piece has a hollow or a hole that the tool cannot get into. */
public final class ToolTooWide extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  ToolTooWide(String piece, Length kerf) {
    super(
        "piece "
            + piece
            + " has a hole or a hollow that a cut "
            + kerf
            + " wide cannot follow; use a narrower tool, make the hole larger, or write"
            + " `outlines: finished` and drill it by hand");
  }
}
