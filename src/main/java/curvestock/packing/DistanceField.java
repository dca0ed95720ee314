package curvestock.packing;

import curvestock.piece.AnnularSector;
import curvestock.piece.Shape;
import curvestock.piece.Strip;

/**
 * The signed distance of a shape, in the shape's own frame: how far a point lies outside its
 * boundary, negative inside.
 *
 * <p>Exact, so that it is also 1-Lipschitz: {@code at(p) > r} means that no point within r of p
 * touches the shape. That property is what rejects whole groups of points at once.
 */
public interface DistanceField {

  /** The field of a shape without drilled holes, in closed form where there is one. */
  static DistanceField of(Shape shape) {
    Shape blank = shape.blank();
    if (blank instanceof AnnularSector sector) {
      return new SectorField(sector);
    }
    return blank instanceof Strip strip ? new StripField(strip) : new OutlineField(blank.outline());
  }

  /** The signed distance of (x, y), in mm. */
  double at(double x, double y);

  /**
   * The signed distance of (x, y), and in {@code outward} its gradient: the unit vector that leads
   * away from the shape fastest.
   */
  double at(double x, double y, double[] outward);

  /**
   * The signed distance of (x, y) where it is below {@code limit}; elsewhere any value from {@code
   * limit} up.
   *
   * @param limit at least 0
   */
  default double within(double x, double y, double limit) {
    return floor(x, y, limit);
  }

  /**
   * The same, and where the distance is below the limit its gradient in {@code outward}, as {@link
   * #at(double, double, double[])} gives it.
   */
  default double within(double x, double y, double limit, double[] outward) {
    return within(x, y, limit) >= limit ? limit : at(x, y, outward);
  }

  /**
   * A value that the signed distance of (x, y) is not below: the distance itself where it is below
   * {@code enough}; elsewhere from {@code enough} up, and as near the distance as is little work.
   *
   * @param enough at least 0
   */
  default double floor(double x, double y, double enough) {
    return at(x, y);
  }
}
