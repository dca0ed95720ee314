package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The order of marks, none of which must be before another: by nearest neighbour from the sheet's
 * lower left corner, each run from the end that is nearer, then improved by turning round parts of
 * the order (2-opt); as drawn if that is no longer.
 */
final class MarkOrder {

  /** Beyond this many marks the order by nearest neighbour is left as it is. */
  private static final int MOST_IMPROVED = 1500;

  private static final int MOST_ROUNDS = 20;

  /** Shorter gains are rounding, in millimetres. */
  private static final double GAIN = 1e-6;

  private static final Tour<List<Edge>> WAY = new Tour<>(MarkOrder::start, MarkOrder::end);

  private MarkOrder() {}

  /** The marks in an order with little way between them. */
  static List<List<Edge>> of(List<List<Edge>> marks) {
    List<List<Edge>> order = shortened(nearestFirst(marks));
    return travel(order) < travel(marks) ? order : marks;
  }

  /** The way with the tool lifted, from the lower left corner to the last mark, in millimetres. */
  static double travel(List<List<Edge>> marks) {
    return WAY.travel(marks);
  }

  private static List<List<Edge>> nearestFirst(List<List<Edge>> marks) {
    List<List<Edge>> left = new ArrayList<>(marks);
    List<List<Edge>> chain = new ArrayList<>();
    Point at = Point.ORIGIN;
    while (!left.isEmpty()) {
      int nearest = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int i = 0; i < left.size(); i++) {
        double away = Math.min(at.distance(start(left.get(i))), at.distance(end(left.get(i))));
        if (away < least) {
          least = away;
          nearest = i;
        }
      }
      List<Edge> next = left.remove(nearest);
      next = at.distance(start(next)) <= at.distance(end(next)) ? next : reversed(next);
      chain.add(next);
      at = end(next);
    }
    return chain;
  }

  private static List<List<Edge>> shortened(List<List<Edge>> order) {
    List<List<Edge>> best = new ArrayList<>(order);
    boolean better = best.size() <= MOST_IMPROVED;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
      better = false;
      for (int i = 0; i < best.size() - 1; i++) {
        for (int j = i + 1; j < best.size(); j++) {
          if (gain(best, i, j) > GAIN) {
            Collections.reverse(best.subList(i, j + 1));
            best.subList(i, j + 1).replaceAll(MarkOrder::reversed);
            better = true;
          }
        }
      }
    }
    return best;
  }

  /** How much shorter the way gets if the marks from {@code i} to {@code j} are run backwards. */
  private static double gain(List<List<Edge>> order, int i, int j) {
    Point before = i == 0 ? Point.ORIGIN : end(order.get(i - 1));
    double now = before.distance(start(order.get(i)));
    double then = before.distance(end(order.get(j)));
    if (j + 1 < order.size()) {
      Point after = start(order.get(j + 1));
      now += end(order.get(j)).distance(after);
      then += start(order.get(i)).distance(after);
    }
    return now - then;
  }

  private static List<Edge> reversed(List<Edge> mark) {
    List<Edge> reversed = new ArrayList<>();
    for (int i = mark.size() - 1; i >= 0; i--) {
      reversed.add(mark.get(i).reversed());
    }
    return reversed;
  }

  private static Point start(List<Edge> mark) {
    return mark.get(0).start();
  }

  private static Point end(List<Edge> mark) {
    return mark.get(mark.size() - 1).end();
  }
}
