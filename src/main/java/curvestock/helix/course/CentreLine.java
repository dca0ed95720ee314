package curvestock.helix.course;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Angle;
import java.util.ArrayList;
import java.util.List;

/**
 * The roadbed's centre line in plan, as arcs and straights, with the tangents that lead to it and
 * away from it.
 *
 * <p>Frame: the centre of the (first half) turn at the origin, +x at bearing 0°, millimetres. An
 * oval begins with a half turn and ends with a straight, so that every half turn is an arc and a
 * straight.
 */
public final class CentreLine {

  /** Of a degree; at a metre's radius far less than a wood fibre. */
  private static final double BEARING_STEP = 1.0 / (1 << 20);

  private final List<Edge> edges;
  private final double start;
  private final double length;
  private final Direction direction;
  private final double runPerTurn;
  private final double ringLength;
  private final boolean oval;
  private final double entry;

  public CentreLine(HelixSpec spec, Climb climb) {
    GroundPlan ground = spec.ground();
    direction = ground.direction();
    runPerTurn = climb.runPerTurn().millimetres();
    ringLength = climb.ringLength();
    oval = ground.isOval();
    entry = ground.entry().radians();
    double before = spec.bottom().easement().millimetres();
    double after = spec.top().easement().millimetres();
    double radius = ground.bedRadius().millimetres();
    edges = new ArrayList<>();
    Waypoint entry = onCircle(ground, radius, before / (2 * radius));
    if (before > 0) {
      edges.addAll(Easement.into(entry, radius, before, direction));
    }
    // The arcs of an easement are longer than its spiral by a hair; the ring keeps its distances.
    start = before / 2 - lengthOf(edges);
    Walker walker = new Walker(entry, edges);
    if (ground.isOval()) {
      double straight = ground.straight().millimetres();
      for (int half = 0; half < Math.rint(climb.turns() * 2); half++) {
        walker.arc(radius, direction.sign() * Math.PI);
        walker.straight(straight);
      }
    } else {
      double sweep = climb.turns() * 2 * Math.PI - (before + after) / (2 * radius);
      walker.round(radius, direction.sign() * sweep);
    }
    if (after > 0) {
      edges.addAll(Easement.outOf(walker.here(), radius, after, direction));
    }
    length = lengthOf(edges);
  }

