package curvestock.packing;

import curvestock.piece.Strip;

/** Signed distance of a rectangle about the origin, in closed form. */
final class StripField implements DistanceField {

  private final double halfLength;
  private final double halfWidth;

  StripField(Strip strip) {
    halfLength = strip.length().millimetres() / 2;
    halfWidth = strip.width().millimetres() / 2;
  }

  @Override
  public double at(double x, double y) {
    double dx = Math.abs(x) - halfLength;
    double dy = Math.abs(y) - halfWidth;
    return dx > 0 && dy > 0 ? Math.sqrt(dx * dx + dy * dy) : Math.max(dx, dy);
  }

  @Override
  public double at(double x, double y, double[] outward) {
    double dx = Math.abs(x) - halfLength;
    double dy = Math.abs(y) - halfWidth;
    double signX = x < 0 ? -1 : 1;
    double signY = y < 0 ? -1 : 1;
    if (dx > 0 && dy > 0) {
      double distance = Math.sqrt(dx * dx + dy * dy);
      outward[0] = dx / distance * signX;
      outward[1] = dy / distance * signY;
      return distance;
    }
    boolean alongX = dx > dy;
    outward[0] = alongX ? signX : 0;
    outward[1] = alongX ? 0 : signY;
    return Math.max(dx, dy);
  }
}
