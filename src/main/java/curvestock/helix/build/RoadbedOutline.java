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

  /** Shorter parts than a thousandth of a micrometre are rounding. */
  private static final double NEGLIGIBLE = 1e-6;

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

  /** One edge of the roadbed: the line moved to the left by {@code offset}, with its ears. */
  private List<Edge> side(double offset, List<EarPlace> ears) {
    List<Edge> path = line.stream().map(edge -> moved(edge, offset)).toList();
    double total = path.stream().mapToDouble(Edge::length).sum();
    List<Edge> side = new ArrayList<>();
    double done = 0;
    for (EarPlace place : ears) {
      Edge here = from(path, alongSide(path, place.at()));
      double half = halfFoot(here, place.ear());
      double middle = alongSide(path, place.at());
      if (middle - half <= done || middle + half >= total) {
        throw new IllegalArgumentException(
            "an ear must lie within its piece, but at "
                + Math.round(place.at())
                + " mm from the piece's beginning it reaches over an end: move the supports");
      }
      side.addAll(portion(path, done, middle - half));
      done = middle + half;
      addEar(side, here, from(path, done).start(), place.ear(), Math.signum(offset));
    }
    side.addAll(portion(path, done, total));
    return side;
  }

  /** Distance along the moved path that belongs to a distance along the line. */
  private double alongSide(List<Edge> path, double at) {
    double left = at;
    double along = 0;
    for (int i = 0; i < line.size(); i++) {
      double length = line.get(i).length();
      if (left <= length || i == line.size() - 1) {
        return along + path.get(i).length() * left / length;
      }
      left -= length;
      along += path.get(i).length();
    }
    return along;
  }

  private static List<Edge> portion(List<Edge> path, double from, double to) {
    List<Edge> parts = new ArrayList<>();
    double begin = 0;
    for (Edge edge : path) {
      double a = Math.max(0, from - begin);
      double b = Math.min(edge.length(), to - begin);
      if (b - a > NEGLIGIBLE) {
        parts.add(part(edge, a, b));
      }
      begin += edge.length();
    }
    return parts;
  }

  /** What is left of the edge at a distance along the path, from there on. */
  private static Edge from(List<Edge> path, double at) {
    double left = at;
    for (Edge edge : path) {
      if (left < edge.length() - NEGLIGIBLE) {
        return part(edge, left, edge.length());
      }
      left -= edge.length();
    }
    throw new IllegalArgumentException("place must lie on the path, but was at " + at + " mm");
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

  /** Half of what the ear takes of the edge, measured along it. */
  private static double halfFoot(Edge edge, Ear ear) {
    double half = ear.width().millimetres() / 2;
    return edge instanceof Arc arc ? arc.radius() * Math.asin(half / arc.radius()) : half;
  }

  /** An ear from where the side ends so far to {@code end}, square to {@code here}. */
  private static void addEar(List<Edge> side, Edge here, Point end, Ear ear, double left) {
    double half = ear.width().millimetres() / 2;
    Point forward = tangent(here);
    Point outward = new Point(-forward.y() * left, forward.x() * left);
    Point tip = here.start().plus(outward.times(ear.reach().millimetres()));
    Point a = tip.minus(forward.times(half));
    Point b = tip.plus(forward.times(half));
    Point foot = side.get(side.size() - 1).end();
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
