package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * How far the edges of one outline reach into, or out of, the material of another.
 *
 * <p>Each edge is parted where it meets an edge of the other, so that a part lies on one side, and
 * the depth is taken at the ends and middles of the parts and where an edge runs furthest from a
 * line or circle of the other. A reach is found whenever there is one beyond rounding, and never
 * given too large; where the deepest place lies between two edges of the other it may be given too
 * small. Cost: edges of one × edges of the other.
 */
final class Reach {

  /** Edges nearer than this meet, in mm: ten times the rounding of coordinates near 10 m. */
  static final double MEETING = 1e-7;

  private final Outline other;
  private final List<Edge> edges;

  /**
   * @param other whose material the edges are measured against
   */
  Reach(Outline other) {
    this.other = other;
    this.edges = other.edges();
  }

  /** Greatest depth of the edges inside the other's material; 0 if none lies inside. */
  double into(List<Edge> of) {
    return deepest(of, other::contains);
  }

  /** Greatest distance of the edges outside the other's material; 0 if none lies outside. */
  double outOf(List<Edge> of) {
    return deepest(of, point -> !other.contains(point));
  }

  private double deepest(List<Edge> of, Predicate<Point> counts) {
    double deepest = 0;
    for (Edge edge : of) {
      for (Point point : places(edge)) {
        if (counts.test(point)) {
          deepest = Math.max(deepest, other.depth(point));
        }
      }
    }
    return deepest;
  }

  private List<Point> places(Edge edge) {
    List<Double> shares = new ArrayList<>(List.of(0.0, 1.0));
    List<Point> places = new ArrayList<>();
    Box box = edge.box();
    for (Edge facing : edges) {
      furthest(edge, facing, places);
      if (box.distance(facing.box()) <= MEETING) {
        List<Point> meetings = new ArrayList<>(Crossing.all(edge, facing));
        meetings.add(facing.start());
        for (Point point : meetings) {
          if (edge.distanceTo(point) <= MEETING && facing.distanceTo(point) <= MEETING) {
            shares.add(share(edge, point));
          }
        }
      }
    }
    shares.sort(null);
    for (int i = 1; i < shares.size(); i++) {
      places.add(at(edge, shares.get(i - 1)));
      places.add(at(edge, (shares.get(i - 1) + shares.get(i)) / 2));
    }
    return places;
  }

  /** Where an edge can run furthest from the line or circle that another lies on. */
  private static void furthest(Edge edge, Edge facing, List<Point> to) {
    if (edge instanceof Arc arc) {
      double direction =
          facing instanceof Arc circle
              ? circle.centre().minus(arc.centre()).angle()
              : facing.startDirection().angle() + Math.PI / 2;
      for (double each : new double[] {direction, direction + Math.PI}) {
        if (arc.spans(each)) {
          to.add(arc.pointAt(each));
        }
      }
    } else if (facing instanceof Arc circle) {
      to.add(((Segment) edge).nearest(circle.centre()));
    }
  }

  /** Which share of the edge's length lies before the point of it, 0 to 1. */
  private static double share(Edge edge, Point point) {
    if (edge instanceof Arc arc) {
      double turn = point.minus(arc.centre()).angle() - arc.startAngle();
      double along = turn * Math.signum(arc.sweep());
      along -= 2 * Math.PI * Math.floor(along / (2 * Math.PI));
      return Math.min(1, along / Math.abs(arc.sweep()));
    }
    return Math.min(1, edge.start().distance(point) / edge.length());
  }

  private static Point at(Edge edge, double share) {
    return share <= 0 ? edge.start() : edge.part(0, share).end();
  }
}
