package curvestock.geometry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Where the whole lines or circles that two edges lie on cross. */
final class Crossing {

  private Crossing() {}

  /** The crossing nearest to two points together; nothing if the carriers do not cross. */
  static Optional<Point> nearest(Edge a, Edge b, Point near, Point alsoNear) {
    return all(a, b).stream()
        .min(Comparator.comparingDouble(p -> p.distance(near) + p.distance(alsoNear)));
  }

  /** All of them, at most two; none where the carriers coincide. */
  static List<Point> all(Edge a, Edge b) {
    if (a instanceof Arc arc) {
      return b instanceof Arc other ? circles(arc, other) : lineAndCircle(b, arc);
    }
    return b instanceof Arc arc ? lineAndCircle(a, arc) : lines(a, b);
  }

  private static List<Point> lines(Edge a, Edge b) {
    Point u = a.startDirection();
    double sine = u.cross(b.startDirection());
    if (sine == 0) {
      return List.of();
    }
    double along = b.start().minus(a.start()).cross(b.startDirection()) / sine;
    return List.of(a.start().plus(u.times(along)));
  }

  private static List<Point> lineAndCircle(Edge line, Arc arc) {
    Point u = line.startDirection();
    Point toCentre = arc.centre().minus(line.start());
    double along = toCentre.dot(u);
    double off = toCentre.cross(u);
    double square = (arc.radius() - off) * (arc.radius() + off);
    List<Point> points = new ArrayList<>();
    if (square >= 0) {
      double half = Math.sqrt(square);
      points.add(line.start().plus(u.times(along - half)));
      points.add(line.start().plus(u.times(along + half)));
    }
    return points;
  }

  private static List<Point> circles(Arc a, Arc b) {
    Point between = b.centre().minus(a.centre());
    double d = between.norm();
    if (d == 0) {
      return List.of();
    }
    double along = (d * d + a.radius() * a.radius() - b.radius() * b.radius()) / (2 * d);
    double square = (a.radius() - along) * (a.radius() + along);
    if (square < 0) {
      return List.of();
    }
    Point u = between.times(1 / d);
    Point foot = a.centre().plus(u.times(along));
    Point aside = new Point(-u.y(), u.x()).times(Math.sqrt(square));
    return List.of(foot.plus(aside), foot.minus(aside));
  }
}
