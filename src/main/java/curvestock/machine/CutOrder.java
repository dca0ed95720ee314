package curvestock.machine;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The order of cutting. What lies in a piece's hole is cut before the hole, all holes of a piece
 * before its outside, so that nothing is cut out of a part that is loose already. Within that,
 * pieces follow each other by nearest neighbour from the lower left corner, improved by reversing
 * parts of the order as long as the way with the tool lifted gets shorter (2-opt). The same layout
 * always gives the same order.
 */
final class CutOrder {

  /** Beyond this many pieces the order by nearest neighbour is left as it is. */
  private static final int MOST_IMPROVED = 400;

  private static final int MOST_ROUNDS = 50;

  /** Shorter gains are rounding, in millimetres. */
  private static final double GAIN = 1e-6;

  private final Layout layout;
  private final List<List<Contour>> contours;
  private final int[] container;

  private CutOrder(Layout layout, List<List<Contour>> contours) {
    this.layout = layout;
    this.contours = contours;
    this.container = containers();
  }

  /**
   * All contours in cutting order.
   *
   * @param contours of each piece in the layout's order, its holes first and its outside last
   */
  static List<Contour> of(Layout layout, List<List<Contour>> contours) {
    CutOrder order = new CutOrder(layout, contours);
    List<Contour> found = order.ordered(-1, Point.ORIGIN);
    List<Contour> drawn = contours.stream().flatMap(List::stream).toList();
    return order.mayStay() && travel(drawn) < travel(found) ? drawn : found;
  }

  /** Whether each piece that lies in another's hole is drawn before it. */
  private boolean mayStay() {
    return IntStream.range(0, container.length)
        .allMatch(inner -> container[inner] < 0 || inner < container[inner]);
  }

  /** The way with the tool lifted, from the lower left corner to the end of the last cut. */
  static double travel(List<Contour> order) {
    Point at = Point.ORIGIN;
    double way = 0;
    for (Contour contour : order) {
      way += at.distance(contour.start()) + contour.hops();
      at = contour.end();
    }
    return way;
  }

  /** For each piece the smallest piece in one of whose holes it lies, or -1. */
  private int[] containers() {
    List<Outline> outlines = layout.placements().stream().map(p -> p.outline()).toList();
    int[] found = new int[outlines.size()];
    Arrays.fill(found, -1);
    for (int inner = 0; inner < found.length; inner++) {
      Point point = outlines.get(inner).outer().edges().get(0).start();
      for (int outer = 0; outer < found.length; outer++) {
        boolean holds =
            outer != inner && outlines.get(outer).holes().stream().anyMatch(h -> h.encloses(point));
        if (holds && (found[inner] < 0 || size(outlines, outer) < size(outlines, found[inner]))) {
          found[inner] = outer;
        }
      }
    }
    return found;
  }

  private static double size(List<Outline> outlines, int index) {
    Loop outer = outlines.get(index).outer();
    return outer.signedArea();
  }

  /** The pieces that lie directly in the given one (-1: on the sheet), with all that is in them. */
  private List<Contour> ordered(int within, Point from) {
    List<Integer> members =
        IntStream.range(0, container.length).filter(i -> container[i] == within).boxed().toList();
    List<List<Contour>> units = new ArrayList<>();
    for (int member : members) {
      List<Contour> unit = new ArrayList<>(ordered(member, outside(member).start()));
      List<Contour> own = contours.get(member);
      unit.addAll(chained(own.subList(0, own.size() - 1), outside(member).start()));
      unit.add(outside(member));
      units.add(unit);
    }
    List<Contour> flat = new ArrayList<>();
    shortened(nearestFirst(units, from), from).forEach(flat::addAll);
    return flat;
  }

  private Contour outside(int index) {
    List<Contour> own = contours.get(index);
    return own.get(own.size() - 1);
  }

  private static List<Contour> chained(List<Contour> holes, Point from) {
    List<Contour> chain = new ArrayList<>();
    nearestFirst(holes.stream().map(List::of).toList(), from).forEach(chain::addAll);
    return chain;
  }

  private static List<List<Contour>> nearestFirst(List<List<Contour>> units, Point from) {
    List<List<Contour>> left = new ArrayList<>(units);
    List<List<Contour>> chain = new ArrayList<>();
    Point at = from;
    while (!left.isEmpty()) {
      Point here = at;
      List<Contour> next =
          left.stream()
              .min(Comparator.comparingDouble(unit -> entry(unit).distance(here)))
              .orElseThrow();
      left.remove(next);
      chain.add(next);
      at = exit(next);
    }
    return chain;
  }

  private static Point entry(List<Contour> unit) {
    return unit.get(0).start();
  }

  private static Point exit(List<Contour> unit) {
    return unit.get(unit.size() - 1).end();
  }

  /**
   * 2-opt: reverses any part of the order that makes the way shorter. Units themselves are never
   * turned round, so the ways inside the part are measured anew.
   */
  private static List<List<Contour>> shortened(List<List<Contour>> order, Point from) {
    List<List<Contour>> best = new ArrayList<>(order);
    boolean better = best.size() <= MOST_IMPROVED;
    for (int round = 0; better && round < MOST_ROUNDS; round++) {
      better = false;
      for (int i = 0; i < best.size() - 1; i++) {
        for (int j = i + 1; j < best.size(); j++) {
          double before = way(best, i, j, from);
          Collections.reverse(best.subList(i, j + 1));
          if (way(best, i, j, from) < before - GAIN) {
            better = true;
          } else {
            Collections.reverse(best.subList(i, j + 1));
          }
        }
      }
    }
    return best;
  }

  /** The way from before unit {@code i} to after unit {@code j}. */
  private static double way(List<List<Contour>> order, int i, int j, Point from) {
    Point at = i == 0 ? from : exit(order.get(i - 1));
    double way = 0;
    for (int k = i; k <= Math.min(j + 1, order.size() - 1); k++) {
      way += at.distance(entry(order.get(k)));
      at = exit(order.get(k));
    }
    return way;
  }
}
