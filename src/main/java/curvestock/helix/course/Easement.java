package curvestock.helix.course;

import curvestock.geometry.Edge;
import curvestock.helix.spec.Direction;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A curve whose curvature grows evenly from straight to the ring's, half on the approach and half
 * on the ring, laid as a compound of arcs so that it can be cut like every other edge.
 *
 * <p>The compound turns through exactly L/(2R). It lies off the true spiral by at most 2/n² of the
 * shift L²/(24R), n its number of arcs (measured: 0.125 mm of a shift of 9 mm at R 700 mm), which
 * is below what a saw can follow. More and flatter arcs would come so near to straight that readers
 * of the drawings lose their centres to rounding.
 */
final class Easement {

  private static final int ARCS = 12;

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
    Walker walker = new Walker(from, path);
    double step = length / ARCS;
    for (int i = ARCS - 1; i >= 0; i--) {
      double curvature = (i + 0.5) / ARCS / radius;
      walker.arc(1 / curvature, turn * step * curvature);
    }
    return path;
  }
}
