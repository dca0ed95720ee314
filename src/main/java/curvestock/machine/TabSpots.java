package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Finds where tabs could stay: where there is waste beyond the cut that is as wide as a tab, or the
 * side of a neighbour that runs along, so that both may have a tab in common.
 */
final class TabSpots {

  /** Neighbours' sides differ by less than this in direction: cos 8°. */
  private static final double ALONG = 0.99;

  /** Wood between two cuts that a common tab bridges, in tabs; what is wider holds by itself. */
  private static final double BRIDGED = 1.2;

  private final List<TabPath> paths;
  private final List<Box> boxes;
  private final WasteMap waste;
  private final double kerf;
  private final double grown;
  private final double tab;
  private final double gap;
  private final int count;

  /**
   * @param grown by how much outlines are drawn outside the finished size
   * @param tab width of a tab's wood
   * @param count tabs to a piece
   */
  TabSpots(
      Layout layout, List<TabPath> paths, WasteMap waste, double grown, double tab, int count) {
    this.paths = paths;
    this.waste = waste;
    this.kerf = layout.cutting().kerf().millimetres();
    this.grown = grown;
    this.tab = tab;
    this.gap = tab + kerf;
    this.count = count;
    boxes =
        paths.stream()
            .map(path -> path.edges().stream().map(Edge::box).reduce(Box::union).orElseThrow())
            .toList();
  }

  /** All spots of an outline: where tabs would lie if spread evenly, and every half tab between. */
  List<TabSpot> on(int index) {
    TabPath path = paths.get(index);
    List<TabSpot> spots = new ArrayList<>();
    for (int edge = 0; edge < path.edges().size(); edge++) {
      double before = path.usable(edge, gap);
      double usable = path.usable(edge + 1, gap) - before;
      double length = path.edges().get(edge).length();
      if (path.ends().get(edge)) {
        for (double middle = 1.5 * gap; middle <= length - 1.5 * gap; middle += gap / 2) {
          spot(index, edge, middle, Double.NaN).ifPresent(spots::add);
        }
      }
      if (usable <= 0) {
        continue;
      }
      TreeSet<Double> places = new TreeSet<>();
      int steps = Math.max(1, (int) Math.ceil(usable / (gap / 2)));
      for (int i = 0; i <= steps; i++) {
        places.add(usable * i / steps);
      }
      for (double even : path.even(count, gap)) {
        if (even >= before && even <= before + usable) {
          places.add(even - before);
        }
      }
      for (double place : places) {
        double middle = Math.max(1.5 * gap, Math.min(length - 1.5 * gap, gap + place));
        spot(index, edge, middle, before + place).ifPresent(spots::add);
      }
    }
    return spots;
  }

  private Optional<TabSpot> spot(int index, int edge, double middle, double along) {
    TabPath path = paths.get(index);
    if (!path.takes(edge, middle, gap)) {
      return Optional.empty();
    }
    Point at = path.at(edge, middle);
    Point out = path.outwards(edge, middle);
    Point finished = at.minus(out.times(grown));
    boolean end = path.ends().get(edge);
    int reached = waste.reached(path.piece(), finished, out);
    if (reached >= 0) {
      return Optional.of(
          new TabSpot(index, edge, middle, along, at, reached, end, Optional.empty()));
    }
    return across(path, at, out)
        .map(
            other ->
                new TabSpot(
                    index,
                    edge,
                    middle,
                    along,
                    at,
                    -1,
                    end || paths.get(other.path()).ends().get(other.edge()),
                    Optional.of(other)));
  }

  /** The side of the one piece that lies beyond, if a straight tab may end on it. */
  private Optional<TabSpot.Across> across(TabPath path, Point at, Point out) {
    Point finished = at.minus(out.times(grown));
    double farthest = 2 * kerf + BRIDGED * tab;
    Box here = Box.of(at, at);
    TabSpot.Across best = null;
    double nearest = farthest - 2 * grown;
    for (int i = 0; i < paths.size(); i++) {
      TabPath other = paths.get(i);
      if (other.piece() == path.piece()
          || !other.isOutside()
          || boxes.get(i).distance(here) > nearest) {
        continue;
      }
      for (int k = 0; k < other.edges().size(); k++) {
        Edge edge = other.edges().get(k);
        if (edge.box().distance(here) > nearest) {
          continue;
        }
        OptionalDouble way = TabPath.meeting(edge, at, out);
        if (way.isPresent() && way.getAsDouble() < nearest) {
          nearest = way.getAsDouble();
          best = new TabSpot.Across(i, k, TabPath.along(edge, at.plus(out.times(nearest))));
        }
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    TabPath other = paths.get(best.path());
    boolean fits =
        other.takes(best.edge(), best.middle(), gap)
            && other.outwards(best.edge(), best.middle()).dot(out) < -ALONG
            && waste
                .inTheWay(finished, out, nearest + 2 * grown, List.of(path.piece(), other.piece()))
                .isEmpty();
    return fits ? Optional.of(best) : Optional.empty();
  }
}
