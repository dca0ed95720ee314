package curvestock.check;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** A closed chain of edges. */
record TraceLoop(List<Trace> edges) {

  /** A point nearer than this to the boundary is counted as on it. */
  private static final double ON_BOUNDARY = 1e-9;

  TraceLoop {
    edges = List.copyOf(edges);
  }

  /** The same curve as a nominal loop. */
  static TraceLoop of(Loop loop) {
    return new TraceLoop(loop.edges().stream().map(TraceLoop::trace).toList());
  }

  /** The same curve as a nominal edge. */
  static Trace trace(Edge edge) {
    return edge instanceof Arc arc
        ? new Trace.Round(arc.centre(), arc.radius(), arc.startAngle(), arc.sweep())
        : new Trace.Straight(edge.start(), edge.end());
  }

  /** The same with straight lines for the arcs that rise so much over their chords or less. */
  TraceLoop withChords(double rise) {
    return new TraceLoop(
        edges.stream()
            .map(
                edge ->
                    edge.stray(0, 1) <= rise ? new Trace.Straight(edge.start(), edge.end()) : edge)
            .toList());
  }

  double area() {
    return edges.stream().mapToDouble(Trace::areaShare).sum();
  }

  double length() {
    return edges.stream().mapToDouble(Trace::length).sum();
  }

  /** The loop run counter-clockwise, or clockwise. */
  TraceLoop turned(boolean counterClockwise) {
    if (area() > 0 == counterClockwise) {
      return this;
    }
    List<Trace> reversed = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      reversed.add(edges.get(i).reversed());
    }
    return new TraceLoop(reversed);
  }

  /** How many times the loop runs around the point, counter-clockwise. */
  int windings(Point point) {
    double angle = 0;
    for (Trace edge : edges) {
      angle += angleSeen(edge, 0, 1, point);
    }
    return (int) Math.rint(angle / (2 * Math.PI));
  }

  /**
   * The angle through which the edge passes as seen from the point. Halved until the point lies
   * outside the disc on the part's chord that holds the part: then less than half a turn is passed,
   * and the angle between the ends is the whole truth.
   */
  private static double angleSeen(Trace edge, double from, double to, Point point) {
    Point a = edge.at(from);
    Point b = edge.at(to);
    double half = Math.hypot(b.x() - a.x(), b.y() - a.y()) / 2;
    double stray = edge.stray(from, to);
    Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    boolean small = Math.abs(to - from) * edge.length() <= ON_BOUNDARY;
    boolean clear = stray <= half && point.distance(middle) > Math.hypot(half, stray);
    if (clear || stray == 0 || small) {
      double ax = a.x() - point.x();
      double ay = a.y() - point.y();
      double bx = b.x() - point.x();
      double by = b.y() - point.y();
      return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }
    double cut = (from + to) / 2;
    return angleSeen(edge, from, cut, point) + angleSeen(edge, cut, to, point);
  }
}
