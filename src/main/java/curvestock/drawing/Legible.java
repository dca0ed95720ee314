package curvestock.drawing;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;

/** What can be read on paper at arm's length. */
public final class Legible {

  /** The smallest font that is printed, in millimetres: 6.2 pt. */
  public static final double SMALLEST = 2.2;

  /** What a printer shows of a page at least, be it Letter or A4, in millimetres. */
  private static final double LONG_SIDE = 267;

  private static final double SHORT_SIDE = 198;

  /** So that a box around no text at all still is a box. */
  private static final double NARROWEST = 0.3;

  /** Height of capitals, in font sizes, with a little air. */
  private static final double HEIGHT = 0.85;

  private Legible() {}

  /** The smallest font of a drawing of this size that can be read when one page shows all of it. */
  public static double onOnePage(double width, double height) {
    double factor =
        Math.max(
            Math.min(LONG_SIDE / width, SHORT_SIDE / height),
            Math.min(SHORT_SIDE / width, LONG_SIDE / height));
    return SMALLEST / factor;
  }

  /** The largest font, by halving, at which level text around a point lies within the region. */
  public static double within(
      Outline region, Point middle, String words, double largest, boolean bold) {
    double ems = Math.max(NARROWEST, bold ? TextWidth.boldEms(words) : TextWidth.ems(words));
    double low = 0;
    double high = largest;
    for (int i = 0; i < 12; i++) {
      double size = i == 0 ? high : (low + high) / 2;
      Outline box =
          Outline.rectangle(size * ems, size * HEIGHT)
              .at(new Pose(middle.x() - size * ems / 2, middle.y() - size * HEIGHT / 2, 0));
      if (Clearance.within(box, region) > 0) {
        low = size;
      } else {
        high = size;
      }
    }
    return low;
  }

  /** The wanted size, or as small as it takes to fit in the width, but never below the smallest. */
  public static double size(String text, double wanted, double width) {
    return Math.max(SMALLEST, Math.min(wanted, width / TextWidth.ems(text)));
  }
}
