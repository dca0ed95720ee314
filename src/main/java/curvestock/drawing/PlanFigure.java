package curvestock.drawing;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.Bridge;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Riser;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Puts parts of a helix, seen from above, on paper: smaller by a factor and moved. */
public final class PlanFigure {

  private final HelixPlan plan;
  private final double factor;
  private final Point origin;
  private final double halfWidth;

  /**
   * A figure.
   *
   * @param factor how much smaller than true size
   * @param origin where the ring's middle lies on paper
   */
  public PlanFigure(HelixPlan plan, double factor, Point origin) {
    this.plan = plan;
    this.factor = factor;
    this.origin = origin;
    this.halfWidth = plan.spec().ground().width().millimetres() / 2;
  }

  /** How much smaller than true size. */
  double factor() {
    return factor;
  }

  public Point place(Point point) {
    return origin.plus(point.times(factor));
  }

  public List<Edge> place(List<Edge> edges) {
    return edges.stream().map(this::place).toList();
  }

  private Edge place(Edge edge) {
    return edge instanceof Arc arc
        ? new Arc(place(arc.centre()), arc.radius() * factor, arc.startAngle(), arc.sweep())
        : new Segment(place(edge.start()), place(edge.end()));
  }

  /** The point so far outwards of the centre line, in true millimetres. */
  public Point beside(double at, double outwards) {
    Waypoint here = plan.line().at(at);
    return place(here.toLeft(-plan.line().inwards() * outwards));
  }

  /** The unit vector that leads outwards there. */
  public Point outwards(double at) {
    Waypoint here = plan.line().at(at);
    return here.toLeft(-plan.line().inwards()).minus(here.point());
  }

  /** Corners of a riser block whose middle lies so far outwards, closed; for true size only. */
  public List<Point> block(double at, double outwards, Riser.WoodBlocks blocks) {
    return block(at, outwards, blocks.width(), blocks.along());
  }

  /** Corners of what is so wide across the track and so long along it; for true size only. */
  List<Point> block(double at, double outwards, Length width, Length length) {
    Point middle = beside(at, outwards);
    Point across = outwards(at).times(width.millimetres() / 2);
    Point along = Point.polar(length.millimetres() / 2, plan.line().at(at).heading());
    return List.of(
        middle.plus(across).plus(along),
        middle.plus(across).minus(along),
        middle.minus(across).minus(along),
        middle.minus(across).plus(along),
        middle.plus(across).plus(along));
  }

  /** Whether the middle of a ring's support is below the exit's lead, which hides it from above. */
  boolean isUnderTheExit(double at, Point middle) {
    double ring = plan.climb().ringLength();
    // Where the lead begins it lies over the ring's own end, whose supports hold it.
    double from = ring + 2 * halfWidth;
    double to = ring + plan.spec().top().leadIn().millimetres();
    return at < ring
        && from < to
        && plan.line().portion(from, to).stream()
            .anyMatch(edge -> edge.distanceTo(middle) < halfWidth);
  }

  /** What bridges a gap of the lowest turn, closed: a batten below, or a strip beside the edge. */
  public List<Edge> bridge(Bridge bridge) {
    if (bridge.form() == Bridge.Form.STRIP) {
      double over = Bridge.OVERLAP.millimetres();
      double out = halfWidth + bridge.cut(plan.style()).breadth().millimetres();
      double side = -plan.line().inwards() * (bridge.outer() ? 1 : -1);
      return place(band(bridge.from() - over, bridge.to() + over, side * halfWidth, side * out));
    }
    Point from = beside(bridge.from(), bridge.outwards());
    Point to = beside(bridge.to(), bridge.outwards());
    Point along = to.minus(from).times(1 / to.distance(from));
    Point middle = from.plus(to).times(0.5);
    Point ahead = along.times(factor * bridge.length().millimetres() / 2);
    Point aside =
        new Point(-along.y(), along.x()).times(factor * bridge.breadth().millimetres() / 2);
    List<Point> corners =
        List.of(
            middle.minus(ahead).minus(aside),
            middle.plus(ahead).minus(aside),
            middle.plus(ahead).plus(aside),
            middle.minus(ahead).plus(aside));
    return IntStream.range(0, 4)
        .<Edge>mapToObj(i -> new Segment(corners.get(i), corners.get((i + 1) % 4)))
        .toList();
  }

  /** A line beside the centre line, on paper. */
  public List<Edge> besideLine(double from, double to, double outwards) {
    return place(offset(plan.line().portion(from, to), -plan.line().inwards() * outwards));
  }

  /** The roadbed from one place to another, closed, on paper. */
  public List<Edge> roadbed(double from, double to) {
    return place(band(from, to, -halfWidth, halfWidth));
  }

  /** Closed, between two lines so far to the left of the centre line. */
  private List<Edge> band(double from, double to, double left, double other) {
    List<Edge> part = plan.line().portion(from, to);
    List<Edge> edges = new ArrayList<>(offset(part, left));
    List<Edge> back = offset(part, other);
    edges.add(Segment.joining(edges.get(edges.size() - 1), back.get(back.size() - 1).reversed()));
    for (int i = back.size() - 1; i >= 0; i--) {
      edges.add(back.get(i).reversed());
    }
    return edges;
  }

  private static List<Edge> offset(List<Edge> part, double left) {
    List<Edge> moved = new ArrayList<>();
    for (Edge edge : part) {
      if (edge instanceof Arc arc) {
        double radius = arc.radius() - Math.signum(arc.sweep()) * left;
        moved.add(new Arc(arc.centre(), radius, arc.startAngle(), arc.sweep()));
      } else {
        Point along = edge.end().minus(edge.start());
        Point normal = new Point(-along.y(), along.x()).times(left / along.norm());
        moved.add(new Segment(edge.start().plus(normal), edge.end().plus(normal)));
      }
    }
    return moved;
  }
}
