package curvestock.purchase;

import curvestock.units.Money;

/**
 * A lower price for larger quantities: from {@code from} sheets on, <em>every</em> sheet costs
 * {@code each}.
 */
public record PriceBreak(int from, Money each) {

  /**
   * @throws IllegalArgumentException if {@code from} is below 2 or the price is negative
   */
  public PriceBreak {
    if (from < 2) {
      throw new IllegalArgumentException(
          "a price break must start at 2 sheets or more, but was " + from);
    }
    if (each.minorUnits() < 0) {
      throw new IllegalArgumentException(
          "the price of a price break must not be negative, but was " + each.plain());
    }
  }
}
