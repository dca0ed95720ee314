package curvestock.helix.verdict;

import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;

/**
 * Free height where the approach runs under the ring, or the exit over it. Where a joint or a cross
 * piece lies anywhere over the overlap it is taken to hang at the lowest place.
 */
final class EndRule {

  private final HelixSpec spec;
  private final LengthStyle style;
  private final HeightNeed need;

  EndRule(HelixSpec spec, LengthStyle style) {
    this.spec = spec;
    this.style = style;
    this.need = HeightNeed.of(spec);
  }

  List<Verdict> verdicts(End end, EndClearance clearance, Length hanging) {
    if (!clearance.applies()) {
      return List.of();
    }
    Length free = clearance.free(hanging);
    boolean fails = free.compareTo(need.least()) < 0;
    boolean ok = free.compareTo(need.comfortable()) >= 0;
    Length wanted = fails ? need.least() : need.comfortable();
    Length best = clearance.free(clearance.fullLead(), hanging);
    Length lead = (end == End.BOTTOM ? spec.bottom() : spec.top()).leadIn();
    Verdict verdict =
        Verdict.of(Rule.FREE_HEIGHT, fails ? State.FAIL : ok ? State.OK : State.MARGINAL)
            .at(end == End.BOTTOM ? Place.ENTRY : Place.EXIT)
            .measuring(free)
            .against(need.least())
            .with(Fact.COMFORTABLE, need.comfortable())
            .with(Fact.OVERLAP, clearance.overlapLength())
            .with(Fact.BEST, best)
            .fixedBy(
                ok || best.compareTo(wanted) < 0
                    ? List.of()
                    : List.of(lead(end, clearance.leadFor(wanted, hanging))));
    return List.of(
        clearance.overlapLength().compareTo(lead) > 0 ? verdict.with(Fact.LEAD, lead) : verdict);
  }

  private Change lead(End end, Length lead) {
    return end == End.BOTTOM
        ? new Change(Setting.ENTRY_CLIMB_LEAD, spec.bottom().climbLead(), style.roundUp(lead))
        : new Change(Setting.EXIT_CLIMB_LEAD, spec.top().climbLead(), style.roundUp(lead));
  }
}
