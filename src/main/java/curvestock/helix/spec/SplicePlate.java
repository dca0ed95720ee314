package curvestock.helix.spec;

import curvestock.units.Length;

/**
 * The plate that ties two pieces of roadbed together from below.
 *
 * @param form rectangle, or curved with the roadbed
 * @param length along the track; trade sizes are 4 to 6 in (common practice, no source)
 * @param inset how much narrower than the roadbed it is in all; 1/4 to 1/2 in (common practice, no
 *     source)
 * @param thickness how far it hangs below
 * @param screwsEachSide screws into each of the two pieces
 * @param screwHole diameter of the holes for them through the plate
 * @param fromRoadbedSheets whether it is cut from the same sheets as the roadbed
 */
public record SplicePlate(
    Form form,
    Length length,
    Length inset,
    Length thickness,
    int screwsEachSide,
    Length screwHole,
    boolean fromRoadbedSheets) {

  /** Its outline. */
  public enum Form {
    RECTANGLE,
    CURVED
  }

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if length or thickness are not above zero, the inset is below
   *     zero, the screws are not 1 to 20, or their holes would not leave the plate whole
   */
  public SplicePlate {
    length.requirePositive("splice plate length");
    inset.requireNotNegative("splice plate inset");
    thickness.requirePositive("splice plate thickness");
    if (screwsEachSide < 1 || screwsEachSide > 20) {
      throw new IllegalArgumentException(
          "screws each side must be 1 to 20, but was " + screwsEachSide);
    }
    screwHole.requirePositive("screw hole");
    if (screwHole.compareTo(length.times(0.25)) > 0) {
      throw new IllegalArgumentException(
          "screw hole must be at most a quarter of the plate's length ("
              + length.times(0.25)
              + "), but was "
              + screwHole);
    }
  }
}
