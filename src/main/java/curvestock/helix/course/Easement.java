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
 * <p>The compound turns through exactly L/(2R). It lies off the true spiral by less than 1/1000 of
 * the shift L²/(24R), which is far below what a saw can follow.
 */
final class Easement {

  private static final int ARCS = 24;

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
