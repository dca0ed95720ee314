package curvestock.helix.spec;

import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;

/**
 * A board or rod as it is sold, to be cut to length.
 *
 * @param name as the user calls it
 * @param length of one
 * @param price of one, if known
 */
public record StockBoard(String name, Length length, Optional<Money> price) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if the name is blank, the length not above zero, or the price
   *     below zero
   */
  public StockBoard {
    if (name.isBlank()) {
      throw new IllegalArgumentException("a board must have a name");
    }
    length.requirePositive("board length");
    if (price.isPresent() && price.get().minorUnits() < 0) {
      throw new IllegalArgumentException(
          "price must not be negative, but was " + price.get().plain());
    }
  }
}
