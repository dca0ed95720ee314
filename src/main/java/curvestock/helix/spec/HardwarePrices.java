package curvestock.helix.spec;

import curvestock.units.Money;
import java.util.Optional;

/**
 * The user's prices of small parts, each empty where he gives none.
 *
 * @param nut each
 * @param washer each
 * @param coupling a nut that joins two lengths of rod, each
 * @param screw each
 * @param plate a splice or side plate that is not cut from the roadbed's sheets, each
 * @param glueKilogram a kilogram of glue
 */
public record HardwarePrices(
    Optional<Money> nut,
    Optional<Money> washer,
    Optional<Money> coupling,
    Optional<Money> screw,
    Optional<Money> plate,
    Optional<Money> glueKilogram) {

  public static final HardwarePrices UNKNOWN =
      new HardwarePrices(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
}
