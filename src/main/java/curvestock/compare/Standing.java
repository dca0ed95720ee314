package curvestock.compare;

import curvestock.units.Angle;
import curvestock.units.Money;

/**
 * What one choice weighs in the decision.
 *
 * @param carried whether every piece passes the stated opening
 * @param withoutJoints cost of sheets and cutting
 */
record Standing(Angle angle, boolean carried, Money withoutJoints, int joints, int sheets) {

  Money total(Money eachJoint) {
    return withoutJoints.plus(eachJoint.times(joints));
  }
}
