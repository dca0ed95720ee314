package curvestock.units;

/**
 * A weight, as people call it, held in kilograms.
 *
 * @param kilograms finite, not below zero
 */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {

  /** International avoirdupois pound, exact since 1959. */
  public static final double KILOGRAMS_A_POUND = 0.45359237;

  /** No weight. */
  public static final Mass ZERO = new Mass(0);

  /**
   * @throws IllegalArgumentException if the value is not finite or below zero
   */
  public Mass {
    if (!(kilograms >= 0) || Double.isInfinite(kilograms)) {
      throw new IllegalArgumentException(
          "weight must be a finite number not below zero, but was " + kilograms + " kg");
    }
  }

  /**
   * The sum.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public Mass plus(Mass other) {
    return new Mass(kilograms + other.kilograms);
  }

  /** The weight in avoirdupois pounds. */
  public double pounds() {
    return kilograms / KILOGRAMS_A_POUND;
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kilograms, other.kilograms);
  }
}
