package curvestock.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** An angle, held in degrees as people write it; always finite. */
public record Angle(double degrees) implements Comparable<Angle> {

  public static final Angle FULL_TURN = new Angle(360);

  /**
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public Angle {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("angle must be a finite number, but was " + degrees);
    }
  }

  public static Angle ofDegrees(double degrees) {
    return new Angle(degrees);
  }

  public static Angle ofRadians(double radians) {
    return new Angle(Math.toDegrees(radians));
  }

  public double radians() {
    return Math.toRadians(degrees);
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(degrees, other.degrees);
  }

  /** Degrees with at most 3 decimals, for example {@code 22.5°}. */
  @Override
  public String toString() {
    BigDecimal rounded =
        BigDecimal.valueOf(degrees).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return (rounded.signum() == 0 ? "0" : rounded.toPlainString()) + "°";
  }
}
