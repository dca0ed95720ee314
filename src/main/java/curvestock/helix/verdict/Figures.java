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
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Quantities as they stand in sentences about a helix.
 *
 * @param fine whether with more decimals than usual
 */
record Figures(LengthStyle style, boolean fine) {

  Figures(LengthStyle style) {
    this(style, false);
  }

  /**
   * As fine as it takes to tell what was measured from what it is judged by: where a rule is not
   * met, both would otherwise print alike, and the numbers would contradict the verdict. Rounding
   * half up keeps the order of any two numbers, so where a rule is met nothing can.
   */
  Figures telling(Verdict v) {
    boolean alike =
        v.state() != Verdict.State.OK
            && v.measured().isPresent()
            && Stream.concat(
                    v.needed().stream(), Stream.ofNullable(v.facts().get(Fact.COMFORTABLE)))
                .anyMatch(limit -> isPrintedAlike(v.measured().get(), limit));
    return alike ? new Figures(style, true) : this;
  }

  private boolean isPrintedAlike(Quantity measured, Quantity limit) {
    return !measured.equals(limit)
        && printed(measured).isPresent()
        && printed(measured).equals(printed(limit));
  }

  /** As a finding prints it; empty for what is no measure. */
  Optional<String> printed(Quantity quantity) {
    if (quantity instanceof Length length) {
      return Optional.of(length(length));
    }
    if (quantity instanceof Share) {
      return Optional.of(percent(quantity));
    }
    return quantity instanceof Angle ? Optional.of(turns(quantity)) : Optional.empty();
  }

  /**
   * Made or measured: to a tenth of a millimetre, or the style's fraction; if fine, to a thousandth
   * of an inch or a hundredth of a millimetre.
   */
  String length(Length length) {
    return fine ? new LengthStyle(style.unit(), 0).format(length) : style.formatMade(length);
  }

  /** A rule of thumb: of a metric length no more than whole centimetres. */
  String rough(Length length) {
    double whole = Math.rint(length.millimetres() / 10) * 10;
    return style.unit().isImperial() || whole < 100
        ? length(length)
        : length(Length.ofMillimetres(whole));
  }

  /** The same, told as such where it is rounded. */
  String about(Length length) {
    String rough = rough(length);
    return rough.equals(length(length)) ? rough : "about " + rough;
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

  /** Percent with at most two decimals, if fine four. */
  String percent(Quantity share) {
    Grade grade = new Grade(((Share) share).part());
    return fine ? decimal(grade.percent(), 4) + " %" : grade.toString();
  }

  /** Turns with at most two decimals, if fine four. */
  String turns(Quantity turns) {
    return decimal(((Angle) turns).degrees() / 360, fine ? 4 : 2);
  }

  private static String decimal(double value, int places) {
    BigDecimal number = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
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
