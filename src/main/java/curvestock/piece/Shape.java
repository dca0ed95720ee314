package curvestock.piece;

import curvestock.geometry.Outline;

/** The form of a piece, in a frame of its own that each form documents. */
public sealed interface Shape permits AnnularSector, Strip, FreeShape, Drilled {

  /** The exact boundary in the shape's own frame, in millimetres. */
  Outline outline();

  /** The shape without drilled holes, in the same frame: what packing and its bounds go by. */
  default Shape blank() {
    return this;
  }

  /** Area in square millimetres. */
  default double area() {
    return outline().area();
  }
}
