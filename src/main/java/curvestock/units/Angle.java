package curvestock.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An angle, held in degrees as people write it; always finite. */
public record Angle(double degrees) implements Quantity, Comparable<Angle> {

  /** 360°. */
  public static final Angle FULL_TURN = new Angle(360);

  private static final int LONGEST_TEXT = 40;
  private static final Pattern DEGREES =
      Pattern.compile("(-?(?:\\d+(?:\\.\\d*)?|\\.\\d+))\\s*(?:°|deg|degrees?)?");

  /**
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public Angle {
    if (!Double.isFinite(degrees)) {
      throw new IllegalArgumentException("angle must be a finite number, but was " + degrees);
    }
  }

  /**
   * So many degrees.
   *
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public static Angle ofDegrees(double degrees) {
    return new Angle(degrees);
  }

  /**
   * So many radians, converted to degrees and rounded as doubles are.
   *
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public static Angle ofRadians(double radians) {
    return new Angle(Math.toDegrees(radians));
  }

  /**
   * Reads degrees: {@code 90}, {@code 22.5}, {@code 90 deg}, {@code 90°}.
   *
   * @throws IllegalArgumentException if the text is none of these; the message says what is
   *     accepted
   */
  public static Angle parse(String text) {
    boolean tooLong = text.length() > LONGEST_TEXT;
    Matcher matcher = DEGREES.matcher(tooLong ? "" : text.strip().toLowerCase(Locale.ROOT));
    if (!matcher.matches()) {
      String shown = tooLong ? text.substring(0, LONGEST_TEXT) + "..." : text;
      throw new IllegalArgumentException(
          "\"" + shown + "\" is not an angle; write degrees, such as 90, \"22.5 deg\" or \"60°\"");
    }
    return new Angle(Double.parseDouble(matcher.group(1)));
  }

  /** The angle in radians, rounded as doubles are. */
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
