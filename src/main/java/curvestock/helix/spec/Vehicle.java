package curvestock.helix.spec;

import curvestock.units.Length;

/**
 * A vehicle to plan for.
 *
 * @param height above the rail tops
 * @param length of the body
 * @param width of the body
 * @param truckCentres distance between the pivots of its two trucks
 */
public record Vehicle(Length height, Length length, Length width, Length truckCentres) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a length is not above zero, or the trucks lie outside the
   *     body
   */
  public Vehicle {
    height.requirePositive("vehicle height");
    length.requirePositive("vehicle length");
    width.requirePositive("vehicle width");
    truckCentres.requirePositive("truck centres");
    if (truckCentres.compareTo(length) > 0) {
      throw new IllegalArgumentException(
          "truck centres must be at most the vehicle's length ("
              + length
              + "), but was "
              + truckCentres);
    }
  }
}
