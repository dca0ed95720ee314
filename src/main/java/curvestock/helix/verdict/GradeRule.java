package curvestock.helix.verdict;

import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.clearance.HeightNeed;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.standard.CurveDrag;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;

/**
 * The grade of each track against the ceiling: the user's, or else 2.5 % (usual ceiling, common
 * practice, no source), which is not held against a helix as a failure.
 */
final class GradeRule {

  private static final Grade USUAL_CEILING = Grade.ofPercent(2.5);

  private final HelixSpec spec;
  private final Climb climb;
  private final LengthStyle style;

  GradeRule(HelixSpec spec, Climb climb, LengthStyle style) {
    this.spec = spec;
    this.climb = climb;
    this.style = style;
  }

  List<Verdict> verdicts() {
    List<Length> radii = spec.ground().trackRadii();
    if (radii.size() == 1) {
      return List.of(judge(radii.get(0)));
    }
    return List.of(
        judge(radii.get(0)).at(Place.INNER_TRACK), judge(radii.get(1)).at(Place.OUTER_TRACK));
  }

  private Verdict judge(Length radius) {
    Length run = spec.ground().runPerTurn(radius);
    Grade grade = climb.gradeOver(run);
    Grade ceiling = spec.ascent().steepest().orElse(USUAL_CEILING);
    Grade withDrag = Grade.ofPercent(grade.percent() + CurveDrag.percent(spec.scale(), radius));
    boolean ok = grade.ratio() <= ceiling.ratio() * (1 + 1e-9);
    State steep = spec.ascent().steepest().isPresent() ? State.FAIL : State.MARGINAL;
    return Verdict.of(Rule.GRADE, ok ? State.OK : steep)
        .measuring(Rises.share(grade))
        .against(Rises.share(ceiling))
        .with(Fact.RISE, climb.risePerTurn())
        .with(Fact.RUN, run)
        .with(Fact.WITH_DRAG, Rises.share(withDrag))
        .fixedBy(ok ? List.of() : fix(run, ceiling));
  }

  /** Fewer inches a turn where trains still pass, or else a wider curve. */
  private List<Change> fix(Length run, Grade ceiling) {
    Rises rises = new Rises(spec, climb, style);
    Length rise = run.times(ceiling.ratio());
    Length least =
        HeightBudget.inTheOpen(spec, climb.risePerTurn()).riseFor(HeightNeed.of(spec).least());
    Length made =
        rises.followFromTurns()
            ? Length.ofMillimetres(
                climb.turns()
                    * climb.risePerTurn().millimetres()
                    / Feasible.turnsAtLeast(
                        spec,
                        climb,
                        climb.turns() * climb.risePerTurn().millimetres() / rise.millimetres()))
            : rise;
    return made.compareTo(least) >= 0
        ? rises.atMost(rise)
        : List.of(rises.radius(Feasible.smallestRadius(spec, climb.risePerTurn(), ceiling)));
  }
}
