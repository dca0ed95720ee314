package curvestock.machine;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * An order of things none of which must be before another and none of which is turned round: to the
 * nearest that is left, from the sheet's lower left corner; as drawn if that is no longer.
 *
 * @param start where the tool comes down
 * @param end where it is lifted
 */
record Tour<T>(Function<T, Point> start, Function<T, Point> end) {

  /** Letters, from the first stroke of each line of them to its last. */
  static final Tour<Engraving> OF_LETTERS = new Tour<>(Engraving::first, Engraving::last);

  static final Tour<Drilling> OF_HOLES = new Tour<>(Drilling::centre, Drilling::centre);

  static final Tour<Pocket> OF_POCKETS = new Tour<>(Tour::corner, Tour::corner);

  private static Point corner(Pocket pocket) {
    return pocket.area().outer().edges().get(0).start();
  }

  /** The things in an order with little way between them. */
  List<T> of(List<T> drawn) {
    List<T> left = new ArrayList<>(drawn);
    List<T> order = new ArrayList<>();
    Point at = Point.ORIGIN;
    while (!left.isEmpty()) {
      Point here = at;
      T next =
          left.stream()
              .min(Comparator.comparingDouble(each -> start.apply(each).distance(here)))
              .orElseThrow();
      left.remove(next);
      order.add(next);
      at = end.apply(next);
    }
    return travel(order) < travel(drawn) ? order : List.copyOf(drawn);
  }

  /** The way with the tool lifted, from the lower left corner to the last, in millimetres. */
  double travel(List<T> order) {
    Point at = Point.ORIGIN;
    double way = 0;
    for (T each : order) {
      way += at.distance(start.apply(each));
      at = end.apply(each);
    }
    return way;
  }
}
