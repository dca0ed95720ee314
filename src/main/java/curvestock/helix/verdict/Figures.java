package curvestock.helix.verdict;

import curvestock.helix.spec.Grade;
import curvestock.helix.spec.Setting;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;

/** Quantities as they stand in sentences about a helix. */
record Figures(LengthStyle style) {

  /** Made or measured: to a tenth of a millimetre, or the style's fraction. */
  String length(Length length) {
    return style.formatMade(length);
  }

  /** What is needed at least: rounded up. */
  String atLeast(Length length) {
    return style.formatUp(length);
  }

  /** What may be had at most: rounded down. */
  String atMost(Length length) {
    return style.formatDown(length);
  }

  /** A length that may be too small to print: {@code less than 1/32 in}. */
  String small(Length length) {
    String words = length(length);
    return words.startsWith("0 ") ? "less than " + atLeast(Length.ofMillimetres(1e-3)) : words;
  }

  /** Percent with at most two decimals. */
  String percent(Quantity share) {
    return new Grade(((Share) share).part()).toString();
  }

  /** Turns with at most two decimals. */
  String turns(Quantity turns) {
    BigDecimal number =
        BigDecimal.valueOf(((Angle) turns).degrees() / 360).setScale(2, RoundingMode.HALF_UP);
    return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
  }

  static long count(Quantity count) {
    return ((Count) count).number();
  }

  static String text(Quantity text) {
    return ((Text) text).words();
  }

  /** The value of a setting as it is written into a job. */
  String value(Setting setting, Quantity value) {
    if (setting == Setting.TURNS) {
      return turns(value);
    }
    if (value instanceof Length length) {
      return style.formatGiven(length);
    }
    if (value instanceof Text text) {
      return text.words();
    }
    return value instanceof Count count ? Long.toString(count.number()) : number((Share) value);
  }

  /** Percent without its sign, as the job has it. */
  private static String number(Share share) {
    return new Grade(share.part()).toString().replace(" %", "");
  }
}
