package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Closes outlines that tabs interrupt. A gap is taken for a tab only if it is no longer than the
 * drawing says and the line goes straight on behind it; whether it goes on along the right line or
 * arc is found by comparing the closed outline with the nominal one.
 */
final class Bridges {

  /** Slack for rounding in the file, in millimetres. */
  private static final double SLACK = 0.01;

  /** Within this angle a line goes straight on, as seen across a gap. */
  private static final double STRAIGHT_ON = Math.toRadians(25);

  private final CutForm form;

  Bridges(CutForm form) {
    this.form = form;
  }

  /** Whether a tab may lie between two chains. */
  boolean join(Chain before, Chain after) {
    Point gap = after.start().minus(before.end());
    double length = gap.norm();
    return length <= form.tabGap() + SLACK
        && length > 0
        && angle(before.last().endDirection(), gap) <= STRAIGHT_ON
        && angle(gap, after.edges().get(0).startDirection()) <= STRAIGHT_ON;
  }

  private static double angle(Point a, Point b) {
    return Math.abs(Math.atan2(a.cross(b), a.dot(b)));
  }

  /**
   * One closed chain from the open chains of one outline, in order.
   *
   * @throws CheckException if there are more gaps than tabs, or one is no tab
   */
  Chain closed(List<Chain> open) throws CheckException {
    if (form.tabs() == 0) {
      throw new CheckException("the path is open: each part must be closed");
    }
    if (open.size() > form.tabs()) {
      throw new CheckException(
          "the path has " + open.size() + " gaps, but there are to be at most " + form.tabs());
    }
    List<Trace> edges = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      Chain before = open.get(i);
      Chain after = open.get((i + 1) % open.size());
      if (!join(before, after)) {
        throw new CheckException(
            "the path has a gap of "
                + LayoutCheck.millimetres(before.end().distance(after.start()))
                + " that is no tab of "
                + LayoutCheck.millimetres(form.tabGap())
                + " on a line that goes straight on");
      }
      edges.addAll(before.edges());
      edges.add(bridge(before.last(), after.edges().get(0)));
    }
    return new Chain(edges, true);
  }

  private static Trace bridge(Trace before, Trace after) {
    Point from = before.end();
    Point to = after.start();
    if (before instanceof Trace.Round round && after instanceof Trace.Round) {
      double first = from.minus(round.centre()).angle();
      double sweep = to.minus(round.centre()).angle() - first;
      sweep -= 2 * Math.PI * Math.rint(sweep / (2 * Math.PI));
      if (sweep * round.sweep() > 0) {
        return new Trace.Round(round.centre(), round.radius(), first, sweep);
      }
    }
    return new Trace.Straight(from, to);
  }
}
