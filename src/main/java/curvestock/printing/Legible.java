package curvestock.printing;

import curvestock.drawing.TextWidth;

/** What can be read on paper at arm's length. */
final class Legible {

  /** The smallest font that is printed, in millimetres: 6.2 pt. */
  static final double SMALLEST = 2.2;

  private Legible() {}

  /** The wanted size, or as small as it takes to fit in the width, but never below the smallest. */
  static double size(String text, double wanted, double width) {
    return Math.max(SMALLEST, Math.min(wanted, width / TextWidth.ems(text)));
  }
}
