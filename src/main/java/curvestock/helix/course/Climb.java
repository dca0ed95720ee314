package curvestock.helix.course;

import curvestock.helix.spec.Grade;
import curvestock.units.Length;

/**
 * The climb with nothing left unknown.
 *
 * @param turns how many times the track goes round
 * @param climb from the foot of the lower vertical curve to the end of the upper one
 * @param risePerTurn from lap to lap, on the steady grade
 * @param runPerTurn length of one turn along the roadbed's centre line
 */
public record Climb(double turns, Length climb, Length risePerTurn, Length runPerTurn) {

  /** Length of the ring along the roadbed's centre line, all turns. */
  public double ringLength() {
    return turns * runPerTurn.millimetres();
  }

  /** The steady grade along the roadbed's centre line. */
  public Grade grade() {
    return gradeOver(runPerTurn);
  }

  /** The steady grade of a track whose turn is of another length: the inner track is steeper. */
  public Grade gradeOver(Length run) {
    return new Grade(risePerTurn.millimetres() / run.millimetres());
  }
}
