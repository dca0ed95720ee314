package curvestock.helix.spec;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A slope as rise over run; below zero downhill. */
public record Grade(double ratio) implements Comparable<Grade> {

  public static final Grade LEVEL = new Grade(0);

  /**
   * Checks the value.
   *
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public Grade {
    if (!Double.isFinite(ratio)) {
      throw new IllegalArgumentException("grade must be a finite number, but was " + ratio);
    }
  }

  public static Grade ofPercent(double percent) {
    return new Grade(percent / 100);
  }

  public double percent() {
    return ratio * 100;
  }

  @Override
  public int compareTo(Grade other) {
    return Double.compare(ratio, other.ratio);
  }

  /** Percent with at most 2 decimals, for example {@code 2.27 %}. */
  @Override
  public String toString() {
    BigDecimal rounded = BigDecimal.valueOf(percent()).setScale(2, RoundingMode.HALF_UP);
    return (rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString()) + " %";
  }
}
