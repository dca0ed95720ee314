package curvestock.helix.spec;

import curvestock.units.Length;

/**
 * How the track comes to the ring at the bottom, or leaves it at the top.
 *
 * @param verticalCurve length over which the approach's grade changes into the helix grade
 * @param climbLead how far outside the ring the vertical curve begins (bottom) or ends (top); half
 *     the curve puts the bend of the grade at the ring's end, zero keeps the whole curve on the
 *     ring
 * @param leadIn straight roadbed cut in one with the first or last piece
 * @param approachGrade grade of the track outside the helix, uphill in the direction of climb
 * @param approachRun length of the approach that can be built a little up or down
 * @param easement length of a horizontal easement, zero for none
 */
public record EndPlan(
    Length verticalCurve,
    Length climbLead,
    Length leadIn,
    Grade approachGrade,
    Length approachRun,
    Length easement) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a length is below zero or the approach goes downhill
   */
  public EndPlan {
    verticalCurve.requireNotNegative("vertical curve");
    climbLead.requireNotNegative("climb lead");
    leadIn.requireNotNegative("lead-in");
    approachRun.requireNotNegative("approach run");
    easement.requireNotNegative("easement");
    if (approachGrade.ratio() < 0) {
      throw new IllegalArgumentException(
          "approach grade must not be downhill, but was " + approachGrade);
    }
    if (easement.millimetres() > 2 * leadIn.millimetres()) {
      throw new IllegalArgumentException(
          "lead-in must be at least half the easement ("
              + easement.times(0.5)
              + "), so that the easement is cut in one with its piece, but was "
              + leadIn);
    }
  }

  /** From level, the bend of the grade at the ring's end, no easement. */
  public static EndPlan level(Length verticalCurve, Length leadIn) {
    return new EndPlan(
        verticalCurve, verticalCurve.times(0.5), leadIn, Grade.LEVEL, Length.ZERO, Length.ZERO);
  }

  /** The same with the vertical curve begun or ended so far outside the ring. */
  public EndPlan withClimbLead(Length lead) {
    return new EndPlan(verticalCurve, lead, leadIn, approachGrade, approachRun, easement);
  }

  /** The same with a vertical curve of another length. */
  public EndPlan withVerticalCurve(Length length) {
    return new EndPlan(length, climbLead, leadIn, approachGrade, approachRun, easement);
  }

  /** The same with so much straight cut in one with the end piece. */
  public EndPlan withLeadIn(Length length) {
    return new EndPlan(verticalCurve, climbLead, length, approachGrade, approachRun, easement);
  }

  /** The same with a horizontal easement. */
  public EndPlan withEasement(Length length) {
    return new EndPlan(verticalCurve, climbLead, leadIn, approachGrade, approachRun, length);
  }
}
