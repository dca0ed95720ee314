package curvestock.helix.verdict;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Locale;

/** Prints lengths and counts in the user's style. */
record Wording(LengthStyle style) {

  String length(Length length) {
    return style.formatMade(length);
  }

  /** What is needed at least, rounded up, so that doing just that is enough. */
  String atLeast(Length length) {
    return style.formatUp(length);
  }

  /** What may be had at most, rounded down. */
  String atMost(Length length) {
    return style.formatDown(length);
  }

  /** A length that may be too small to print: {@code less than 1/32 in}. */
  String small(Length length) {
    String words = length(length);
    return words.startsWith("0 ") ? "less than " + atLeast(Length.ofMillimetres(1e-3)) : words;
  }

  /** Two decimals, with a point whatever the locale. */
  String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
