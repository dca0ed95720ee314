package curvestock.helix.verdict;

import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.List;

/**
 * Free height where the approach runs under the ring, or the exit over it. Where a joint or a cross
 * piece lies anywhere over the overlap it is taken to hang at the lowest place.
 */
final class EndRule {

  private final HelixSpec spec;
  private final Length risePerTurn;
  private final Wording wording;
  private final HeightNeed need;

  EndRule(HelixSpec spec, Length risePerTurn, Wording wording) {
    this.spec = spec;
    this.risePerTurn = risePerTurn;
    this.wording = wording;
    this.need = HeightNeed.of(spec);
  }

  List<Verdict> verdicts(End end, EndClearance clearance, Length hanging) {
    if (!clearance.applies()) {
      return List.of();
    }
    String rule = end == End.BOTTOM ? "free height at the entry" : "free height at the exit";
    Length free = clearance.free(hanging);
    String finding =
        wording.length(free)
            + " where the tangent is "
            + (end == End.BOTTOM ? "under" : "over")
            + " the ring for "
            + wording.length(clearance.overlapLength())
            + " (needed "
            + wording.length(need.least())
            + ", comfortable "
            + wording.length(need.comfortable())
            + ")";
    if (free.compareTo(need.comfortable()) >= 0) {
      return List.of(Verdict.ok(rule, finding));
    }
    boolean fails = free.compareTo(need.least()) < 0;
    return List.of(
        new Verdict(
            rule,
            fails ? Result.FAILS : Result.TIGHT,
            finding,
            mend(end, clearance, hanging, fails ? need.least() : need.comfortable())));
  }

  private String mend(End end, EndClearance clearance, Length hanging, Length wanted) {
    Length best = clearance.free(clearance.fullLead(), hanging);
    Length lead = clearance.leadFor(wanted, hanging);
    String act =
        end == End.BOTTOM
            ? "start the climb " + wording.atLeast(lead) + " before the ring"
            : "go on climbing until " + wording.atLeast(lead) + " beyond the ring";
    String now =
        " (now "
            + wording.length(end == End.BOTTOM ? spec.bottom().climbLead() : spec.top().climbLead())
            + "), with the rise per turn kept at "
            + wording.length(risePerTurn);
    return best.compareTo(wanted) >= 0
        ? act + now
        : act + now + ": that gives " + wording.length(best) + ", and the rest takes more rise";
  }
}
