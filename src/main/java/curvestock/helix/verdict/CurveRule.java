package curvestock.helix.verdict;

import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.course.ApproachSlack;
import curvestock.helix.course.Climb;
import curvestock.helix.course.UnrolledTurn;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Setting;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;

/** Vertical curves, where the climb starts, the approaches' slack, and the flat pattern. */
final class CurveRule {

  /** One longest car, or a foot in HO, for each per cent of change: common practice, no source. */
  private static final Length FOOT = Length.ofInches(12);

  /** A foot of straight in one with the end piece, in HO: common practice, no source. */
  private static final Length USUAL_LEAD = Length.ofInches(12);

  private static final double HO = 87.0857;
  private static final double HO_GAUGE = 16.5;

  private static final Grade USUAL_APPROACH = Grade.ofPercent(2);

  private final HelixSpec spec;
  private final Climb climb;
  private final LengthStyle style;

  CurveRule(HelixSpec spec, Climb climb, LengthStyle style) {
    this.spec = spec;
    this.climb = climb;
    this.style = style;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    for (End end : End.values()) {
      EndPlan plan = end == End.BOTTOM ? spec.bottom() : spec.top();
      Place place = end == End.BOTTOM ? Place.ENTRY : Place.EXIT;
      verdicts.add(curve(plan, end).at(place));
      verdicts.add(lead(plan, end).at(place));
      if (plan.approachRun().millimetres() > 0) {
        verdicts.add(slack(plan).at(place));
      }
    }
    verdicts.add(pattern());
    return verdicts;
  }

  private Verdict curve(EndPlan plan, End end) {
    Length perCent =
        spec.traffic()
            .longest()
            .map(Vehicle::length)
            .filter(length -> length.compareTo(usualCar()) > 0)
            .orElse(usualCar());
    double change = Math.abs(climb.grade().percent() - plan.approachGrade().percent());
    Length wanted = perCent.times(change);
    boolean ok = plan.verticalCurve().compareTo(wanted) >= 0;
    Setting setting =
        end == End.BOTTOM ? Setting.ENTRY_VERTICAL_CURVE : Setting.EXIT_VERTICAL_CURVE;
    return Verdict.of(Rule.VERTICAL_CURVE, ok ? State.OK : State.MARGINAL)
        .measuring(plan.verticalCurve())
        .against(wanted)
        .with(Fact.LEAST_CAR, usualCar())
        .with(Fact.CHANGE, Rises.share(Grade.ofPercent(change)))
        .fixedBy(
            ok
                ? List.of()
                : List.of(new Change(setting, plan.verticalCurve(), style.roundUp(wanted))));
  }

  /** Cars of narrow gauge are shorter as their track is narrower: common practice, no source. */
  private Length usualCar() {
    return spec.scale().isNarrow()
        ? FOOT.times(spec.scale().gauge().millimetres() / HO_GAUGE)
        : toScale(FOOT);
  }

  /** No joint should fall where the slope changes: the lead-in reaches to where it begins. */
  private Verdict lead(EndPlan plan, End end) {
    // Where the climb begins at the ring, the usual lead keeps the joint away from it.
    Length wanted = plan.climbLead().millimetres() > 0 ? plan.climbLead() : toScale(USUAL_LEAD);
    boolean ok = plan.leadIn().compareTo(plan.climbLead()) >= 0 && plan.leadIn().millimetres() > 0;
    Setting setting = end == End.BOTTOM ? Setting.ENTRY_LEAD_IN : Setting.EXIT_LEAD_IN;
    return Verdict.of(Rule.LEAD, ok ? State.OK : State.MARGINAL)
        .measuring(plan.leadIn())
        .against(plan.climbLead())
        .fixedBy(
            ok ? List.of() : List.of(new Change(setting, plan.leadIn(), style.roundUp(wanted))));
  }

  private Length toScale(Length inHo) {
    return inHo.times(HO / spec.scale().ratio());
  }

  private Verdict slack(EndPlan plan) {
    Grade allowed = spec.ascent().steepest().orElse(USUAL_APPROACH);
    // What it climbs already is not there to take up more.
    Grade left = Grade.ofPercent(Math.max(0, allowed.percent() - plan.approachGrade().percent()));
    ApproachSlack slack = new ApproachSlack(plan.approachRun(), left, plan.verticalCurve());
    return Verdict.ok(Rule.APPROACH)
        .measuring(plan.approachRun())
        .with(Fact.LIMIT, Rises.share(allowed))
        .with(Fact.SLACK, slack.height());
  }

  private Verdict pattern() {
    UnrolledTurn pattern = new UnrolledTurn(spec.ground().bedRadius(), climb.risePerTurn());
    double missing = 360 - pattern.anglePerTurn().degrees();
    return Verdict.of(Rule.FLAT_PATTERN, pattern.isNegligible() ? State.OK : State.MARGINAL)
        .measuring(pattern.growth())
        .with(Fact.MISSING, Angle.ofDegrees(missing))
        .with(Fact.MISSING_IN_ALL, Angle.ofDegrees(missing * climb.turns()));
  }
}
