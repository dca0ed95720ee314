package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Grows an outline by a distance, exactly: the path of the middle of a round tool of that radius
 * that runs along the outline in the waste.
 *
 * <p>Lines move to the side, arcs change their radius, outside corners become arcs about the
 * corner, inside corners are where the moved edges meet. Holes shrink. Exact up to rounding. An
 * outline whose hollows are too narrow for the tool is refused rather than cut wrongly: the result
 * is tested to keep its distance from the outline everywhere, at the ends and nine inner points of
 * each edge.
 */
public final class OutlineOffset {

  /** Corners that turn by less (radians) are rounding: the edges meet smoothly. */
  private static final double SMOOTH = 1e-7;

  /** How much nearer than the distance the result may come, for rounding, in millimetres. */
  private static final double ROUNDING = 1e-6;

  private static final int SAMPLES = 10;

  private final double distance;

  private OutlineOffset(double distance) {
    this.distance = distance;
  }

  /**
   * The outline grown by {@code distance} millimetres; the outline itself for zero.
   *
   * @return empty if a hollow or a hole is too narrow for the tool
   * @throws IllegalArgumentException if the distance is negative
   */
  public static Optional<Outline> outwards(Outline outline, double distance) {
    if (!(distance >= 0)) {
      throw new IllegalArgumentException(
          "offset must not be negative, but was " + distance + " mm");
    }
    if (distance == 0) {
      return Optional.of(outline);
    }
    OutlineOffset offset = new OutlineOffset(distance);
    Optional<Loop> outer = offset.grown(outline.outer()).filter(loop -> loop.signedArea() > 0);
    List<Loop> holes = new ArrayList<>();
    for (Loop hole : outline.holes()) {
      offset.grown(hole).filter(loop -> loop.signedArea() < 0).ifPresent(holes::add);
    }
    if (outer.isEmpty() || holes.size() < outline.holes().size()) {
      return Optional.empty();
    }
    Outline grown = new Outline(outer.get(), holes);
    return offset.keepsAway(grown, outline) ? Optional.of(grown) : Optional.empty();
  }

  private Optional<Loop> grown(Loop loop) {
    List<Edge> from = new ArrayList<>();
    List<Edge> moved = new ArrayList<>();
    for (Edge edge : loop.edges()) {
      moved(edge)
          .ifPresent(
              to -> {
                from.add(edge);
                moved.add(to);
              });
    }
    int count = moved.size();
    if (count == 0) {
      return Optional.empty();
    }
    List<Optional<Arc>> corners = new ArrayList<>();
    List<Edge> trimmed = new ArrayList<>(moved);
    for (int i = 0; i < count; i++) {
      int next = (i + 1) % count;
      Edge before = from.get(i);
      Edge after = from.get(next);
      double turn = turn(before, after);
      boolean meet = before.end().distance(after.start()) <= ROUNDING;
      if (meet && turn > SMOOTH) {
        Point normal = right(before.endDirection());
        corners.add(Optional.of(new Arc(before.end(), distance, normal.angle(), turn)));
        continue;
      }
      corners.add(Optional.empty());
      if (!meet || turn < -SMOOTH) {
        Optional<Point> crossing =
            Crossing.nearest(moved.get(i), moved.get(next), before.end(), after.start());
        if (crossing.isEmpty() || !trim(trimmed, i, next, crossing.get())) {
          return Optional.empty();
        }
      }
    }
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      edges.add(trimmed.get(i));
      corners.get(i).ifPresent(edges::add);
    }
    return Optional.of(new Loop(edges));
  }

  /** Ends one edge and begins the next at a point; false if nothing is left of one of them. */
  private static boolean trim(List<Edge> edges, int before, int after, Point at) {
    Optional<Edge> first = withEnd(edges.get(before), at);
    first.ifPresent(edge -> edges.set(before, edge));
    Optional<Edge> second = withStart(edges.get(after), at);
    second.ifPresent(edge -> edges.set(after, edge));
    return first.isPresent() && second.isPresent();
  }

  /** The edge moved to its right, away from the material; nothing if its arc closes up. */
  private Optional<Edge> moved(Edge edge) {
    if (edge instanceof Arc arc) {
      double radius = arc.radius() + Math.signum(arc.sweep()) * distance;
      return radius > ROUNDING
          ? Optional.of(new Arc(arc.centre(), radius, arc.startAngle(), arc.sweep()))
          : Optional.empty();
    }
    Point aside = right(edge.startDirection()).times(distance);
    return Optional.of(new Segment(edge.start().plus(aside), edge.end().plus(aside)));
  }

  private static Point right(Point direction) {
    return new Point(direction.y(), -direction.x());
  }

  /** By how much the path turns to the left from one edge to the next, in (−π, π]. */
  private static double turn(Edge before, Edge after) {
    Point a = before.endDirection();
    Point b = after.startDirection();
    return Math.atan2(a.cross(b), a.dot(b));
  }

  private static Optional<Edge> withStart(Edge edge, Point start) {
    return withEnd(edge.reversed(), start).map(Edge::reversed);
  }

  /** The edge cut off at a point of its line or circle; nothing if no length is left. */
  private static Optional<Edge> withEnd(Edge edge, Point end) {
    if (edge instanceof Arc arc) {
      double first = arc.startAngle();
      double sweep = end.minus(arc.centre()).angle() - first;
      double whole = 2 * Math.PI;
      sweep -= whole * Math.floor(sweep / whole);
      sweep = arc.sweep() > 0 ? sweep : sweep - whole;
      boolean left = Math.abs(sweep) <= Math.abs(arc.sweep()) + SMOOTH && sweep != 0;
      return left
          ? Optional.of(new Arc(arc.centre(), arc.radius(), first, sweep))
          : Optional.empty();
    }
    boolean left = end.minus(edge.start()).dot(edge.startDirection()) > 0;
    return left ? Optional.of(new Segment(edge.start(), end)) : Optional.empty();
  }

  private boolean keepsAway(Outline grown, Outline outline) {
    for (Edge edge : grown.edges()) {
      for (int i = 0; i <= SAMPLES; i++) {
        Point point = i == 0 ? edge.start() : edge.part(0, (double) i / SAMPLES).end();
        for (Edge near : outline.edges()) {
          if (near.distanceTo(point) < distance - ROUNDING) {
            return false;
          }
        }
      }
    }
    return true;
  }
}
