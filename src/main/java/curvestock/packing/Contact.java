package curvestock.packing;

/**
 * How near two bodies can be brought: the exact gap at given poses, and the least shift along a
 * direction.
 *
 * <p>The gap is the least value, in either body's distance field, over the other's corners and the
 * points where two curves can be nearest between their ends; that is exact for bodies that lie
 * apart. The shift comes from far away in steps of the gap in excess (conservative advancement),
 * which never passes a contact, so its result is valid even where it stops early.
 */
final class Contact {

  private static final double CLOSE_ENOUGH = 1e-9;
  private static final int MOST_STEPS = 400;

  private Contact() {}

  /**
   * The gap between a at the origin turned by {@code turnA}, and b at (x, y) turned by {@code
   * turnB}.
   */
  static double gap(Body a, double turnA, Body b, double x, double y, double turnB) {
    return new Turned(a, turnA, b, turnB).gap(x, y);
  }

  /** Two bodies whose turns are fixed while one of them is moved. */
  private static final class Turned {

    private final Body a;
    private final Body b;
    private final double cosA;
    private final double sinA;
    private final double cosB;
    private final double sinB;

    Turned(Body a, double turnA, Body b, double turnB) {
      this.a = a;
      this.b = b;
      cosA = StrictMath.cos(turnA);
      sinA = StrictMath.sin(turnA);
      cosB = StrictMath.cos(turnB);
      sinB = StrictMath.sin(turnB);
    }

    double gap(double x, double y) {
      double c = cosA * cosB + sinA * sinB;
      double s = sinB * cosA - cosB * sinA;
      // b in a's frame, then a in b's frame.
      double forward = oneWay(b, a, c, s, cosA * x + sinA * y, -sinA * x + cosA * y);
      double back = oneWay(a, b, c, -s, -cosB * x - sinB * y, sinB * x - cosB * y);
      return Math.min(forward, back);
    }
  }

  /** Least value of the other's field over the body's corners and possible nearest points. */
  private static double oneWay(Body body, Body other, double c, double s, double tx, double ty) {
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < body.cornerX.length; k++) {
      double x = c * body.cornerX[k] - s * body.cornerY[k] + tx;
      double y = s * body.cornerX[k] + c * body.cornerY[k] + ty;
      least = Math.min(least, other.field.at(x, y));
    }
    for (int h = 0; h < other.arcCentreX.length; h++) {
      for (int k = 0; k < body.arcX.length; k++) {
        double ax = c * body.arcX[k] - s * body.arcY[k] + tx;
        double ay = s * body.arcX[k] + c * body.arcY[k] + ty;
        double ux = other.arcCentreX[h] - ax;
        double uy = other.arcCentreY[h] - ay;
        double apart = Math.sqrt(ux * ux + uy * uy);
        double mx = c * body.arcMiddleX[k] - s * body.arcMiddleY[k];
        double my = s * body.arcMiddleX[k] + c * body.arcMiddleY[k];
        for (int sign = -1; sign <= 1 && apart > 0; sign += 2) {
          double vx = sign * ux / apart;
          double vy = sign * uy / apart;
          if (vx * mx + vy * my >= body.arcCosHalf[k]) {
            double r = body.arcRadius[k];
            least = Math.min(least, other.field.at(ax + r * vx, ay + r * vy));
          }
        }
      }
      for (int k = 0; k < body.edgeX.length; k++) {
        double ex = c * body.edgeX[k] - s * body.edgeY[k] + tx;
        double ey = s * body.edgeX[k] + c * body.edgeY[k] + ty;
        double ux = c * body.edgeUnitX[k] - s * body.edgeUnitY[k];
        double uy = s * body.edgeUnitX[k] + c * body.edgeUnitY[k];
        double foot = (other.arcCentreX[h] - ex) * ux + (other.arcCentreY[h] - ey) * uy;
        if (foot > 0 && foot < body.edgeLength[k]) {
          least = Math.min(least, other.field.at(ex + foot * ux, ey + foot * uy));
        }
      }
    }
    return least;
  }

  /**
   * The least t such that b, turned by {@code turnB} and moved to (offX, offY) + t·(dirX, dirY),
   * keeps {@code gap} from a at the origin for this and every larger t; minus infinity if nothing
   * is in the way.
   *
   * @param floor a least shift below it may be answered with any number below it: for whoever asks
   *     for the greatest of many, most are known to be less after a few steps
   */
  static double leastShift(
      Body a,
      double turnA,
      Body b,
      double turnB,
      double offX,
      double offY,
      double dirX,
      double dirY,
      double gap,
      double floor) {
    double far =
        2 * (Math.hypot(a.centreX, a.centreY) + Math.hypot(b.centreX, b.centreY))
            + a.radius
            + b.radius
            + gap
            + Math.abs(offX * dirX + offY * dirY);
    double least = Math.max(-far, floor);
    Turned turned = new Turned(a, turnA, b, turnB);
    double t = far;
    for (int step = 0; step < MOST_STEPS; step++) {
      double excess = turned.gap(offX + t * dirX, offY + t * dirY) - gap;
      if (excess <= CLOSE_ENOUGH) {
        return t + CLOSE_ENOUGH;
      }
      t -= excess;
      if (t < least) {
        return Double.NEGATIVE_INFINITY;
      }
    }
    return t;
  }
}
