package curvestock.helix.verdict;

import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.course.ApproachSlack;
import curvestock.helix.course.Climb;
import curvestock.helix.course.UnrolledPattern;
import curvestock.helix.course.VerticalCurve;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Vertical curves, where the climb starts, the approaches' slack, and the flat pattern. */
final class CurveRule {

  /** One longest car, or a foot in HO, for each per cent of change: common practice, no source. */
  private static final Length FOOT = Length.ofInches(12);

  private static final double HO = 87.0857;

  private static final Grade USUAL_APPROACH = Grade.ofPercent(2);

  private final HelixSpec spec;
  private final Climb climb;
  private final Wording wording;

  CurveRule(HelixSpec spec, Climb climb, Wording wording) {
    this.spec = spec;
    this.climb = climb;
    this.wording = wording;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    for (End end : End.values()) {
      EndPlan plan = end == End.BOTTOM ? spec.bottom() : spec.top();
      String where = end == End.BOTTOM ? " at the bottom" : " at the top";
      verdicts.add(curve("vertical curve" + where, plan));
      verdicts.add(lead("lead" + where, plan));
      if (plan.approachRun().millimetres() > 0) {
        verdicts.add(slack("approach" + where, plan));
      }
    }
    verdicts.add(pattern());
    return verdicts;
  }

  private Verdict curve(String rule, EndPlan plan) {
    Length foot = FOOT.times(HO / spec.scale().ratio());
    Length perCent =
        spec.traffic()
            .longest()
            .map(Vehicle::length)
            .filter(length -> length.compareTo(foot) > 0)
            .orElse(foot);
    VerticalCurve curve =
        new VerticalCurve(plan.verticalCurve().millimetres(), plan.approachGrade(), climb.grade());
    double change = Math.abs(climb.grade().percent() - plan.approachGrade().percent());
    Length wanted = perCent.times(change);
    String finding =
        wording.length(plan.verticalCurve())
            + " for a change of "
            + Grade.ofPercent(change)
            + ", "
            + wording.length(Length.ofMillimetres(curve.offsetAtBreak()))
            + " off the break (usual length "
            + wording.length(wanted)
            + ": a foot in HO, or the longest car, per 1 %, common practice)";
    return plan.verticalCurve().compareTo(wanted) >= 0
        ? Verdict.ok(rule, finding)
        : new Verdict(rule, Result.TIGHT, finding, "lengthen it to " + wording.atLeast(wanted));
  }

  private Verdict lead(String rule, EndPlan plan) {
    boolean atTop = rule.endsWith("top");
    String finding =
        "the end piece carries "
            + wording.length(plan.leadIn())
            + " of straight, the slope "
            + (atTop ? "ends " : "begins ")
            + wording.length(plan.climbLead())
            + (atTop ? " beyond the ring" : " before the ring");
    boolean jointFree =
        plan.leadIn().compareTo(plan.climbLead()) >= 0 && plan.leadIn().millimetres() > 0;
    return jointFree
        ? Verdict.ok(rule, finding)
        : new Verdict(
            rule,
            Result.TIGHT,
            finding,
            "cut at least "
                + wording.atLeast(plan.climbLead())
                + " of straight in one with the end piece, so that no joint falls where the slope"
                + " changes");
  }

  private Verdict slack(String rule, EndPlan plan) {
    Grade allowed = spec.ascent().steepest().orElse(USUAL_APPROACH);
    ApproachSlack slack = new ApproachSlack(plan.approachRun(), allowed, plan.verticalCurve());
    return Verdict.ok(
        rule,
        wording.length(plan.approachRun())
            + " at up to "
            + allowed
            + " can take up an error in height of about "
            + wording.length(slack.height()));
  }

  private Verdict pattern() {
    UnrolledPattern pattern = new UnrolledPattern(spec.ground().bedRadius(), climb.risePerTurn());
    Angle missing = Angle.ofDegrees(360 - pattern.anglePerTurn().degrees());
    String finding =
        "the slope asks for a flat radius "
            + wording.small(pattern.growth())
            + " larger and "
            + missing
            + " less in a turn";
    return pattern.isNegligible()
        ? Verdict.ok("flat pattern", finding + ": ignore it")
        : new Verdict(
            "flat pattern",
            Result.TIGHT,
            finding,
            "cut the pieces to a radius larger by that much");
  }
}
