package curvestock.compare;

import curvestock.units.Money;

/**
 * What one choice weighs in the decision.
 *
 * @param carried whether every piece passes what the user states
 * @param sheetCost price of its sheets
 * @param otherCost cost of cutting, and of parts that are bought
 */
record Standing(
    Division division, boolean carried, Money sheetCost, Money otherCost, int joints, int sheets) {

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
