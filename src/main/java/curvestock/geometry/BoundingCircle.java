package curvestock.geometry;

import org.locationtech.jts.algorithm.MinimumBoundingCircle;
import org.locationtech.jts.geom.Coordinate;

/**
 * A circle that contains an outline and is the least such circle but for the flattening of its
 * arcs, by which it may be larger. Millimetres.
 */
public record BoundingCircle(Point centre, double radius) {

  private static final double FLATTENING_SHARE = 1e-3;

  /**
   * The circle around the whole outline, its arcs included. It errs to the large side only: by
   * about a thousandth of the longer side of the outline's box at most, from the flattening, and by
   * a rounding allowance.
   */
  public static BoundingCircle of(Outline outline) {
    Box box = outline.box();
    double tolerance = FLATTENING_SHARE * Math.max(box.width(), box.height());
    MinimumBoundingCircle circle =
        new MinimumBoundingCircle(new Flattening(tolerance).around(outline));
    Coordinate centre = circle.getCentre();
    // JTS computes the circle through two or three of the corners: a rounding allowance keeps all
    // in.
    return new BoundingCircle(
        new Point(centre.x, centre.y), circle.getRadius() * (1 + 1e-12) + 1e-9);
  }
}
