package curvestock.helix.verdict;

import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Free height between turns: in the open, under a joint, under a riser's cross piece. */
final class HeightRule {

  private final HelixSpec spec;
  private final Climb climb;
  private final LengthStyle style;
  private final HeightNeed need;

  HeightRule(HelixSpec spec, Climb climb, LengthStyle style) {
    this.spec = spec;
    this.climb = climb;
    this.style = style;
    this.need = HeightNeed.of(spec);
  }

  /**
   * One verdict for each budget; none if no turn lies over another.
   *
   * @param lessNearEnds how much less height turns have near entry or exit, if they have; what is
   *     judged there is the room over the leads, which is less still
   */
  List<Verdict> verdicts(List<Obstacle> obstacles, Optional<Length> lessNearEnds) {
    List<Verdict> verdicts = new ArrayList<>();
    if (climb.turns() > 1) {
      for (Obstacle each : obstacles) {
        Verdict verdict = judge(each);
        verdicts.add(
            lessNearEnds
                .filter(less -> each.place() == Place.OPEN)
                .map(less -> verdict.with(Fact.NEAR_END, each.budget().free().minus(less)))
                .orElse(verdict));
      }
    }
    return verdicts;
  }

  private Verdict judge(Obstacle obstacle) {
    Length free = obstacle.budget().free();
    boolean fails = free.compareTo(need.least()) < 0;
    boolean ok = free.compareTo(need.comfortable()) >= 0;
    Verdict verdict =
        Verdict.of(Rule.FREE_HEIGHT, fails ? State.FAIL : ok ? State.OK : State.MARGINAL)
            .at(obstacle.place())
            .measuring(free)
            .against(need.least())
            .with(Fact.COMFORTABLE, need.comfortable())
            .with(Fact.SOURCE, new Text(need.reason()));
    return need.comfort()
        .map(source -> verdict.with(Fact.COMFORT_SOURCE, new Text(source)))
        .orElse(verdict)
        .fixedBy(
            ok ? List.of() : fix(obstacle.budget(), fails ? need.least() : need.comfortable()));
  }

  private List<Change> fix(HeightBudget budget, Length wanted) {
    // Near the ends a turn climbs less than the rise per turn; the loss stays.
    Length loss = climb.risePerTurn().minus(budget.risePerTurn());
    return new Rises(spec, climb, style).atLeast(budget.riseFor(wanted).plus(loss));
  }
}
