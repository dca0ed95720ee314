package curvestock.packing;

import java.util.Arrays;

/**
 * Two bodies near each other: the squared shortfalls of gap at points of the first in the distance
 * field of the second, with their gradient.
 *
 * <p>Poses are given as the first's frame in the second's: turned by cosine {@code c} and sine
 * {@code s}, then moved by ({@code tx}, {@code ty}). One object serves all pairs of a search, one
 * after the other, and makes nothing on the way.
 */
final class Encounter {

  /** Stands for all groups of a body. */
  static final long ALL = -1;

  private final double gap;

  /** How much further off than the gap a group or a point is still looked at closely (mm). */
  private final double slack;

  private final double[] out = new double[2];

  /** How far along an edge of the first it meets edges of the second, in order, and which. */
  private double[] meetAt = new double[8];

  private int[] meets = new int[8];

  private Body body;
  private Body other;
  private double c;
  private double s;
  private double tx;
  private double ty;

  /** The sum of squared shortfalls. */
  double energy;

  /** Its gradient in the frame of the second: by the first's place, its angle, the second's. */
  double pullX;

  double pullY;
  double torque;
  double counterTorque;

  /** The groups of the first that are touched or nearly, as bits of {@link Body#bit}. */
  long near;

  /** How far out the nearest of the groups is that are not near. */
  double spare;

  /**
   * How much more than the gap lies between the bodies if the energy is zero, as far as the groups
   * asked for know it: at least this, and never more than {@link #slack}.
   */
  double clearance;

  Encounter(double gap, double slack) {
    this.gap = gap;
    this.slack = slack;
  }

  private void meet(Body first, Body second, double cos, double sin, double x, double y) {
    body = first;
    other = second;
    c = cos;
    s = sin;
    tx = x;
    ty = y;
    energy = 0;
    near = 0;
  }

  /**
   * Energy and gradient.
   *
   * @param groups those of the first that may be near, as bits
   */
  void feel(Body first, Body second, double cos, double sin, double x, double y, long groups) {
    meet(first, second, cos, sin, x, y);
    pullX = 0;
    pullY = 0;
    torque = 0;
    counterTorque = 0;
    spare = Double.POSITIVE_INFINITY;
    clearance = slack;
    boolean all = groups == ALL;
    int count = body.groupX.length;
    long left = groups;
    int g = all ? 0 : Long.numberOfTrailingZeros(left);
    while (g < count) {
      double off = all ? offExactly(g) : off(g);
      if (off < slack) {
        near |= 1L << Body.bit(g);
        if (off < 0) {
          for (int p = body.groupStart[g]; p < body.groupStart[g + 1]; p++) {
            double qx = c * body.pointX[p] - s * body.pointY[p];
            double qy = s * body.pointX[p] + c * body.pointY[p];
            push(qx, qy);
          }
        } else {
          clearance = Math.min(clearance, off);
        }
      } else {
        spare = Math.min(spare, off);
      }
      if (all || g >= Body.LAST_BIT) {
        g++;
      } else {
        left &= left - 1;
        g = Long.numberOfTrailingZeros(left);
      }
    }
    if (near != 0) {
      nearestPoints(true, Double.POSITIVE_INFINITY);
      chords(true, Double.POSITIVE_INFINITY);
    }
  }

  /** The energy alone; any value above the limit may come as soon as it is above it. */
  double energy(Body first, Body second, double cos, double sin, double x, double y, double limit) {
    meet(first, second, cos, sin, x, y);
    for (int g = 0; g < body.groupX.length && energy <= limit; g++) {
      double off = off(g);
      if (off < slack) {
        near |= 1L << Body.bit(g);
        for (int p = body.groupStart[g]; off < 0 && p < body.groupStart[g + 1]; p++) {
          double qx = c * body.pointX[p] - s * body.pointY[p];
          double qy = s * body.pointX[p] + c * body.pointY[p];
          weigh(qx, qy);
        }
      }
    }
    if (near != 0 && energy <= limit) {
      nearestPoints(false, limit);
      chords(false, limit);
    }
    return energy;
  }

