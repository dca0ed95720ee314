package curvestock.check;

import curvestock.geometry.Point;
import java.util.Optional;

/**
 * From the end points of an SVG arc to its centre and angles: SVG 1.1 (second edition), appendix
 * F.6, 'Elliptical arc implementation notes', for equal radii. All in SVG's own axes (y down).
 */
final class SvgArc {

  private SvgArc() {}

  /**
   * The edge that an {@code A} command draws, or nothing where the rules omit it.
   *
   * <p>F.6.2: equal end points omit the arc; a zero radius makes a straight line; negative radii
   * lose their sign; radii too small to reach are scaled up just enough.
   *
   * @param large the large-arc flag
   * @param positive the sweep flag: whether angles grow
   */
  static Optional<Trace> of(Point from, double radius, boolean large, boolean positive, Point to) {
    double dx = (from.x() - to.x()) / 2;
    double dy = (from.y() - to.y()) / 2;
    double half = Math.hypot(dx, dy);
    if (half == 0) {
      return Optional.empty();
    }
    if (radius == 0) {
      return Optional.of(new Trace.Straight(from, to));
    }
    double r = Math.max(Math.abs(radius), half);
    // F.6.5 with rx = ry = r and no rotation: the centre lies square to the chord at this height.
    double factor = Math.sqrt(Math.max(0, (r - half) * (r + half))) / half;
    double sign = large == positive ? -1 : 1;
    Point centre =
        new Point(
            (from.x() + to.x()) / 2 + sign * factor * dy,
            (from.y() + to.y()) / 2 - sign * factor * dx);
    double first = Math.atan2(from.y() - centre.y(), from.x() - centre.x());
    double last = Math.atan2(to.y() - centre.y(), to.x() - centre.x());
    double sweep = last - first;
    if (positive && sweep < 0) {
      sweep += 2 * Math.PI;
    } else if (!positive && sweep > 0) {
      sweep -= 2 * Math.PI;
    }
    return Optional.of(new Trace.Round(centre, r, first, sweep));
  }
}
