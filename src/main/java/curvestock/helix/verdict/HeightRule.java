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
import java.util.Optional;

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
    Length least = budget.riseFor(wanted).plus(loss);
    StringBuilder mend = new StringBuilder(rise(least));
    Length hanging = budget.taken().minus(open.taken());
    if (hanging.millimetres() > 0 && open.free().compareTo(wanted) >= 0) {
      mend.append("; or let nothing hang below by more than ")
          .append(wording.atMost(open.free().minus(wanted)))
          .append(" (half-laps or two layers hang below by nothing)");
    }
    return mend.toString();
  }

  /** Where the track leaves, if other turns make it another place. */
  private String leaving(double turns) {
    double off = turns - climb.turns();
    if (Math.abs(off - Math.rint(off)) * 360 < 0.05) {
      return "";
    }
    double ahead = spec.ground().direction().sign() * turns * 360;
    double bearing = spec.ground().entry().degrees() + ahead;
    double turned = bearing - 360 * Math.floor(bearing / 360);
    return ", which leave at a bearing of " + wording.number(turned) + "°";
  }

  /** What a rise per turn of at least so much means for turns, grade and radius. */
  private String rise(Length least) {
    double climbed = climb.turns() * climb.risePerTurn().millimetres();
    double turns = Feasible.turnsAtMost(spec, climb, climbed / least.millimetres());
    if (!spec.ground().isOval() && spec.ascent().exit().isEmpty()) {
      // As printed, so that whoever takes that figure has the rise.
      turns = Math.floor(turns * 100) / 100;
    }
    boolean fixedClimb = spec.ascent().climb().isPresent() && turns > 0;
    Length rise = fixedClimb ? Length.ofMillimetres(climbed / turns) : least;
    Grade grade = Feasible.gradeFor(spec, rise);
    Optional<Grade> limit =
        spec.ascent().steepest().filter(most -> grade.ratio() > most.ratio() * (1 + 1e-9));
    return "take a rise of at least "
        + wording.atLeast(least)
        + " a turn ("
        + Feasible.gradeFor(spec, least)
        + ")"
        + (fixedClimb
            ? ": the climb in "
                + wording.number(turns)
                + " turns of "
                + wording.length(rise)
                + leaving(turns)
            : "")
        + limit
            .map(
                most ->
                    ", which the limit of "
                        + most
                        + " allows from a radius of "
                        + wording.atLeast(Feasible.smallestRadius(spec, rise, most)))
            .orElse("");
  }
}
