package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;

/**
 * A stretch of an edge that only rises or only falls, made for counting crossings.
 *
 * @param fromY height at its start
 * @param toY height at its end
 * @param x of a straight stretch the start, of an arc the centre
 * @param y the same
 * @param alongX of a straight stretch the way from start to end
 * @param alongY the same
 * @param radius of an arc
 * @param side of an arc 1 if it lies to the right of its centre, −1 if to the left; 0 if straight
 */
record Run(
    double fromY,
    double toY,
    double x,
    double y,
    double alongX,
    double alongY,
    double radius,
    int side) {

  /** Rounding of a crossing, with room to spare, in millimetres. */
  private static final double ROUNDING = 1e-6;

  /**
   * Whether the ray from (px, py) to the right crosses the run; its upper end is not part of it.
   */
  boolean crosses(double px, double py) {
    if ((fromY > py) == (toY > py)) {
      return false;
    }
    if (side == 0) {
      return x + (py - y) * alongX / alongY > px;
    }
    double dy = py - y;
    return x + side * Math.sqrt(Math.max(0, radius * radius - dy * dy)) > px;
  }

  /** Whether a point of the rectangle, open to the right, can have this run to its right. */
  boolean mayCross(double minX, double minY, double maxY) {
    double right = side == 0 ? Math.max(x, x + alongX) : side > 0 ? x + radius : x;
    return right >= minX - ROUNDING
        && Math.min(fromY, toY) <= maxY + ROUNDING
        && Math.max(fromY, toY) >= minY - ROUNDING;
  }

  /** All runs of a loop. */
  static List<Run> of(Loop loop) {
    List<Edge> edges = loop.edges();
    List<Run> runs = new ArrayList<>();
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(i);
      // The joint is the next edge's start for both, so that no gap opens between two edges.
      Point end = edges.get((i + 1) % edges.size()).start();
      if (edge instanceof Arc arc) {
        addArc(runs, arc, arc.start().y(), end.y());
      } else {
        Point start = edge.start();
        Point along = end.minus(start);
        runs.add(new Run(start.y(), end.y(), start.x(), start.y(), along.x(), along.y(), 0, 0));
      }
    }
    return runs;
  }

  /** Splits the arc at its highest and lowest points into runs on one side of its centre. */
  private static void addArc(List<Run> runs, Arc arc, double startY, double endY) {
    double direction = Math.signum(arc.sweep());
    double from = arc.startAngle();
    double to = arc.startAngle() + arc.sweep();
    double step = Math.PI;
    // First top or bottom strictly after the start, going along the sweep.
    double next =
        direction > 0
            ? Math.PI / 2 + step * (Math.floor((from - Math.PI / 2) / step) + 1)
            : Math.PI / 2 + step * (Math.ceil((from - Math.PI / 2) / step) - 1);
    double y = startY;
    double at = from;
    while ((next - to) * direction < 0) {
      double extreme = arc.centre().y() + arc.radius() * Math.signum(StrictMath.sin(next));
      runs.add(arcRun(arc, y, extreme, (at + next) / 2));
      y = extreme;
      at = next;
      next += step * direction;
    }
    runs.add(arcRun(arc, y, endY, (at + to) / 2));
  }

  private static Run arcRun(Arc arc, double fromY, double toY, double middle) {
    int side = StrictMath.cos(middle) >= 0 ? 1 : -1;
    return new Run(fromY, toY, arc.centre().x(), arc.centre().y(), 0, 0, arc.radius(), side);
  }
}
