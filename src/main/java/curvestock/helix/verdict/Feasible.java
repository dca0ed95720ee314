package curvestock.helix.verdict;

import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.units.Length;

/** What would still work, when something does not. */
public final class Feasible {

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

  /** The grade of the inner track at so much rise per turn. */
  public static Grade gradeFor(HelixSpec spec, Length risePerTurn) {
    Length run = spec.ground().runPerTurn(spec.ground().innerTrack());
    return new Grade(risePerTurn.millimetres() / run.millimetres());
  }
}
