package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * An outline that tabs may interrupt: which of its edges may bear them, and where.
 *
 * @param piece its index in the layout
 * @param hole number of the hole from 1, or 0 for the outside
 * @param edges in cutting order, as they are drawn
 * @param sides which of them may bear tabs
 * @param ends which of them may where nothing else holds the piece
 */
record TabPath(int piece, int hole, List<Edge> edges, List<Boolean> sides, List<Boolean> ends) {

  /** An edge must be this many tabs long to bear one: itself, and its length free on each side. */
  static final double ROOM = 3;

  TabPath {
    edges = List.copyOf(edges);
    sides = List.copyOf(sides);
    ends = List.copyOf(ends);
  }

  boolean isOutside() {
    return hole == 0;
  }

  /** Whether the middle of a tab may lie so far along an edge. */
  boolean takes(int edge, double middle, double gap) {
    return (sides.get(edge) || ends.get(edge))
        && middle >= ROOM / 2 * gap - 1e-9
        && middle <= edges.get(edge).length() - ROOM / 2 * gap + 1e-9;
  }

  /** Length that bears tabs, up to an edge: edges that may, less a tab's length at each end. */
  double usable(int before, double gap) {
    double sum = 0;
    for (int i = 0; i < before; i++) {
      double length = edges.get(i).length();
      sum += sides.get(i) && length >= ROOM * gap ? length - 2 * gap : 0;
    }
    return sum;
  }

  /** Where tabs would lie if they were spread evenly, along the usable length. */
  double[] even(int count, double gap) {
    double usable = usable(edges.size(), gap);
    return DoubleStream.iterate(0.5, share -> share + 1)
        .limit(count)
        .map(share -> share / count * usable)
        .toArray();
  }

  /** How far along its edge the middle of a tab lies. */
  double middle(TabPlaces.Place tab) {
    return (tab.from() + tab.to()) / 2 * edges.get(tab.edge()).length();
  }

  Point at(int edge, double middle) {
    return edges.get(edge).part(0, middle / edges.get(edge).length()).end();
  }

  /** Away from the wood of the piece, which lies to the left of its edges. */
  Point outwards(int edge, double middle) {
    Point ahead = edges.get(edge).part(middle / edges.get(edge).length(), 1).startDirection();
    return new Point(ahead.y(), -ahead.x());
  }

  /** How far along an edge a straight way from a point meets it first; empty if it does not. */
  static OptionalDouble meeting(Edge edge, Point from, Point ahead) {
    if (edge instanceof Arc arc) {
      Point offset = from.minus(arc.centre());
      double towards = offset.dot(ahead);
      double inside = towards * towards - offset.dot(offset) + arc.radius() * arc.radius();
      if (inside < 0) {
        return OptionalDouble.empty();
      }
      double root = Math.sqrt(inside);
      return DoubleStream.of(-towards - root, -towards + root)
          .filter(way -> way > -1e-6)
          .filter(way -> arc.spans(from.plus(ahead.times(way)).minus(arc.centre()).angle()))
          .findFirst();
    }
    Segment segment = (Segment) edge;
    Point along = segment.end().minus(segment.start());
    double turn = ahead.cross(along);
    if (Math.abs(turn) < 1e-9) {
      return OptionalDouble.empty();
    }
    Point offset = segment.start().minus(from);
    double way = offset.cross(along) / turn;
    double share = offset.cross(ahead) / turn;
    return way > -1e-6 && share >= 0 && share <= 1
        ? OptionalDouble.of(way)
        : OptionalDouble.empty();
  }

  /** How far along the edge a point of it lies. */
  static double along(Edge edge, Point point) {
    if (edge instanceof Arc arc) {
      double turn =
          (point.minus(arc.centre()).angle() - arc.startAngle()) * Math.signum(arc.sweep());
      turn -= 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
      return turn * arc.radius();
    }
    return edge.start().distance(point);
  }
}
