package curvestock.check;

import curvestock.geometry.Point;
import java.util.List;

/** A rectangle that holds a set of edges, not always the least one. */
record Bounds(double left, double bottom, double right, double top) {

  static Bounds of(List<Trace> edges) {
    double left = Double.POSITIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    int parts = 16;
    for (Trace edge : edges) {
      double stray = edge.stray(0, 1.0 / parts);
      for (int i = 0; i <= parts; i++) {
        Point p = edge.at((double) i / parts);
        left = Math.min(left, p.x() - stray);
        right = Math.max(right, p.x() + stray);
        bottom = Math.min(bottom, p.y() - stray);
        top = Math.max(top, p.y() + stray);
      }
    }
    return new Bounds(left, bottom, right, top);
  }

  /** A lower bound of the distance between what the two hold. */
  double distance(Bounds other) {
    double dx = Math.max(0, Math.max(other.left - right, left - other.right));
    double dy = Math.max(0, Math.max(other.bottom - top, bottom - other.top));
    return Math.hypot(dx, dy);
  }

  /** Whether no side is further than that from the other's. */
  boolean isLike(Bounds other, double within) {
    return Math.abs(left - other.left) <= within
        && Math.abs(bottom - other.bottom) <= within
        && Math.abs(right - other.right) <= within
        && Math.abs(top - other.top) <= within;
  }

  /** Whether the point is in the rectangle, or no further off than that. */
  boolean holds(Point point, double within) {
    return point.x() >= left - within
        && point.x() <= right + within
        && point.y() >= bottom - within
        && point.y() <= top + within;
  }
}