  private static double lengthOf(List<Edge> edges) {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  private static Waypoint onCircle(GroundPlan ground, double radius, double ahead) {
    int sign = ground.direction().sign();
    double bearing = ground.entry().radians() + sign * ahead;
    return new Waypoint(Point.polar(radius, bearing), bearing + sign * Math.PI / 2);
  }

  /** Where the line is at distance {@code s}; on the tangents outside the ring. */
  public Waypoint at(double s) {
    double along = s - start;
    if (along <= 0) {
      return ahead(startOf(edges.get(0)), along);
    }
    for (Edge edge : edges) {
      if (along <= edge.length()) {
        return onEdge(edge, along);
      }
      along -= edge.length();
    }
    return ahead(endOf(edges.get(edges.size() - 1)), along);
  }

  /**
   * The line from {@code from} to {@code to}, with straights for what lies outside the ring; at
   * most one turn.
   */
  public List<Edge> portion(double from, double to) {
    List<Edge> parts = new ArrayList<>();
    if (from < start - SLIVER) {
      parts.add(new Segment(at(from).point(), at(Math.min(start, to)).point()));
    }
    double begin = start;
    for (Edge edge : edges) {
      double a = Math.max(0, from - begin);
      double b = Math.min(edge.length(), to - begin);
      if (b - a > NEGLIGIBLE) {
        append(parts, part(edge, a, b));
      }
      begin += edge.length();
    }
    double end = start + length;
    if (to > end + SLIVER) {
      append(parts, new Segment(at(Math.max(end, from)).point(), at(to).point()));
    }
    return parts;
  }

  /**
   * Adds an edge, or lengthens the last one if the edge goes on round the same centre or straight
   * on.
   */
  private static void append(List<Edge> parts, Edge edge) {
    if (!parts.isEmpty()
        && parts.get(parts.size() - 1) instanceof Segment last
        && edge instanceof Segment next
        && goesStraightOn(last, next)) {
      parts.set(parts.size() - 1, new Segment(last.start(), next.end()));
    } else if (!parts.isEmpty()
        && parts.get(parts.size() - 1) instanceof Arc last
        && edge instanceof Arc next
        && last.centre().distance(next.centre()) < NEGLIGIBLE
        && Math.abs(last.radius() - next.radius()) < NEGLIGIBLE) {
      double sweep = last.sweep() + next.sweep();
      parts.set(parts.size() - 1, new Arc(last.centre(), last.radius(), last.startAngle(), sweep));
    } else {
      parts.add(edge);
    }
  }

  private static boolean goesStraightOn(Segment last, Segment next) {
    double turned = next.end().minus(next.start()).angle() - last.end().minus(last.start()).angle();
    return Math.abs(Math.sin(turned / 2)) < NEGLIGIBLE;
  }

  /** Shorter parts than a thousandth of a micrometre are rounding. */
  private static final double NEGLIGIBLE = 1e-6;

  /** A straight shorter than this is what the arcs of an easement are longer than its spiral. */
  private static final double SLIVER = 1e-3;

  /**
   * Direction from the ring's middle, 0° to 360°. On an oval's straights, and on the tangents
   * outside the ring, the direction square to the line and away from the middle.
   */
  public Angle bearing(double s) {
    double degrees = Math.toDegrees(radians(s));
    double turned = degrees - 360 * Math.floor(degrees / 360);
    // A place has one bearing on every turn: rounding makes no 0° to 359.999...°, no 5.25° to
    // 5.249...°.
    double whole = Math.rint(turned / BEARING_STEP) * BEARING_STEP;
    return Angle.ofDegrees(whole > 360 - BEARING_STEP / 2 ? 0 : whole);
  }

  private double radians(double s) {
    Waypoint here = at(s);
    // The ring's last station lies past its end by rounding, where an easement has turned from it.
    boolean onRing = !oval && s >= -SLIVER && s <= ringLength + SLIVER;
    return onRing ? along(s) : here.heading() - direction.sign() * Math.PI / 2;
  }

  /** By the share of the turn: an easement leaves the circle there by a hair of an angle. */
  private double along(double s) {
    return entry + direction.sign() * s / runPerTurn * 2 * Math.PI;
  }

  /** Number of the turn, from 1; the approach counts to the first turn, the end to the last. */
  public int turnAt(double s) {
    int last = Math.max(1, (int) Math.ceil(ringLength / runPerTurn - 1e-9));
    return Math.max(1, Math.min(last, (int) Math.floor(s / runPerTurn + 1e-9) + 1));
  }

  /** +1 if the ring's middle lies to the left of the line, −1 if to the right. */
  public int inwards() {
    return direction.sign();
  }

  private static Edge part(Edge edge, double from, double to) {
    if (edge instanceof Arc arc) {
      double sign = Math.signum(arc.sweep());
      double first = arc.startAngle() + sign * from / arc.radius();
      double sweep = sign * Math.max(to - from, Double.MIN_NORMAL) / arc.radius();
      return new Arc(arc.centre(), arc.radius(), first, sweep);
    }
    Point unit = edge.end().minus(edge.start()).times(1 / edge.length());
    return new Segment(edge.start().plus(unit.times(from)), edge.start().plus(unit.times(to)));
  }

  private static Waypoint onEdge(Edge edge, double along) {
    if (edge instanceof Arc) {
      return startOf(part(edge, along, edge.length()));
    }
    // The rest of a straight may be too short to have a direction of its own.
    Waypoint start = startOf(edge);
    return ahead(start, along);
  }

  private static Waypoint startOf(Edge edge) {
    return new Waypoint(edge.start(), headingAt(edge, true));
  }

  private static Waypoint endOf(Edge edge) {
    return new Waypoint(edge.end(), headingAt(edge, false));
  }

  private static double headingAt(Edge edge, boolean atStart) {
    if (edge instanceof Arc arc) {
      double direction = atStart ? arc.startAngle() : arc.startAngle() + arc.sweep();
      return direction + Math.signum(arc.sweep()) * Math.PI / 2;
    }
    return edge.end().minus(edge.start()).angle();
  }

  private static Waypoint ahead(Waypoint from, double distance) {
    return new Waypoint(from.point().plus(Point.polar(distance, from.heading())), from.heading());
  }
}
