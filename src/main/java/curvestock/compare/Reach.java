package curvestock.compare;

import curvestock.units.Angle;

/**
 * How far a given number of sheets reaches.
 *
 * @param pieces found to lie on them
 */
public record Reach(Angle angle, int pieces) {

  public double turns() {
    return pieces * angle.degrees() / 360;
  }
}
