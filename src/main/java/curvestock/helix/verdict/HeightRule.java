package curvestock.helix.verdict;

import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Free height between turns: in the open, under a joint, under a riser's cross piece. */
final class HeightRule {

  private final HelixSpec spec;
  private final Climb climb;
  private final Wording wording;
  private final HeightNeed need;

  HeightRule(HelixSpec spec, Climb climb, Wording wording) {
    this.spec = spec;
    this.climb = climb;
    this.wording = wording;
    this.need = HeightNeed.of(spec);
  }

  /** One verdict for each budget; none if no turn lies over another. */
  List<Verdict> verdicts(List<HeightBudget> budgets, List<String> places) {
    List<Verdict> verdicts = new ArrayList<>();
    if (climb.turns() <= 1) {
      return verdicts;
    }
    for (int i = 0; i < budgets.size(); i++) {
      verdicts.add(judge("free height " + places.get(i), budgets.get(i), budgets.get(0)));
    }
    return verdicts;
  }

  private Verdict judge(String rule, HeightBudget budget, HeightBudget open) {
    Length free = budget.free();
    String finding =
        wording.length(free)
            + " (needed "
            + wording.length(need.least())
            + ", comfortable "
            + wording.length(need.comfortable())
            + ": "
            + need.reason()
            + ")";
    if (free.compareTo(need.least()) < 0) {
      return new Verdict(rule, Result.FAILS, finding, mend(budget, open, need.least()));
    }
    if (free.compareTo(need.comfortable()) < 0) {
      return new Verdict(
          rule, Result.TIGHT, finding, "for comfort " + mend(budget, open, need.comfortable()));
    }
    return Verdict.ok(rule, finding);
  }

  private String mend(HeightBudget budget, HeightBudget open, Length wanted) {
    // Near the ends a turn climbs less than the rise per turn; the loss stays.
    Length loss = climb.risePerTurn().minus(budget.risePerTurn());
    Length rise = budget.riseFor(wanted).plus(loss);
    Grade grade = Feasible.gradeFor(spec, rise);
    StringBuilder mend =
        new StringBuilder("take a rise of ")
            .append(wording.length(rise))
            .append(" a turn (")
            .append(grade)
            .append(")");
    if (spec.ascent().steepest().isPresent()
        && grade.ratio() > spec.ascent().steepest().get().ratio() * (1 + 1e-9)) {
      Grade limit = spec.ascent().steepest().get();
      mend.append(", which the limit of ")
          .append(limit)
          .append(" allows from a radius of ")
          .append(wording.length(Feasible.smallestRadius(spec, rise, limit)));
    } else if (spec.ascent().climb().isPresent()) {
      double turns = climb.turns() * climb.risePerTurn().millimetres() / rise.millimetres();
      mend.append(", which makes the climb in ").append(wording.number(turns)).append(" turns");
    }
    Length hanging = budget.taken().minus(open.taken());
    if (hanging.millimetres() > 0 && open.free().compareTo(wanted) >= 0) {
      mend.append("; or let nothing hang below by more than ")
          .append(wording.length(open.free().minus(wanted)))
          .append(" (half-laps or two layers hang below by nothing)");
    }
    return mend.toString();
  }
}
