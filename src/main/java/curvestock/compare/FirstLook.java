package curvestock.compare;

import curvestock.units.Angle;

/**
 * What a lattice gives at once.
 *
 * @param pieces wanted for the whole helix
 * @param perSheet how many a lattice lays on the main sheet; 0 if none fits
 */
public record FirstLook(Angle angle, int pieces, int perSheet) {

  public double turnsPerSheet() {
    return perSheet * angle.degrees() / 360;
  }
}
