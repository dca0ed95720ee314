package curvestock.packing;

import curvestock.piece.AnnularSector;

/**
 * Signed distance of an annular sector in closed form.
 *
 * <p>The sector is symmetric about +x, so the point is folded to y ≥ 0. Within the wedge the
 * nearest boundary is an arc (or, inside the material, perhaps the end face); beyond the wedge it
 * is always the end face on the same side.
 */
final class SectorField implements DistanceField {

  private final double inner;
  private final double outer;
  private final double cos;
  private final double sin;
  private final boolean ring;

  SectorField(AnnularSector sector) {
    double half = sector.sweep().radians() / 2;
    double hole = sector.innerRadius().millimetres();
    // A disc has no inner boundary, not even a point: its middle must be as deep as its radius.
    inner = sector.isRing() && hole <= 0 ? Double.NEGATIVE_INFINITY : Math.max(0, hole);
    outer = sector.outerRadius().millimetres();
    cos = StrictMath.cos(half);
    sin = StrictMath.sin(half);
    ring = sector.isRing();
  }

  @Override
  public double at(double x, double y) {
    double fold = Math.abs(y);
    double distance = Math.sqrt(x * x + y * y);
    double perpendicular = sin * x - cos * fold;
    if (ring || perpendicular >= 0) {
      double radial = Math.max(distance - outer, inner - distance);
      return ring || radial >= 0 ? radial : Math.max(radial, -endFace(x, fold));
    }
    return endFace(x, fold);
  }

  private double endFace(double x, double fold) {
    double along = cos * x + sin * fold;
    double t = Math.max(inner, Math.min(outer, along));
    double dx = x - t * cos;
    double dy = fold - t * sin;
    return Math.sqrt(dx * dx + dy * dy);
  }

  @Override
  public double at(double x, double y, double[] outward) {
    return within(x, y, Double.POSITIVE_INFINITY, outward);
  }

  @Override
  public double within(double x, double y, double limit, double[] outward) {
    double fold = Math.abs(y);
    if (ring || sin * x >= cos * fold) {
      double square = x * x + y * y;
      if (isOff(square, limit)) {
        return limit;
      }
      double radial = radial(x, y, Math.sqrt(square), outward);
      if (ring || radial >= 0) {
        return radial;
      }
      double toEnd = endFace(x, fold);
      if (-toEnd <= radial) {
        return radial;
      }
      towardsEnd(x, fold, y < 0 ? -1 : 1, -toEnd, outward);
      return -toEnd;
    }
    double toEnd = endFace(x, fold);
    if (toEnd < limit) {
      towardsEnd(x, fold, y < 0 ? -1 : 1, toEnd, outward);
    }
    return toEnd;
  }

  @Override
  public double within(double x, double y, double limit) {
    double fold = Math.abs(y);
    if (!ring && sin * x < cos * fold) {
      return endFace(x, fold);
    }
    double square = x * x + y * y;
    if (isOff(square, limit)) {
      return limit;
    }
    double distance = Math.sqrt(square);
    double radial = Math.max(distance - outer, inner - distance);
    return ring || radial >= 0 ? radial : Math.max(radial, -endFace(x, fold));
  }

  /** Whether a point within the wedge, at this squared distance, is no nearer than the limit. */
  private boolean isOff(double square, double limit) {
    double far = outer + limit;
    double near = inner - limit;
    return square >= far * far || (near > 0 && square <= near * near);
  }

  private double radial(double x, double y, double distance, double[] outward) {
    boolean outside = distance - outer >= inner - distance;
    double scale = distance > 0 ? (outside ? 1 : -1) / distance : 0;
    outward[0] = distance > 0 ? x * scale : -1;
    outward[1] = y * scale;
    return outside ? distance - outer : inner - distance;
  }

  private void towardsEnd(double x, double fold, double side, double signed, double[] outward) {
    double along = cos * x + sin * fold;
    double t = Math.max(inner, Math.min(outer, along));
    if (Math.abs(signed) < 1e-12) {
      outward[0] = -sin;
      outward[1] = cos * side;
      return;
    }
    outward[0] = (x - t * cos) / signed;
    outward[1] = (fold - t * sin) / signed * side;
  }
}
