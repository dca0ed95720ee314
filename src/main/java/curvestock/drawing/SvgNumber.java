package curvestock.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers as every importer reads them: a point, no exponent, no needless zeros. */
public final class SvgNumber {

  /** A ten-thousandth of a millimetre; {@code check} forgives just this rounding. */
  private static final int DECIMALS = 4;

  private SvgNumber() {}

  /** The value with at most 4 decimals. */
  public static String of(double value) {
    return of(value, DECIMALS);
  }

  public static String of(double value, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
