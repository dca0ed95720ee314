package curvestock.helix.verdict;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Locale;

/** Prints lengths and counts in the user's style. */
record Wording(LengthStyle style) {

  String length(Length length) {
    return style.format(length);
  }

  /** Two decimals, with a point whatever the locale. */
  String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
