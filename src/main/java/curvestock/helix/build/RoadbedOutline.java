package curvestock.helix.build;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.helix.spec.Riser.Ear;
import java.util.ArrayList;
import java.util.List;

/**
 * The outline of roadbed of even width along arcs and straights, square at both ends, with ears on
 * both edges where wanted.
 */
final class RoadbedOutline {

  private final List<Edge> line;
  private final double halfWidth;

  /**
   * A part of the centre line and the roadbed's width.
   *
   * @param line edges that each begin where, and in the direction in which, the last ended
   */
  RoadbedOutline(List<Edge> line, double width) {
    this.line = line;
    this.halfWidth = width / 2;
  }

  /** Without ears. */
  Outline plain() {
    return closed(side(-halfWidth, List.of()), side(halfWidth, List.of()));
  }

  /**
   * With an ear on both edges at each of the given distances from the line's beginning.
   *
   * @throws IllegalArgumentException if an ear would reach over the end of an edge
   */
  Outline withEars(List<Double> places, Ear ear) {
    List<EarPlace> ears = places.stream().map(at -> new EarPlace(at, ear)).toList();
    return closed(side(-halfWidth, ears), side(halfWidth, ears));
  }

  private record EarPlace(double at, Ear ear) {}

  private static Outline closed(List<Edge> right, List<Edge> left) {
    List<Edge> edges = new ArrayList<>(right);
    List<Edge> back = new ArrayList<>();
    for (int i = left.size() - 1; i >= 0; i--) {
      back.add(left.get(i).reversed());
    }
    edges.add(Segment.joining(right.get(right.size() - 1), back.get(0)));
    edges.addAll(back);
    edges.add(Segment.joining(back.get(back.size() - 1), right.get(0)));
    return Outline.of(new Loop(edges));
  }

  /** One edge of the roadbed: the line moved to the left by {@code offset}. */
  private List<Edge> side(double offset, List<EarPlace> ears) {
    List<Edge> side = new ArrayList<>();
    double begin = 0;
    for (Edge edge : line) {
      double from = begin;
      double to = begin + edge.length();
      List<EarPlace> here = ears.stream().filter(ear -> ear.at() >= from && ear.at() < to).toList();
      Edge moved = moved(edge, offset);
      double scale = moved.length() / edge.length();
      addWithEars(side, moved, here, from, scale, Math.signum(offset));
      begin = to;
    }
    return side;
  }

  private static Edge moved(Edge edge, double offset) {
    if (edge instanceof Arc arc) {
      double radius = arc.radius() - Math.signum(arc.sweep()) * offset;
      return new Arc(arc.centre(), radius, arc.startAngle(), arc.sweep());
    }
    Point normal = leftOf(edge).times(offset);
    return new Segment(edge.start().plus(normal), edge.end().plus(normal));
  }

  private static Point leftOf(Edge edge) {
    Point unit = edge.end().minus(edge.start()).times(1 / edge.length());
    return new Point(-unit.y(), unit.x());
  }

  private static void addWithEars(
      List<Edge> side, Edge edge, List<EarPlace> ears, double begin, double scale, double left) {
    double done = 0;
    for (EarPlace place : ears) {
      double middle = (place.at() - begin) * scale;
      double half = halfFoot(edge, place.ear());
      if (middle - half <= done || middle + half >= edge.length()) {
        throw new IllegalArgumentException(
            "an ear must lie within its piece, but at "
                + place.at()
                + " mm from the piece's beginning it reaches over an end: move the supports");
      }
      Edge before = part(edge, done, middle - half);
      side.add(before);
      addEar(side, before.end(), edge, middle, place.ear(), left);
      done = middle + half;
    }
    side.add(part(edge, done, edge.length()));
  }

  /** Half of what the ear takes of the edge, measured along it. */
  private static double halfFoot(Edge edge, Ear ear) {
    double half = ear.width().millimetres() / 2;
    return edge instanceof Arc arc ? arc.radius() * Math.asin(half / arc.radius()) : half;
  }

  private static void addEar(
      List<Edge> side, Point foot, Edge edge, double middle, Ear ear, double left) {
    double half = ear.width().millimetres() / 2;
    Edge here = part(edge, middle, edge.length());
    Point forward = tangent(here);
    Point outward = new Point(-forward.y() * left, forward.x() * left);
    Point tip = here.start().plus(outward.times(ear.reach().millimetres()));
    Point a = tip.minus(forward.times(half));
    Point b = tip.plus(forward.times(half));
    Point end = part(edge, middle + halfFoot(edge, ear), edge.length()).start();
    side.add(new Segment(foot, a));
    side.add(new Segment(a, b));
    side.add(new Segment(b, end));
  }

  private static Point tangent(Edge edge) {
    if (edge instanceof Arc arc) {
      return Point.polar(1, arc.startAngle() + Math.signum(arc.sweep()) * Math.PI / 2);
    }
    return edge.end().minus(edge.start()).times(1 / edge.length());
  }

  private static Edge part(Edge edge, double from, double to) {
    if (edge instanceof Arc arc) {
      double sign = Math.signum(arc.sweep());
      return new Arc(
          arc.centre(),
          arc.radius(),
          arc.startAngle() + sign * from / arc.radius(),
          sign * (to - from) / arc.radius());
    }
    Point unit = edge.end().minus(edge.start()).times(1 / edge.length());
    return new Segment(edge.start().plus(unit.times(from)), edge.start().plus(unit.times(to)));
  }
}
