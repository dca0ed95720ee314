package curvestock.printing;

import curvestock.answer.Figures;
import curvestock.units.Length;
import curvestock.units.LengthStyle;

/**
 * Writes lengths for pages: in the job's style, and never broken between number and unit.
 *
 * @param step that lengths are rounded to first; zero for none beyond the style's own
 */
record Ruler(LengthStyle style, Length step) {

  private static final char NO_BREAK = '\u00A0';

  /** As fine as the style goes. */
  Ruler(LengthStyle style) {
    this(style, Length.ZERO);
  }

  /**
   * For what is marked with a ruler and a pencil: the style's fractions as they are, decimals no
   * finer than 0.5 mm or 0.01 in.
   */
  static Ruler forHand(LengthStyle style) {
    return new Ruler(style, Figures.handStep(style));
  }

  String of(Length length) {
    return style.format(rounded(length)).replace(' ', NO_BREAK);
  }

  String of(double millimetres) {
    return of(Length.ofMillimetres(millimetres));
  }

  /** Without the unit, for a table whose head names it. */
  String number(double millimetres) {
    return style.number(rounded(Length.ofMillimetres(millimetres))).replace(' ', NO_BREAK);
  }

  /** Of what someone measured or chose. */
  String given(Length length) {
    return style.formatGiven(length).replace(' ', NO_BREAK);
  }

  String unit() {
    return style.unit().symbol();
  }

  /** How far off what is printed may be, at most twice over. */
  String nearest() {
    int part = style.denominator();
    return part > 0 ? "1/" + part + NO_BREAK + unit() : of(step);
  }

  /** The length that is printed. */
  Length rounded(Length length) {
    if (style.denominator() > 0) {
      double parts = Math.rint(length.in(style.unit()) * style.denominator());
      return Length.of(parts / style.denominator(), style.unit());
    }
    double steps = step.millimetres();
    return steps == 0
        ? length
        : Length.ofMillimetres(Math.rint(length.millimetres() / steps) * steps);
  }
}
