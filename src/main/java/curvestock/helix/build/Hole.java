package curvestock.helix.build;

import curvestock.geometry.Loop;
import curvestock.geometry.Point;
import curvestock.units.Length;

/** A round hole through a piece, in the piece's own frame. */
public record Hole(Point centre, Length diameter) {

  /** Its rim, clockwise as a hole in an outline runs. */
  public Loop rim() {
    return Loop.circle(centre, diameter.millimetres() / 2).reversed();
  }
}
