package curvestock.units;

import java.util.Optional;

/**
 * A length, held in millimetres. Always finite; may be negative only where the user of it allows
 * that (see {@link #requirePositive} and {@link #requireNotNegative}).
 */
public record Length(double millimetres) implements Quantity, Comparable<Length> {

  /** Rounding of a conversion to millimetres and back, in steps. */
  private static final double WHOLE_STEP = 1e-6;

  /** No length. */
  public static final Length ZERO = new Length(0);

  /**
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public Length {
    if (!Double.isFinite(millimetres)) {
      throw new IllegalArgumentException("length must be a finite number, but was " + millimetres);
    }
  }

  /**
   * So many millimetres.
   *
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public static Length ofMillimetres(double millimetres) {
    return new Length(millimetres);
  }

  /**
   * So many inches of 25.4 mm.
   *
   * @throws IllegalArgumentException if the length is not a finite number
   */
  public static Length ofInches(double inches) {
    return of(inches, LengthUnit.INCH);
  }

  /**
   * So many of the unit.
   *
   * @throws IllegalArgumentException if the length is not a finite number
   */
  public static Length of(double value, LengthUnit unit) {
    return new Length(value * unit.millimetres());
  }

  /**
   * Reads a length such as {@code 27 1/2 in}, {@code 2 ft 3 1/2 in}, {@code 700 mm} or {@code 1.22
   * m}.
   *
   * @throws LengthFormatException if the text is not a length with a unit; the message says what is
   *     accepted
   */
  public static Length parse(String text) {
    return LengthParser.parse(text, Optional.empty());
  }

  /**
   * As {@link #parse(String)}, but a number without a unit is taken to be in {@code unit}.
   *
   * @throws LengthFormatException if the text is not a length
   */
  public static Length parse(String text, LengthUnit unit) {
    return LengthParser.parse(text, Optional.of(unit));
  }

  /** The value in the given unit. */
  public double in(LengthUnit unit) {
    return millimetres / unit.millimetres();
  }

  /** The length in inches of 25.4 mm. */
  public double inches() {
    return in(LengthUnit.INCH);
  }

  /**
   * The sum.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public Length plus(Length other) {
    return new Length(millimetres + other.millimetres);
  }

  /**
   * The difference, which may be below zero.
   *
   * @throws IllegalArgumentException if it is not finite
   */
  public Length minus(Length other) {
    return new Length(millimetres - other.millimetres);
  }

  /** This or the other, whichever is less. */
  public Length shorter(Length other) {
    return compareTo(other) <= 0 ? this : other;
  }

  /** This or the other, whichever is more. */
  public Length longer(Length other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /**
   * The length times a plain number, which may be below zero.
   *
   * @throws IllegalArgumentException if the product is not a finite number
   */
  public Length times(double factor) {
    return new Length(millimetres * factor);
  }

  /**
   * This length, if it is above zero.
   *
   * @param what the name of the thing measured, for the message
   * @throws IllegalArgumentException if the length is zero or less
   */
  public Length requirePositive(String what) {
    if (millimetres <= 0) {
      throw new IllegalArgumentException(what + " must be above zero, but was " + this);
    }
    return this;
  }

  /**
   * This length, if it is zero or above.
   *
   * @param what the name of the thing measured, for the message
   * @throws IllegalArgumentException if the length is below zero
   */
  public Length requireNotNegative(String what) {
    if (millimetres < 0) {
      throw new IllegalArgumentException(what + " must not be negative, but was " + this);
    }
    return this;
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(millimetres, other.millimetres);
  }

  /**
   * The length in millimetres and in inches, for messages that do not know the reader's unit; use
   * {@link LengthStyle} where a person chose one.
   */
  @Override
  public String toString() {
    return LengthStyle.METRIC.format(this) + " (" + LengthStyle.INCH_DECIMALS.format(this) + ")";
  }

  /** The next whole number of steps that is not less, rounding of conversions aside. */
  public Length up(Length step) {
    return step.times(Math.ceil(millimetres() / step.millimetres() - WHOLE_STEP));
  }

  /** The whole number of steps that is not more, rounding of conversions aside. */
  public Length down(Length step) {
    return step.times(Math.floor(millimetres() / step.millimetres() + WHOLE_STEP));
  }
}
