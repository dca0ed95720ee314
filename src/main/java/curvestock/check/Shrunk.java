package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Takes an outline that was grown by half the kerf back to the finished size: lines are moved back
 * towards the material, arcs get their radius back, arcs about outside corners become the corners,
 * and edges that no longer meet are taken to where their lines cross. The grown outline must then
 * lie at that distance from the result everywhere, tested at the ends and seven inner points of
 * each edge, so that a wrong growth cannot pass.
 */
final class Shrunk {

  /** An arc about a corner has the growth for its radius, within this (mm). */
  private static final double CORNER = 0.001;

  /** Ends nearer than this meet. */
  private static final double MEET = 0.002;

  /** A shorter line, in growths, stands for an arc about a corner that turns by less than 20°. */
  private static final double SHORT = 0.35;

  private static final int SAMPLES = 8;

  private final CutForm form;

  Shrunk(CutForm form) {
    this.form = form;
  }

  /**
   * The finished size of a grown shape.
   *
   * @throws CheckException if it is not grown by the stated distance everywhere
   */
  TraceShape of(TraceShape grown) throws CheckException {
    List<TraceLoop> loops = new ArrayList<>();
    for (TraceLoop loop : grown.loops()) {
      loops.add(shrunk(loop));
    }
    TraceShape shape = new TraceShape(loops.get(0), loops.subList(1, loops.size()));
    requireDistance(grown, shape);
    return shape;
  }

  private TraceLoop shrunk(TraceLoop loop) throws CheckException {
    List<Trace> moved = new ArrayList<>();
    List<Trace> all = loop.edges();
    for (int i = 0; i < all.size(); i++) {
      Trace before = all.get((i + all.size() - 1) % all.size());
      Trace after = all.get((i + 1) % all.size());
      if (!isCorner(all.get(i)) && !isBevel(before, all.get(i), after)) {
        moved.add(moved(all.get(i)));
      }
    }
    if (moved.size() < 2) {
      if (moved.size() == 1 && moved.get(0) instanceof Trace.Round) {
        return new TraceLoop(moved);
      }
      throw new CheckException("the outline does not have the form of one offset by half a kerf");
    }
    // Of a chord that stands for a flat arc the moved ends lie a little aside of that arc's own.
    double meet = form.linesWithin() > 0 ? 5 * MEET : MEET;
    List<Point> joints = new ArrayList<>();
    for (int i = 0; i < moved.size(); i++) {
      joints.add(joint(moved.get(i), moved.get((i + 1) % moved.size()), meet));
    }
    List<Trace> edges = new ArrayList<>();
    for (int i = 0; i < moved.size(); i++) {
      Point from = joints.get((i + moved.size() - 1) % moved.size());
      edges.add(between(moved.get(i), from, joints.get(i)));
    }
    return new TraceLoop(edges);
  }

  private boolean isCorner(Trace edge) {
    boolean lines = form.linesWithin() > 0;
    double slack = lines ? 10 * CORNER : CORNER;
    boolean about =
        edge instanceof Trace.Round round
            && round.sweep() > 0
            && Math.abs(round.radius() - form.grown()) <= slack;
    // Written as lines, an arc about a corner that hardly turns is one short line.
    return about || (lines && edge.length() <= SHORT * form.grown());
  }

  /**
   * Whether a straight line between two edges is the chord of the arc about an outside corner where
   * they met: as long as that chord, and turned by half the corner from each.
   */
  private boolean isBevel(Trace before, Trace edge, Trace after) {
    if (form.linesWithin() == 0 || edge instanceof Trace.Round) {
      return false;
    }
    double turn = turn(before.endDirection(), after.startDirection());
    double chord = 2 * form.grown() * Math.sin(turn / 2);
    double half = turn(before.endDirection(), edge.startDirection());
    return turn > 0
        && Math.abs(edge.length() - chord) <= CORNER
        && Math.abs(half - turn / 2) * edge.length() <= 2 * CORNER;
  }

  private static double turn(Point from, Point to) {
    return Math.atan2(from.cross(to), from.dot(to));
  }

  private Trace moved(Trace edge) throws CheckException {
    if (edge instanceof Trace.Round round) {
      double radius = round.radius() - Math.signum(round.sweep()) * form.grown();
      if (!(radius > 0)) {
        throw new CheckException("an arc of the outline is too small to be offset by half a kerf");
      }
      return new Trace.Round(round.centre(), radius, round.first(), round.sweep());
    }
    Point ahead = edge.startDirection();
    Point left = new Point(-ahead.y() * form.grown(), ahead.x() * form.grown());
    return new Trace.Straight(edge.start().plus(left), edge.end().plus(left));
  }

  private static Point joint(Trace before, Trace after, double meet) throws CheckException {
    Point a = before.end();
    Point b = after.start();
    Point middle = new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
    if (a.distance(b) <= meet) {
      return middle;
    }
    return LineCrossings.of(before, after).stream()
        .min(Comparator.comparingDouble(p -> p.distance(a) + p.distance(b)))
        .orElseThrow(() -> new CheckException("two edges of the grown outline do not meet"));
  }

  private static Trace between(Trace edge, Point from, Point to) {
    if (!(edge instanceof Trace.Round round)) {
      return new Trace.Straight(from, to);
    }
    if (round.isWholeCircle()) {
      return round;
    }
    double first = from.minus(round.centre()).angle();
    double change = to.minus(round.centre()).angle() - first - round.sweep();
    change -= 2 * Math.PI * Math.rint(change / (2 * Math.PI));
    return new Trace.Round(round.centre(), round.radius(), first, round.sweep() + change);
  }

  private void requireDistance(TraceShape grown, TraceShape shape) throws CheckException {
    double slack = MEET + form.linesWithin();
    List<Trace> nominal = shape.edges();
    for (Trace edge : grown.edges()) {
      for (int i = 0; i <= SAMPLES; i++) {
        Point point = edge.at((double) i / SAMPLES);
        double off = nominal.stream().mapToDouble(n -> n.distanceTo(point)).min().orElse(0);
        if (Math.abs(off - form.grown()) > slack) {
          throw new CheckException(
              "the outline is grown by "
                  + LayoutCheck.millimetres(off)
                  + ", but "
                  + LayoutCheck.millimetres(form.grown())
                  + " is stated");
        }
      }
    }
  }
}
