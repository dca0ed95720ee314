package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/** Where the whole lines and circles of two edges cross. */
final class LineCrossings {

  private LineCrossings() {}

  static List<Point> of(Trace a, Trace b) {
    if (a instanceof Trace.Round p && b instanceof Trace.Round q) {
      return circles(p, q);
    }
    if (a instanceof Trace.Round p) {
      return lineAndCircle(b, p);
    }
    return b instanceof Trace.Round q ? lineAndCircle(a, q) : lines(a, b);
  }

  /** By the normal forms u·p = c of both lines and Cramer's rule. */
  private static List<Point> lines(Trace a, Trace b) {
    Point u = normal(a);
    Point v = normal(b);
    double determinant = u.cross(v);
    if (determinant == 0) {
      return List.of();
    }
    double c = u.dot(a.start());
    double d = v.dot(b.start());
    return List.of(
        new Point((c * v.y() - d * u.y()) / determinant, (d * u.x() - c * v.x()) / determinant));
  }

  private static Point normal(Trace line) {
    Point ahead = line.startDirection();
    return new Point(-ahead.y(), ahead.x());
  }

  private static List<Point> lineAndCircle(Trace line, Trace.Round arc) {
    Point ahead = line.startDirection();
    Point from = line.start().minus(arc.centre());
    // |from + t·ahead|² = r²
    double b = from.dot(ahead);
    double root = b * b - from.dot(from) + arc.radius() * arc.radius();
    List<Point> points = new ArrayList<>();
    if (root >= 0) {
      points.add(line.start().plus(ahead.times(-b - Math.sqrt(root))));
      points.add(line.start().plus(ahead.times(-b + Math.sqrt(root))));
    }
    return points;
  }

  /** By the angle at the first centre, from the law of cosines. */
  private static List<Point> circles(Trace.Round a, Trace.Round b) {
    Point between = b.centre().minus(a.centre());
    double d = between.norm();
    double cosine =
        (a.radius() * a.radius() + d * d - b.radius() * b.radius()) / (2 * a.radius() * d);
    List<Point> points = new ArrayList<>();
    if (Math.abs(cosine) <= 1) {
      double angle = Math.acos(cosine);
      points.add(a.centre().plus(Point.polar(a.radius(), between.angle() + angle)));
      points.add(a.centre().plus(Point.polar(a.radius(), between.angle() - angle)));
    }
    return points;
  }
}
