package curvestock.compare;

import curvestock.units.Money;

/**
 * What one choice weighs in the decision.
 *
 * @param carried whether every piece passes what the user states
 * @param certain whether it can be cut even if its sheets come as small as they may
 * @param sheetCost price of its sheets; if they come as small as they may, once that was tried
 * @param otherCost cost of cutting, and of parts that are bought, less what offcuts are worth
 * @param offcuts area kept for the next job, in square millimetres
 */
record Standing(
    Division division,
    boolean carried,
    boolean certain,
    Money sheetCost,
    Money otherCost,
    int joints,
    int sheets,
    double offcuts) {

  Money withoutJoints() {
    return sheetCost.plus(otherCost);
  }

  Money total(Money eachJoint) {
    return withoutJoints().plus(eachJoint.times(joints));
  }

  /** All but the sheets. */
  Money work(Money eachJoint) {
    return otherCost.plus(eachJoint.times(joints));
  }
}
