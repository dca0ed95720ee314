package curvestock.job;

import curvestock.geometry.Point;
import java.util.List;
import java.util.Optional;

/**
 * Reads the corners of a polygon, and refuses one that cannot be cut out: corners on top of each
 * other, edges that cross or touch, no area. Quadratic in the number of corners.
 */
final class CornersReader {

  private static final int MOST = 200;
  private static final double LEAST_EDGE = 0.1;

  private CornersReader() {}

  /** The corners in the order given, in millimetres. */
  static Optional<List<Point>> read(Field field) {
    return field.each("corners", 3, MOST, Field::point).filter(corners -> isSimple(field, corners));
  }

  private static boolean isSimple(Field field, List<Point> corners) {
    Optional<String> fault =
        coincidence(corners).or(() -> reversal(corners)).or(() -> meeting(corners));
    fault.ifPresent(field::note);
    return fault.isEmpty();
  }

  private static Optional<String> coincidence(List<Point> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      if (corners.get(i).distance(corners.get(next)) < LEAST_EDGE) {
        return Optional.of(
            "corners "
                + (i + 1)
                + " and "
                + (next + 1)
                + " are the same place; give each corner once, and do not repeat the first at the"
                + " end");
      }
    }
    return Optional.empty();
  }

  private static Optional<String> reversal(List<Point> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      int next = (i + 1) % n;
      if (turnsBack(corners.get(i), corners.get(next), corners.get((i + 2) % n))) {
        return Optional.of("the outline turns back on itself at corner " + (next + 1));
      }
    }
    return Optional.empty();
  }

  private static Optional<String> meeting(List<Point> corners) {
    int n = corners.size();
    for (int i = 0; i < n; i++) {
      // The last edge is a neighbour of the first.
      int end = i == 0 ? n - 1 : n;
      for (int j = i + 2; j < end; j++) {
        if (meet(corners.get(i), corners.get(i + 1), corners.get(j), corners.get((j + 1) % n))) {
          return Optional.of(
              "the edge after corner "
                  + (i + 1)
                  + " meets the edge after corner "
                  + (j + 1)
                  + "; give the corners in order around the edge");
        }
      }
    }
    return Optional.empty();
  }

  private static boolean turnsBack(Point a, Point b, Point c) {
    Point in = b.minus(a);
    Point out = c.minus(b);
    double sine = in.cross(out) / (in.norm() * out.norm());
    return Math.abs(sine) < 1e-9 && in.dot(out) < 0;
  }

  /** Whether two segments have a point in common. */
  private static boolean meet(Point a, Point b, Point c, Point d) {
    double abc = side(a, b, c);
    double abd = side(a, b, d);
    double cda = side(c, d, a);
    double cdb = side(c, d, b);
    if (abc * abd < 0 && cda * cdb < 0) {
      return true;
    }
    return (abc == 0 && within(a, b, c))
        || (abd == 0 && within(a, b, d))
        || (cda == 0 && within(c, d, a))
        || (cdb == 0 && within(c, d, b));
  }

  private static double side(Point a, Point b, Point p) {
    return Math.signum(b.minus(a).cross(p.minus(a)));
  }

  private static boolean within(Point a, Point b, Point p) {
    return Math.min(a.x(), b.x()) <= p.x()
        && p.x() <= Math.max(a.x(), b.x())
        && Math.min(a.y(), b.y()) <= p.y()
        && p.y() <= Math.max(a.y(), b.y());
  }
}
