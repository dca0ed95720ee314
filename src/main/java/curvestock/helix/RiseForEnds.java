package curvestock.helix;

import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.ClimbSolver;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * Looks for a rise per turn at which the lengths that a job leaves open at the ends pass every
 * check: with the vertical curve whole and no more of the slope on the ring than must be, each end
 * costs a height that can be worked out; from there on a few rises are tried with everything that
 * is assumed settled anew. Not always the least rise that would do.
 */
final class RiseForEnds {

  /** A steeper helix than half as steep again is another helix: our own choice. */
  private static final int MOST_PERCENT = 50;

  /** How much more than worked out is tried, in turn. */
  private static final double[] TRIED = {1, 1.02, 1.05, 1.1, 1.16};

  private final HelixOrder order;
  private final HelixSpec spec;
  private final Length now;

  RiseForEnds(HelixOrder order) {
    this.order = order;
    spec = order.plan().spec();
    now = order.plan().climb().risePerTurn();
  }

  /** The plan with such a rise; empty if none is found, or the job does not state the rise. */
  Optional<HelixPlan> plan() {
    if (spec.ascent().risePerTurn().isEmpty()) {
      return Optional.empty();
    }
    return IntStream.rangeClosed(1, MOST_PERCENT)
        .mapToDouble(percent -> 1 + percent / 100.0)
        .filter(this::leavesHeight)
        .boxed()
        .findFirst()
        .flatMap(
            share ->
                DoubleStream.of(TRIED)
                    .map(more -> share * more)
                    .filter(more -> more <= 1 + MOST_PERCENT / 100.0)
                    .boxed()
                    .flatMap(more -> tried(more).stream())
                    .findFirst());
  }

  private HelixSpec rising(double share) {
    Length rise = order.plan().style().roundUp(now.times(share));
    return Revision.of(spec, List.of(new Change(Setting.RISE_PER_TURN, now, rise)));
  }

  private boolean leavesHeight(double share) {
    try {
      HelixSpec more = rising(share);
      return leavesHeight(more, End.BOTTOM, share) && leavesHeight(more, End.TOP, share);
    } catch (IllegalArgumentException noHelix) {
      return false;
    }
  }

  private boolean leavesHeight(HelixSpec more, End end, double share) {
    EndPlan old = end == End.BOTTOM ? more.bottom() : more.top();
    EndPlan whole =
        old.withVerticalCurve(usualCurve(end).times(share).longer(old.verticalCurve()))
            .withClimbLead(EndMoves.LONGEST_LEAD.longer(old.climbLead()));
    HelixSpec tried =
        end == End.BOTTOM ? more.with(whole, more.top()) : more.with(more.bottom(), whole);
    EndClearance clearance =
        new EndClearance(tried, new ClimbSolver(tried, order.plan().style()).solve(), end);
    return !clearance.applies()
        || clearance.free(Length.ZERO).compareTo(HeightNeed.of(tried).least()) >= 0;
  }

  private Length usualCurve(End end) {
    Place place = end == End.BOTTOM ? Place.ENTRY : Place.EXIT;
    return order.plan().verdicts().stream()
        .filter(verdict -> verdict.is(Rule.VERTICAL_CURVE, place))
        .flatMap(verdict -> verdict.needed().stream())
        .map(Length.class::cast)
        .findFirst()
        .orElse(Length.ZERO);
  }

  private Optional<HelixPlan> tried(double share) {
    try {
      HelixPlan more = HelixPlan.trial(rising(share), order.plan().style());
      HelixOrder settled =
          HelixOrder.settled(more, order.assumed(), Optional.empty(), order.plan().style());
      boolean passes =
          settled.shortEnds().isEmpty()
              && settled.plan().verdicts().stream()
                  .noneMatch(verdict -> verdict.state() == State.FAIL);
      return passes ? Optional.of(settled.plan()) : Optional.empty();
    } catch (IllegalArgumentException cannotBePlanned) {
      return Optional.empty();
    }
  }
}
