package curvestock.helix.spec;

import curvestock.units.Length;
import java.util.Optional;

/**
 * Where the turns are held up.
 *
 * @param riser blocks or rods
 * @param perTurn stations in one turn; the same places every turn
 * @param firstAt distance of the first station from the ring's entry along the roadbed's centre
 *     line; empty lets the plan choose (on joints for blocks, away from joints for rods)
 * @param footHeight from the base that the supports stand on to the plywood's underside at the foot
 *     of the climb
 * @param bulgeShare greatest bulge between two supports as a share of the roadbed's width, before
 *     both edges must be held
 * @param adjustments to single supports
 */
public record SupportPlan(
    Riser riser,
    int perTurn,
    Optional<Length> firstAt,
    Length footHeight,
    double bulgeShare,
    Adjustments adjustments) {

  /** Above about a quarter of the width, hold both edges. Common practice, no source. */
  public static final double USUAL_BULGE_SHARE = 0.25;

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if there are fewer than 3 or more than 200 stations per turn,
   *     a length is below zero, or the share is not between 0 and 1
   */
  public SupportPlan {
    if (perTurn < 3 || perTurn > 200) {
      throw new IllegalArgumentException("supports per turn must be 3 to 200, but was " + perTurn);
    }
    firstAt.ifPresent(length -> length.requireNotNegative("first support"));
    footHeight.requireNotNegative("height at the foot");
    if (!(bulgeShare > 0 && bulgeShare <= 1)) {
      throw new IllegalArgumentException(
          "bulge share must be above 0 and at most 1, but was " + bulgeShare);
    }
  }

  /** With no single support changed. */
  public SupportPlan(
      Riser riser, int perTurn, Optional<Length> firstAt, Length footHeight, double bulgeShare) {
    this(riser, perTurn, firstAt, footHeight, bulgeShare, Adjustments.NONE);
  }

  /** The same with another riser. */
  public SupportPlan with(Riser other) {
    return new SupportPlan(other, perTurn, firstAt, footHeight, bulgeShare, adjustments);
  }

  /** The same with so many stations in a turn. */
  public SupportPlan with(int stations) {
    return new SupportPlan(riser, stations, firstAt, footHeight, bulgeShare, adjustments);
  }

  /** The same with the first station so far from the ring's entry; empty lets the plan choose. */
  public SupportPlan startingAt(Optional<Length> first) {
    return new SupportPlan(riser, perTurn, first, footHeight, bulgeShare, adjustments);
  }

  /** The same with these changes to single supports. */
  public SupportPlan with(Adjustments other) {
    return new SupportPlan(riser, perTurn, firstAt, footHeight, bulgeShare, other);
  }
}
