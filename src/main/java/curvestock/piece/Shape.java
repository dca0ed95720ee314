package curvestock.piece;

import curvestock.geometry.Outline;

/** The form of a piece, in a frame of its own that each form documents. */
public sealed interface Shape permits AnnularSector, Strip, FreeShape {

  /** The exact boundary in the shape's own frame, in millimetres. */
  Outline outline();

  /** Area in square millimetres. */
  default double area() {
    return outline().area();
  }
}
