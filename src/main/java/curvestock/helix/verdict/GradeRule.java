package curvestock.helix.verdict;

import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.standard.CurveDrag;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * The grade of each track against the ceiling: the user's, or else 2.5 % (usual ceiling, common
 * practice, no source), which is not held against a helix as a failure.
 */
final class GradeRule {

  private static final Grade USUAL_CEILING = Grade.ofPercent(2.5);

  private final HelixSpec spec;
  private final Climb climb;
  private final Wording wording;

  GradeRule(HelixSpec spec, Climb climb, Wording wording) {
    this.spec = spec;
    this.climb = climb;
    this.wording = wording;
  }

  List<Verdict> verdicts() {
    List<Verdict> verdicts = new ArrayList<>();
    GroundPlan ground = spec.ground();
    List<Length> radii = ground.trackRadii();
    for (int i = 0; i < radii.size(); i++) {
      String rule =
          radii.size() == 1 ? "grade" : i == 0 ? "grade, inner track" : "grade, outer track";
      verdicts.add(judge(rule, radii.get(i)));
    }
    return verdicts;
  }

  private Verdict judge(String rule, Length radius) {
    Grade grade = climb.gradeOver(spec.ground().runPerTurn(radius));
    Grade ceiling = spec.ascent().steepest().orElse(USUAL_CEILING);
    double drag = CurveDrag.percent(spec.scale(), radius);
    String finding =
        grade
            + " ("
            + wording.length(climb.risePerTurn())
            + " in "
            + wording.length(spec.ground().runPerTurn(radius))
            + "); with the curve's drag about "
            + Grade.ofPercent(grade.percent() + drag)
            + ", an estimate after the prototype's 0.04 % per degree of curve";
    if (grade.ratio() <= ceiling.ratio() * (1 + 1e-9)) {
      return Verdict.ok(rule, finding);
    }
    boolean stated = spec.ascent().steepest().isPresent();
    String against = stated ? "the limit is " : "the usual ceiling (common practice) is ";
    return new Verdict(
        rule,
        stated ? Result.FAILS : Result.TIGHT,
        finding + "; " + against + ceiling,
        mend(radius, ceiling));
  }

  private String mend(Length radius, Grade ceiling) {
    Length run = spec.ground().runPerTurn(radius);
    double rise = ceiling.ratio() * run.millimetres();
    double fewest = climb.turns() * climb.risePerTurn().millimetres() / rise;
    double turns = Feasible.turnsAtLeast(spec, climb, fewest);
    double mendedRise = climb.turns() * climb.risePerTurn().millimetres() / turns;
    HeightNeed need = HeightNeed.of(spec);
    Length leastRise = HeightBudget.inTheOpen(spec, climb.risePerTurn()).riseFor(need.least());
    String wider = wording.atLeast(Feasible.smallestRadius(spec, climb.risePerTurn(), ceiling));
    if (mendedRise >= leastRise.millimetres()) {
      return "take at least "
          + wording.number(turns)
          + " turns, or a radius of at least "
          + wider
          + " with the turns as they are";
    }
    return "more turns will not do: trains need "
        + wording.atLeast(leastRise)
        + " a turn, and at "
        + ceiling
        + " that takes a radius of at least "
        + wording.atLeast(Feasible.smallestRadius(spec, leastRise, ceiling))
        + ", or "
        + wider
        + " with the turns as they are";
  }
}
