package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;

/** A closed chain of edges, each starting where the one before ends. */
public record Loop(List<Edge> edges) {

  /** Edges meet within this much; a hundred times the rounding of coordinates near 10 m. */
  private static final double JOINT_TOLERANCE = 1e-9;

  /**
   * @throws IllegalArgumentException if there is no edge, or if the edges do not close up
   */
  public Loop {
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("a loop must have at least one edge");
    }
    for (int i = 0; i < edges.size(); i++) {
      Point end = edges.get(i).end();
      Point next = edges.get((i + 1) % edges.size()).start();
      double slack = JOINT_TOLERANCE * (1 + Math.abs(end.x()) + Math.abs(end.y()));
      if (!(end.distance(next) <= slack)) {
        throw new IllegalArgumentException(
            "edge "
                + i
                + " must end where the next begins, but the gap is "
                + end.distance(next)
                + " mm");
      }
    }
  }

  /** A loop of straight edges through the corners, closed at the end. */
  public static Loop polygon(List<Point> corners) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      edges.add(new Segment(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Loop(edges);
  }

  /** A whole circle, counter-clockwise, as two arcs. */
  public static Loop circle(Point centre, double radius) {
    return new Loop(
        List.of(new Arc(centre, radius, 0, Math.PI), new Arc(centre, radius, Math.PI, Math.PI)));
  }

  public Loop at(Pose pose) {
    return new Loop(edges.stream().map(edge -> edge.at(pose)).toList());
  }

  /** The same points, run the other way round. */
  public Loop reversed() {
    List<Edge> reversed = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      reversed.add(edges.get(i).reversed());
    }
    return new Loop(reversed);
  }

  /** Enclosed area: above zero if the loop runs counter-clockwise. */
  public double signedArea() {
    return edges.stream().mapToDouble(Edge::areaTerm).sum();
  }

  public double perimeter() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  public Box box() {
    return edges.stream().map(Edge::box).reduce(Box::union).orElseThrow();
  }

  /**
   * Whether the point lies inside, by the parity of crossings to its right. Exact but for points on
   * the boundary itself, where either answer may come.
   */
  public boolean encloses(Point point) {
    int crossings = 0;
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      // The joint is the next edge's start for both, so that no gap opens between two edges.
      Point end = edges.get((i + 1) % edges.size()).start();
      crossings +=
          edge instanceof Arc arc
              ? arcCrossings(arc, arc.start(), end, point)
              : segmentCrossing(edge.start(), end, point);
    }
    return crossings % 2 != 0;
  }

  private static int segmentCrossing(Point a, Point b, Point p) {
    if ((a.y() > p.y()) == (b.y() > p.y())) {
      return 0;
    }
    double x = a.x() + (p.y() - a.y()) * (b.x() - a.x()) / (b.y() - a.y());
    return x > p.x() ? 1 : 0;
  }

  /** Splits the arc at its highest and lowest points into runs on one side of its centre. */
  private static int arcCrossings(Arc arc, Point start, Point end, Point p) {
    double direction = Math.signum(arc.sweep());
    double from = arc.startAngle();
    double to = arc.startAngle() + arc.sweep();
    double step = Math.PI;
    // First top or bottom strictly after the start, going along the sweep.
    double next =
        direction > 0
            ? Math.PI / 2 + step * (Math.floor((from - Math.PI / 2) / step) + 1)
            : Math.PI / 2 + step * (Math.ceil((from - Math.PI / 2) / step) - 1);
    int crossings = 0;
    double y = start.y();
    double at = from;
    while ((next - to) * direction < 0) {
      double extreme = arc.centre().y() + arc.radius() * Math.signum(StrictMath.sin(next));
      crossings += runCrossing(arc, y, extreme, (at + next) / 2, p);
      y = extreme;
      at = next;
      next += step * direction;
    }
    return crossings + runCrossing(arc, y, end.y(), (at + to) / 2, p);
  }

  private static int runCrossing(Arc arc, double fromY, double toY, double middle, Point p) {
    if ((fromY > p.y()) == (toY > p.y())) {
      return 0;
    }
    double dy = p.y() - arc.centre().y();
    double half = Math.sqrt(Math.max(0, arc.radius() * arc.radius() - dy * dy));
    double x = arc.centre().x() + (StrictMath.cos(middle) >= 0 ? half : -half);
    return x > p.x() ? 1 : 0;
  }
}
