package curvestock.machine;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.ArrayList;
import java.util.List;

/** An outline with its tabs: what is left of it to be cut, and marks beside them. */
final class TabPlaces {

  /** A tab on an edge: the edge's index, and the shares of its length between which it lies. */
  record Place(int edge, double from, double to) {}

  private final List<Edge> edges;
  private final List<Place> places;

  /**
   * @param edges of the outline in cutting order
   * @param places in the order of the edges
   */
  TabPlaces(List<Edge> edges, List<Place> places) {
    this.edges = List.copyOf(edges);
    this.places = List.copyOf(places);
  }

  /** The outline with the tabs left out, from the end of the first tab round to its beginning. */
  List<List<Edge>> runs() {
    if (places.isEmpty()) {
      return List.of(edges);
    }
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
