package curvestock.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;

/**
 * How lengths are printed: the unit, and for inches the finest fraction (for example 64 prints
 * {@code 27 1/2 in}; 0 prints decimals).
 */
public record LengthStyle(LengthUnit unit, int denominator) {

  /** Millimetres with up to two decimals. */
  public static final LengthStyle METRIC = new LengthStyle(LengthUnit.MILLIMETRE, 0);

  /** Inches with fractions down to 1/64. */
  public static final LengthStyle INCH_FRACTIONS = new LengthStyle(LengthUnit.INCH, 64);

  /** Inches with up to three decimals. */
  public static final LengthStyle INCH_DECIMALS = new LengthStyle(LengthUnit.INCH, 0);

  private static final int FINEST = 64;

  /** Rounding of a conversion to millimetres and back, with room to spare, in 64ths. */
  private static final double WHOLE_STEP = 1e-6;

  /**
   * @throws IllegalArgumentException if the denominator is not 0 or a power of two up to 64, or if
   *     a fraction is asked of a metric unit
   */
  public LengthStyle {
    boolean powerOfTwo =
        denominator > 0 && denominator <= FINEST && Integer.bitCount(denominator) == 1;
    if (denominator != 0 && !powerOfTwo) {
      throw new IllegalArgumentException(
          "fraction must be 0 (decimals) or one of 1/2, 1/4 ... 1/64, but was 1/" + denominator);
    }
    if (denominator != 0 && unit != LengthUnit.INCH) {
      throw new IllegalArgumentException(
          "fractions are printed for inches only, not for " + unit.symbol());
    }
  }

  /**
   * The length as text with its unit, rounded half up to the style's step: the fraction, or 3
   * decimals (inches, feet), 2 (mm), 3 (cm), 4 (m), without trailing zeros.
   */
  public String format(Length length) {
    return number(length) + " " + unit.symbol();
  }

  /**
   * A length that someone measured or chose (a kerf, a thickness), which rounding would falsify:
   * for a style with fractions, the fraction if the length is a whole number of 64ths, else
   * decimals, so that plywood of 0.236 in is not printed as 1/4 in.
   */
  public String formatGiven(Length length) {
    if (denominator == 0) {
      return format(length);
    }
    double steps = length.in(unit) * FINEST;
    boolean whole = Math.abs(steps - Math.rint(steps)) < WHOLE_STEP;
    return (whole ? INCH_FRACTIONS : INCH_DECIMALS).format(length);
  }

  /**
   * As {@link #format}, but never more than there is: rounded down to the style's fraction, or to a
   * hundredth of an inch or a tenth of a millimetre. For wood that is left over.
   */
  public String formatDown(Length length) {
    return format(roundDown(length));
  }

  /** The length that {@link #formatDown} prints. */
  public Length roundDown(Length length) {
    return stepped(length, steps -> Math.floor(steps + WHOLE_STEP));
  }

  /**
   * As {@link #format}, but millimetres to a tenth at most: for what was worked out, of which no
   * saw, rule or rod can make more.
   */
  public String formatMade(Length length) {
    return format(roundMade(length));
  }

  /** The length that {@link #formatMade} prints. */
  public Length roundMade(Length length) {
    if (unit == LengthUnit.MILLIMETRE) {
      return Length.ofMillimetres(Math.round(length.millimetres() * 10) / 10.0);
    }
    if (denominator == 0) {
      return Length.of(Double.parseDouble(number(length)), unit);
    }
    return Length.of((double) Math.round(length.in(unit) * denominator) / denominator, unit);
  }

  /** As {@link #roundMade}, but fractions go down to 64ths: for what many parts are sawn to. */
  public Length roundSawn(Length length) {
    return denominator > 0 ? INCH_FRACTIONS.roundMade(length) : roundMade(length);
  }

  /** The length that {@link #roundSawn} gives, in 64ths where there are fractions. */
  public String formatSawn(Length length) {
    return denominator > 0 ? INCH_FRACTIONS.format(length) : formatMade(length);
  }

  /**
   * As {@link #formatMade}, but never less than stated: rounded up to the style's fraction, or to a
   * hundredth of an inch or a tenth of a millimetre. For what is needed at least.
   */
  public String formatUp(Length length) {
    return format(roundUp(length));
  }

  /** The length that {@link #formatUp} prints. */
  public Length roundUp(Length length) {
    return stepped(length, steps -> Math.ceil(steps - WHOLE_STEP));
  }

  /** In whole steps of the style's fraction, a hundredth of an inch or a tenth of a millimetre. */
  private Length stepped(Length length, DoubleUnaryOperator rounded) {
    boolean inches = unit == LengthUnit.INCH || unit == LengthUnit.FOOT;
    double steps = denominator > 0 ? denominator : inches ? 100 : 10;
    double value = inches ? length.inches() : length.millimetres();
    double whole = rounded.applyAsDouble(value * steps) / steps;
    return inches ? Length.ofInches(whole) : Length.ofMillimetres(whole);
  }

  /** As {@link #format}, without the unit. */
  public String number(Length length) {
    double value = length.in(unit);
    if (denominator == 0) {
      return decimal(value, decimals());
    }
    long steps = Math.round(Math.abs(value) * denominator);
    long whole = steps / denominator;
    long part = steps % denominator;
    String sign = value < 0 && steps != 0 ? "-" : "";
    if (part == 0) {
      return sign + whole;
    }
    long divisor = Long.lowestOneBit(part);
    String fraction = part / divisor + "/" + denominator / divisor;
    return sign + (whole == 0 ? fraction : whole + " " + fraction);
  }

  private int decimals() {
    return switch (unit) {
      case MILLIMETRE -> 2;
      case METRE -> 4;
      case CENTIMETRE, INCH, FOOT -> 3;
    };
  }

  private static String decimal(double value, int places) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
