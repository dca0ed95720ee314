package curvestock.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * An amount of money in minor units (cents); which currency is the job's business. Sums are exact
 * and refuse to overflow.
 */
public record Money(long minorUnits) implements Quantity, Comparable<Money> {

  /** No money. */
  public static final Money ZERO = new Money(0);

  /**
   * An amount in major units (1.25 is 125 cents), rounded half up to whole minor units.
   *
   * @throws ArithmeticException if it needs more than 64 bits
   */
  public static Money of(BigDecimal amount) {
    return new Money(amount.movePointRight(2).setScale(0, RoundingMode.HALF_UP).longValueExact());
  }

  /**
   * The exact sum.
   *
   * @throws ArithmeticException if it needs more than 64 bits
   */
  public Money plus(Money other) {
    return new Money(Math.addExact(minorUnits, other.minorUnits));
  }

  /**
   * The exact difference, which may be below zero.
   *
   * @throws ArithmeticException if it needs more than 64 bits
   */
  public Money minus(Money other) {
    return new Money(Math.subtractExact(minorUnits, other.minorUnits));
  }

  /**
   * The exact amount for so many.
   *
   * @throws ArithmeticException if it needs more than 64 bits
   */
  public Money times(long count) {
    return new Money(Math.multiplyExact(minorUnits, count));
  }

  /** The amount with two decimals and no currency, for example {@code 186.00}. */
  public String plain() {
    return BigDecimal.valueOf(minorUnits, 2).toPlainString();
  }

  /**
   * The amount with the currency's text before it: signs such as {@code $} or {@code €} directly,
   * words such as {@code EUR} with a space; a minus stands before both.
   */
  public String format(String currency) {
    int last = currency.isEmpty() ? 0 : currency.codePointBefore(currency.length());
    String gap = Character.isLetter(last) || last == '.' ? " " : "";
    String amount = plain();
    return minorUnits < 0 ? "-" + currency + gap + amount.substring(1) : currency + gap + amount;
  }

  @Override
  public int compareTo(Money other) {
    return Long.compare(minorUnits, other.minorUnits);
  }
}
