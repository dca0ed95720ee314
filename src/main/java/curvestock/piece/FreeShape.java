package curvestock.piece;

import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.List;

/**
 * Any outline of lines and arcs, in the frame it was given in; for pieces that are neither a sector
 * nor a rectangle.
 *
 * @param course the line along the middle of a piece of roadbed, each edge beginning where the last
 *     ended; empty for any other piece. It is marked, not cut.
 */
public record FreeShape(Outline outline, List<Edge> course) implements Shape {

  public FreeShape {
    course = List.copyOf(course);
  }

  /** An outline without a line to be marked. */
  public FreeShape(Outline outline) {
    this(outline, List.of());
  }

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