  /** How much further off than the gap group g is; any value from the slack up if it is so far. */
  private double off(int g) {
    double gx = c * body.groupX[g] - s * body.groupY[g] + tx;
    double gy = s * body.groupX[g] + c * body.groupY[g] + ty;
    double beyond = body.groupRadius[g] + gap;
    double reach = other.field.within(gx, gy, beyond + slack);
    return reach >= beyond + slack ? slack : reach - beyond;
  }

  /** The same, and of a group that is far off a fair idea how far. */
  private double offExactly(int g) {
    double gx = c * body.groupX[g] - s * body.groupY[g] + tx;
    double gy = s * body.groupX[g] + c * body.groupY[g] + ty;
    double beyond = body.groupRadius[g] + gap;
    return other.field.floor(gx, gy, beyond + slack) - beyond;
  }

  /** The points where two curves can be nearest between their ends. */
  private void nearestPoints(boolean feel, double limit) {
    for (int h = 0; h < other.arcCentreX.length && energy <= limit; h++) {
      double arcCentreX = other.arcCentreX[h];
      double arcCentreY = other.arcCentreY[h];
      for (int k = 0; k < body.arcX.length; k++) {
        if ((near & body.arcGroups[k]) != 0) {
          onArc(k, arcCentreX, arcCentreY, feel);
        }
      }
      for (int k = 0; k < body.edgeX.length; k++) {
        if ((near & body.edgeGroups[k]) != 0) {
          onEdge(k, arcCentreX, arcCentreY, feel);
        }
      }
    }
  }

  private void onArc(int k, double arcCentreX, double arcCentreY, boolean feel) {
    double ax = c * body.arcX[k] - s * body.arcY[k];
    double ay = s * body.arcX[k] + c * body.arcY[k];
    double ux = arcCentreX - ax - tx;
    double uy = arcCentreY - ay - ty;
    double apart = Math.sqrt(ux * ux + uy * uy);
    if (!(apart > 0)) {
      return;
    }
    ux /= apart;
    uy /= apart;
    // Cosine of the angle from the arc's middle, measured in the second's frame.
    double mx = c * body.arcMiddleX[k] - s * body.arcMiddleY[k];
    double my = s * body.arcMiddleX[k] + c * body.arcMiddleY[k];
    double along = ux * mx + uy * my;
    double r = body.arcRadius[k];
    if (along >= body.arcCosHalf[k]) {
      take(ax + r * ux, ay + r * uy, feel);
    }
    if (-along >= body.arcCosHalf[k]) {
      take(ax - r * ux, ay - r * uy, feel);
    }
  }

  private void onEdge(int k, double arcCentreX, double arcCentreY, boolean feel) {
    double ex = c * body.edgeX[k] - s * body.edgeY[k];
    double ey = s * body.edgeX[k] + c * body.edgeY[k];
    double ux = c * body.edgeUnitX[k] - s * body.edgeUnitY[k];
    double uy = s * body.edgeUnitX[k] + c * body.edgeUnitY[k];
    double foot = (arcCentreX - ex - tx) * ux + (arcCentreY - ey - ty) * uy;
    if (foot > 0 && foot < body.edgeLength[k]) {
      take(ex + foot * ux, ey + foot * uy, feel);
    }
  }

  /**
   * Where straight edges of the first pass right through the second: two tips can cross between all
   * points that are looked at. If either body has a tip, and no corner of one lies in the other,
   * every part that straight-sided bodies share is bounded by such chords.
   */
  private void chords(boolean feel, double limit) {
    if (!body.tipped && !other.tipped) {
      return;
    }
    for (int k = 0; k < body.edgeX.length && energy <= limit; k++) {
      if ((near & body.edgeGroups[k]) != 0) {
        int count = meetings(k);
        for (int i = 1; i < count; i++) {
          chord(k, i - 1, i, feel);
        }
      }
    }
  }

