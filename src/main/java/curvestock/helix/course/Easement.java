package curvestock.helix.course;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.helix.spec.Direction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A curve whose curvature grows evenly from straight to the ring's (a spiral), half on the approach
 * and half on the ring, laid as few arcs so that it can be cut, packed and drawn exactly like every
 * other edge.
 *
 * <p>The spiral is divided evenly; each part becomes a pair of arcs that begins and ends on the
 * spiral, in its direction (a bi-arc). The arcs lie off the true spiral by at most {@link
 * #TOLERANCE}, on either side of it in turn: less than a saw can follow. Both edges of the roadbed
 * are offset from the same arcs, so its width is exact, and packing, drawing and check take the
 * arcs as they are.
 */
final class Easement {

  /** How far the arcs may lie off the true spiral, in millimetres, to either side. */
  static final double TOLERANCE = 0.1;

  /**
   * A pair of arcs lies off a spiral by at most κ'·h³/324, κ' the change of curvature over length
   * and h the part's length (derived; for small turns; the tests measure it).
   */
  private static final double PAIR_ERROR = 324;

  /** Gauss-Legendre, five points: places and weights on −1 to 1 (any table of quadrature). */
  private static final double[] PLACES = {
    0, 0.5384693101056831, -0.5384693101056831, 0.9061798459386640, -0.9061798459386640
  };

  private static final double[] WEIGHTS = {
    0.5688888888888889,
    0.4786286704993665,
    0.4786286704993665,
    0.2369268850561891,
    0.2369268850561891
  };

  private Easement() {}

  /** The easement that ends at {@code ring}, a place on the ring. */
  static List<Edge> into(Waypoint ring, double radius, double length, Direction direction) {
    Waypoint back = new Waypoint(ring.point(), ring.heading() + Math.PI);
    List<Edge> reversed = arcs(back, radius, length, -direction.sign());
    Collections.reverse(reversed);
    List<Edge> edges = new ArrayList<>();
    reversed.forEach(edge -> edges.add(edge.reversed()));
    return edges;
  }

  /** The easement that begins at {@code ring}, a place on the ring. */
  static List<Edge> outOf(Waypoint ring, double radius, double length, Direction direction) {
    return arcs(ring, radius, length, direction.sign());
  }

  /** From the ring's curvature down to straight; {@code turn} is +1 to the left. */
  private static List<Edge> arcs(Waypoint from, double radius, double length, int turn) {
    List<Edge> path = new ArrayList<>();
    List<Waypoint> places = spiral(from, radius, length, turn, pairs(radius, length));
    Walker walker = new Walker(from, path);
    for (Waypoint next : places) {
      pair(walker, next);
    }
    return path;
  }

  private static int pairs(double radius, double length) {
    return Math.max(
        1, (int) Math.ceil(Math.cbrt(length * length / (radius * PAIR_ERROR * TOLERANCE))));
  }

  /** Evenly spaced places on the true spiral from the ring to the straight, the first left out. */
  static List<Waypoint> spiral(Waypoint from, double radius, double length, int turn, int parts) {
    List<Waypoint> places = new ArrayList<>();
    double step = length / parts;
    Point point = from.point();
    for (int i = 0; i < parts; i++) {
      double middle = (i + 0.5) * step;
      for (int k = 0; k < PLACES.length; k++) {
        double heading = heading(from, radius, length, turn, middle + PLACES[k] * step / 2);
        point = point.plus(Point.polar(WEIGHTS[k] * step / 2, heading));
      }
      places.add(new Waypoint(point, heading(from, radius, length, turn, (i + 1) * step)));
    }
    return places;
  }

  private static double heading(
      Waypoint from, double radius, double length, int turn, double along) {
    return from.heading() + turn * (along - along * along / (2 * length)) / radius;
  }

  /** Two arcs with equal tangents that end at {@code next} in its direction. */
  private static void pair(Walker walker, Waypoint next) {
    Waypoint here = walker.here();
    Point chord = next.point().minus(here.point());
    Point first = Point.polar(1, here.heading());
    Point last = Point.polar(1, next.heading());
    double across = chord.dot(first.plus(last));
    double bend = 2 * (1 - first.dot(last));
    // The smaller root of bend·d² + 2·across·d − chord² = 0, in a form that keeps its digits.
    double square = chord.dot(chord);
    double tangent = square / (across + Math.sqrt(across * across + bend * square));
    Point middle =
        here.point().plus(next.point()).plus(first.minus(last).times(tangent)).times(0.5);
    arcTo(walker, middle);
    arcTo(walker, next.point());
  }

  private static void arcTo(Walker walker, Point end) {
    Waypoint here = walker.here();
    Point chord = end.minus(here.point());
    Point ahead = Point.polar(1, here.heading());
    double half = Math.atan2(ahead.cross(chord), ahead.dot(chord));
    walker.arc(chord.norm() / (2 * Math.abs(Math.sin(half))), 2 * half);
  }
}
