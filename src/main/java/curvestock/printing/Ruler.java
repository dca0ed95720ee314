package curvestock.printing;

import curvestock.units.Length;
import curvestock.units.LengthStyle;

/** Writes lengths for pages: in the job's style, and never broken between number and unit. */
record Ruler(LengthStyle style) {

  private static final char NO_BREAK = '\u00A0';

  String of(Length length) {
    return style.format(length).replace(' ', NO_BREAK);
  }

  String of(double millimetres) {
    return of(Length.ofMillimetres(millimetres));
  }

  /** Without the unit, for a table whose head names it. */
  String number(double millimetres) {
    return style.number(Length.ofMillimetres(millimetres)).replace(' ', NO_BREAK);
  }

  /** Of what someone measured or chose. */
  String given(Length length) {
    return style.formatGiven(length).replace(' ', NO_BREAK);
  }

  String unit() {
    return style.unit().symbol();
  }
}