  /** Finds where edge k of the first meets straight edges of the second; returns how often. */
  private int meetings(int k) {
    double ex = c * body.edgeX[k] - s * body.edgeY[k] + tx;
    double ey = s * body.edgeX[k] + c * body.edgeY[k] + ty;
    double ux = c * body.edgeUnitX[k] - s * body.edgeUnitY[k];
    double uy = s * body.edgeUnitX[k] + c * body.edgeUnitY[k];
    int count = 0;
    for (int j = 0; j < other.edgeX.length; j++) {
      double dx = other.edgeX[j] - ex;
      double dy = other.edgeY[j] - ey;
      double sine = ux * other.edgeUnitY[j] - uy * other.edgeUnitX[j];
      double along = (dx * other.edgeUnitY[j] - dy * other.edgeUnitX[j]) / sine;
      double across = (dx * uy - dy * ux) / sine;
      // Of parallel edges they are infinite or not numbers.
      if (along > 0 && along < body.edgeLength[k] && across >= 0 && across <= other.edgeLength[j]) {
        note(along, j, count++);
      }
    }
    return count;
  }

  /** Sorts a meeting in among those known. */
  private void note(double along, int edge, int known) {
    if (known == meets.length) {
      meets = Arrays.copyOf(meets, 2 * known);
      meetAt = Arrays.copyOf(meetAt, 2 * known);
    }
    int i = known;
    for (; i > 0 && meetAt[i - 1] > along; i--) {
      meetAt[i] = meetAt[i - 1];
      meets[i] = meets[i - 1];
    }
    meetAt[i] = along;
    meets[i] = edge;
  }

  /**
   * The middle between two meetings on edge k. It belongs to neither body: as they move, each
   * meeting slides along the edge that is met, and the middle moves by half of both.
   */
  private void chord(int k, int from, int to, boolean feel) {
    double ex = c * body.edgeX[k] - s * body.edgeY[k];
    double ey = s * body.edgeX[k] + c * body.edgeY[k];
    double ux = c * body.edgeUnitX[k] - s * body.edgeUnitY[k];
    double uy = s * body.edgeUnitX[k] + c * body.edgeUnitY[k];
    double middle = (meetAt[from] + meetAt[to]) / 2;
    double reach = other.field.within(ex + middle * ux + tx, ey + middle * uy + ty, gap, out);
    if (reach >= gap) {
      return;
    }
    double shortfall = gap - reach;
    energy += shortfall * shortfall;
    if (feel) {
      for (int at = from; at <= to; at += to - from) {
        double vx = other.edgeUnitX[meets[at]];
        double vy = other.edgeUnitY[meets[at]];
        double share = (out[0] * vx + out[1] * vy) / (ux * vy - uy * vx) / 2;
        pull(shortfall, -uy * share, ux * share, ex + meetAt[at] * ux, ey + meetAt[at] * uy);
      }
    }
  }

  private void take(double armX, double armY, boolean feel) {
    if (feel) {
      push(armX, armY);
    } else {
      weigh(armX, armY);
    }
  }

  /** One point of the first, seen from its origin: energy only. */
  private void weigh(double armX, double armY) {
    double reach = other.field.within(armX + tx, armY + ty, gap);
    if (reach < gap) {
      energy += (gap - reach) * (gap - reach);
    }
  }

  /** One point of the first, seen from its origin. */
  private void push(double armX, double armY) {
    double x = armX + tx;
    double y = armY + ty;
    double reach = other.field.within(x, y, gap + slack, out);
    if (reach >= gap) {
      clearance = Math.min(clearance, reach - gap);
      return;
    }
    double shortfall = gap - reach;
    energy += shortfall * shortfall;
    pull(shortfall, out[0], out[1], armX, armY);
  }

  /** The gradient of a squared shortfall that (nx, ny) lessens, by a point seen as in push. */
  private void pull(double shortfall, double nx, double ny, double armX, double armY) {
    pullX -= 2 * shortfall * nx;
    pullY -= 2 * shortfall * ny;
    torque -= 2 * shortfall * (ny * armX - nx * armY);
    counterTorque += 2 * shortfall * (ny * (armX + tx) - nx * (armY + ty));
  }
}
