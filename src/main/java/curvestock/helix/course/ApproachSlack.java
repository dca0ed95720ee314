package curvestock.helix.course;

import curvestock.helix.spec.Grade;
import curvestock.units.Length;

/**
 * How much error in height an approach can take up, by being built a little up or down.
 *
 * @param run length of the approach
 * @param allowed grade it may be given
 * @param verticalCurve length of the curve at each of its ends
 */
public record ApproachSlack(Length run, Grade allowed, Length verticalCurve) {

  /** Grade × (run − vertical curve): each curve costs half its length. Zero if there is no room. */
  public Length height() {
    double straight = run.minus(verticalCurve).millimetres();
    return Length.ofMillimetres(Math.max(0, straight) * allowed.ratio());
  }
}
