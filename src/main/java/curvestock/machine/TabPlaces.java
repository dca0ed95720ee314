package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the tabs of one outline stay: spread evenly over the lengths of its sides, each whole on
 * one edge and clear of its ends by at least a tab's own length.
 */
final class TabPlaces {

  /** An edge must be this many tabs long to carry one. */
  static final double ROOM = 3;

  /** A tab on an edge: the edge's index, and the shares of its length between which it lies. */
  private record Place(int edge, double from, double to) {}

  private final List<Edge> edges;
  private final List<Place> places = new ArrayList<>();

  /**
   * Spreads the tabs.
   *
   * @param edges of the outline in cutting order
   * @param sides which of them may carry tabs
   * @param gap length of a tab along the outline, in millimetres
   */
  TabPlaces(List<Edge> edges, List<Boolean> sides, int count, double gap) {
    this.edges = edges;
    double usable = 0;
    for (int i = 0; i < edges.size(); i++) {
      usable += usable(edges.get(i), sides.get(i), gap);
    }
    int next = 0;
    double passed = 0;
    for (int i = 0; i < edges.size() && usable > 0; i++) {
      double here = usable(edges.get(i), sides.get(i), gap);
      double lastEnd = Double.NEGATIVE_INFINITY;
      while (next < count && (next + 0.5) / count * usable <= passed + here && here > 0) {
        double from = gap + (next + 0.5) / count * usable - passed - gap / 2;
        double length = edges.get(i).length();
        from = Math.max(gap, Math.min(length - 2 * gap, from));
        if (from >= lastEnd + gap) {
          places.add(new Place(i, from / length, (from + gap) / length));
          lastEnd = from + gap;
        }
        next++;
      }
      passed += here;
    }
  }

  private static double usable(Edge edge, boolean side, double gap) {
    return side && edge.length() >= ROOM * gap ? edge.length() - 2 * gap : 0;
  }

  int count() {
    return places.size();
  }

  /** The outline with the tabs left out, from the end of the first tab round to its beginning. */
  List<List<Edge>> runs() {
    List<List<Edge>> runs = new ArrayList<>();
    List<Edge> run = new ArrayList<>();
    int next = 0;
    for (int i = 0; i < edges.size(); i++) {
      double from = 0;
      while (next < places.size() && places.get(next).edge() == i) {
        run.add(edges.get(i).part(from, places.get(next).from()));
        runs.add(run);
        run = new ArrayList<>();
        from = places.get(next).to();
        next++;
      }
      run.add(from == 0 ? edges.get(i) : edges.get(i).part(from, 1));
    }
    // What was begun at the start is the end of the last run.
    run.addAll(runs.remove(0));
    runs.add(run);
    return runs;
  }

  /** A tick across each tab's middle, from just off the outline into the waste. */
  List<List<Edge>> ticks(double off, double length) {
    List<List<Edge>> ticks = new ArrayList<>();
    for (Place place : places) {
      Edge tab = edges.get(place.edge()).part(place.from(), place.to());
      Point middle = tab.middle();
      Point ahead = tab.part(0.5, 1).startDirection();
      Point outwards = new Point(ahead.y(), -ahead.x());
      ticks.add(
          List.of(
              new Segment(
                  middle.plus(outwards.times(off)), middle.plus(outwards.times(off + length)))));
    }
    return ticks;
  }
}
