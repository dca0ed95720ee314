package curvestock.helix.verdict;

import curvestock.helix.course.Climb;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;

/** What would still work, when something does not. */
public final class Feasible {

  private static final double ROUNDING = 1e-9;

  private Feasible() {}

  /**
   * The smallest centre-line radius of the inner track at which so much rise per turn keeps to the
   * grade: (rise/grade − both straights)/2π; zero if the straights alone are long enough.
   */
  public static Length smallestRadius(HelixSpec spec, Length risePerTurn, Grade grade) {
    double run = risePerTurn.millimetres() / grade.ratio();
    double straights = 2 * spec.ground().straight().millimetres();
    return Length.ofMillimetres(Math.max(0, run - straights) / (2 * Math.PI));
  }

  /** The most turns, not more than these, that still end at the exit; half turns on an oval. */
  public static double turnsAtMost(HelixSpec spec, Climb climb, double turns) {
    double step = step(spec);
    return step == 0
        ? turns
        : climb.turns() - step * Math.ceil((climb.turns() - turns) / step - ROUNDING);
  }

  /** The fewest turns, not fewer than these, that still end at the exit; half turns on an oval. */
  public static double turnsAtLeast(HelixSpec spec, Climb climb, double turns) {
    double step = step(spec);
    return step == 0
        ? turns
        : climb.turns() + step * Math.ceil((turns - climb.turns()) / step - ROUNDING);
  }

  /** By how much turns may change: by any amount (0), by halves, or by whole turns. */
  private static double step(HelixSpec spec) {
    if (spec.ascent().exit().isPresent()) {
      return 1;
    }
    return spec.ground().isOval() ? 0.5 : 0;
  }

  /** The grade of the inner track at so much rise per turn. */
  public static Grade gradeFor(HelixSpec spec, Length risePerTurn) {
    Length run = spec.ground().runPerTurn(spec.ground().innerTrack());
    return new Grade(risePerTurn.millimetres() / run.millimetres());
  }
}
