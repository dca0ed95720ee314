package curvestock.units;

import java.math.BigDecimal;

/**
 * Tax that is added to a price.
 *
 * @param percent of the price before tax, for example 8.25
 */
public record TaxRate(BigDecimal percent) {

  /** No tax, or prices that include it. */
  public static final TaxRate NONE = new TaxRate(BigDecimal.ZERO);

  /**
   * @throws IllegalArgumentException if the rate is below zero
   */
  public TaxRate {
    if (percent.signum() < 0) {
      throw new IllegalArgumentException("tax must not be negative, but was " + percent + " %");
    }
  }

  /**
   * The tax on a price, rounded half up to whole minor units.
   *
   * @throws ArithmeticException if it needs more than 64 bits
   */
  public Money on(Money net) {
    return Money.of(BigDecimal.valueOf(net.minorUnits(), 2).multiply(percent).movePointLeft(2));
  }

  /**
   * The price with its tax.
   *
   * @throws ArithmeticException if it needs more than 64 bits
   */
  public Money gross(Money net) {
    return net.plus(on(net));
  }

  /** Whether nothing is added. */
  public boolean isNone() {
    return percent.signum() == 0;
  }

  /** For example {@code 8.25 %}. */
  @Override
  public String toString() {
    return percent.stripTrailingZeros().toPlainString() + " %";
  }
}
