package curvestock.piece;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.List;

/**
 * Any outline of lines and arcs, in the frame it was given in; for pieces that are neither a sector
 * nor a rectangle.
 */
public record FreeShape(Outline outline) implements Shape {

  /**
   * A polygon through the corners, in either direction round.
   *
   * @throws IllegalArgumentException if there are fewer than three corners or no area
   */
  public static FreeShape polygon(List<Point> corners) {
    if (corners.size() < 3) {
      throw new IllegalArgumentException(
          "a polygon must have at least 3 corners, but had " + corners.size());
    }
    Loop loop = Loop.polygon(corners);
    return new FreeShape(Outline.of(loop.signedArea() > 0 ? loop : loop.reversed()));
  }
}
