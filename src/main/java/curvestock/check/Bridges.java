package curvestock.check;

import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Closes outlines that tabs interrupt, or cuts that a neighbour shares. A gap is taken for a tab
 * only if it is no longer than the drawing says, for a shared cut only if another outline is cut
 * there; in both the line must go straight on behind it. Whether it goes on along the right line or
 * arc is found by comparing the closed outline with the nominal one.
 */
final class Bridges {

  /** Slack for rounding in the file, in millimetres. */
  private static final double SLACK = 0.01;

  /** Within this angle a line goes straight on, as seen across a gap. */
  private static final double STRAIGHT_ON = Math.toRadians(25);

  /** Besides its own tabs a piece bears those by which its neighbours hang on it. */
  private static final int WITH_NEIGHBOURS = 3;

  private final CutForm form;
  private final SharedLines shared;

  Bridges(CutForm form, SharedLines shared) {
    this.form = form;
    this.shared = shared;
  }

  /** Whether a tab or a shared cut may lie between two chains. */
  boolean join(Chain before, Chain after) {
    Point gap = after.start().minus(before.end());
    return (isTab(before, after) || shared.cover(before.end(), after.start(), form.tabGap()))
        && gap.norm() > 0
        && angle(before.last().endDirection(), gap) <= STRAIGHT_ON
        && angle(gap, after.edges().get(0).startDirection()) <= STRAIGHT_ON;
  }

  private boolean isTab(Chain before, Chain after) {
    return form.tabs() > 0 && before.end().distance(after.start()) <= form.tabGap() + SLACK;
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
    int tabs = 0;
    for (int i = 0; i < open.size(); i++) {
      tabs += isTab(open.get(i), open.get((i + 1) % open.size())) ? 1 : 0;
    }
    int most = WITH_NEIGHBOURS * form.tabs();
    if (tabs > most) {
      throw new CheckException(
          "the path has " + tabs + " gaps, but there are to be at most " + most);
    }
    List<Trace> edges = new ArrayList<>();
    for (int i = 0; i < open.size(); i++) {
      Chain before = open.get(i);
      Chain after = open.get((i + 1) % open.size());
      if (!join(before, after) && form.tabs() == 0) {
        throw new CheckException("the path is open: each part must be closed");
      }
      if (!join(before, after)) {
        throw new CheckException(
            "the path has a gap of "
                + LayoutCheck.millimetres(before.end().distance(after.start()))
                + " that is no tab of "
                + LayoutCheck.millimetres(form.tabGap())
                + " on a line that goes straight on");
      }
      edges.addAll(before.edges());
      edges.add(
          isTab(before, after)
              ? bridge(before.last(), after.edges().get(0))
              : new Trace.Straight(before.end(), after.start()));
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
