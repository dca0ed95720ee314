package curvestock.report;

import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.units.Length;
import curvestock.units.LengthStyle;

/**
 * The larger of the two straight offcuts that one rip or cross cut beyond the last piece leaves:
 * the full width right of all pieces, or the full length above them, clear of the kerf.
 *
 * @param length along the longer side of what is left; zero if nothing is
 */
record Leftover(Length length, Length width) {

  static Leftover of(Layout layout) {
    Box sheet = layout.sheet().outline().box();
    Point reach = layout.reach();
    double gap = layout.cutting().spacing().millimetres();
    double right = Math.max(0, sheet.maxX() - reach.x() - gap);
    double above = Math.max(0, sheet.maxY() - reach.y() - gap);
    boolean takeRight = right * sheet.height() >= above * sheet.width();
    double a = takeRight ? right : above;
    double b = takeRight ? sheet.height() : sheet.width();
    return new Leftover(Length.ofMillimetres(Math.max(a, b)), Length.ofMillimetres(Math.min(a, b)));
  }

  /** Narrower strips than this are scraps. */
  private static final double USABLE = 25.4;

  String describe(LengthStyle style) {
    if (width.millimetres() < USABLE) {
      return "scraps only";
    }
    return "a strip of "
        + style.formatDown(length)
        + " x "
        + style.formatDown(width)
        + " and scraps";
  }
}
