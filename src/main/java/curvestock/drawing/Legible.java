package curvestock.drawing;

/** What can be read on paper at arm's length. */
public final class Legible {

  /** The smallest font that is printed, in millimetres: 6.2 pt. */
  public static final double SMALLEST = 2.2;

  /** What a printer shows of a page at least, be it Letter or A4, in millimetres. */
  private static final double LONG_SIDE = 267;

  private static final double SHORT_SIDE = 198;

  private Legible() {}

  /** The smallest font of a drawing of this size that can be read when one page shows all of it. */
  public static double onOnePage(double width, double height) {
    double factor =
        Math.max(
            Math.min(LONG_SIDE / width, SHORT_SIDE / height),
            Math.min(SHORT_SIDE / width, LONG_SIDE / height));
    return SMALLEST / factor;
  }

  /** The wanted size, or as small as it takes to fit in the width, but never below the smallest. */
  public static double size(String text, double wanted, double width) {
    return Math.max(SMALLEST, Math.min(wanted, width / TextWidth.ems(text)));
  }
}
