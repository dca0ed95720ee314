package curvestock.packing;

import curvestock.geometry.Outline;
import java.util.List;

/**
 * The energy of a piece against the sheet's edge and its defects: squared shortfalls of margin and
 * gap.
 *
 * <p>On a rectangle the extremes of a piece lie at its corners or where a convex arc points
 * straight at a side; on any other sheet also at inner corners of the sheet that poke into the
 * piece. Both lists are complete, so an energy of zero means that the margin holds exactly.
 */
final class Walls {

  /**
   * An energy small enough to be taken for zero ({@link Lane#GOAL}) then means less than a
   * ten-thousandth of a degree, which is what {@link curvestock.piece.Grain#allows} forgives.
   */
  private static final double LEAST_GRAIN_ARM = 400;

  private final Arena arena;
  private final double margin;
  private final double gap;
  private final Body[] defects;
  private final double[] out = new double[2];

  private double energy;
  private double pullX;
  private double pullY;
  private double torque;

  Walls(Arena arena, double margin, double gap) {
    this.arena = arena;
    this.margin = margin;
    this.gap = gap;
    List<Outline> outlines = arena.defects;
    this.defects = outlines.stream().map(Body::new).toArray(Body[]::new);
  }

  /** Rough cost of one energy, in tests of one pair. */
  int cost() {
    return 1 + (arena.rectangle ? 0 : 2 * arena.normalX.length) + 8 * defects.length;
  }

  /** Unweighted energy; its gradient times {@code weight} is added at index {@code at}. */
  double energy(
      Body body, double[] pose, int at, double cos, double sin, double weight, double[] gradient) {
    energy = 0;
    pullX = 0;
    pullY = 0;
    torque = 0;
    double x = pose[at];
    double y = pose[at + 1];
    double cx = x + cos * body.centreX - sin * body.centreY;
    double cy = y + sin * body.centreX + cos * body.centreY;
    if (arena.rectangle) {
      rectangle(body, x, y, cos, sin, cx, cy);
    } else if (arena.field.at(cx, cy) > -margin - body.radius) {
      polygon(body, x, y, cos, sin);
    }
    for (Body defect : defects) {
      double dx = cx - defect.centreX;
      double dy = cy - defect.centreY;
      double limit = body.radius + defect.radius + gap;
      if (dx * dx + dy * dy < limit * limit) {
        defect(body, defect, x, y, cos, sin);
      }
    }
    if (!body.grainFree()) {
      grain(body, pose[at + 2]);
    }
    if (energy > 0) {
      gradient[at] += weight * pullX;
      gradient[at + 1] += weight * pullY;
      gradient[at + 2] += weight * torque;
    }
    return energy;
  }

  /** The angle by which the grain is missed, as millimetres at the rim of the piece. */
  private void grain(Body body, double angle) {
    double off = body.grainDirection + angle - arena.grain;
    off -= Math.PI * Math.rint(off / Math.PI);
    double excess = Math.abs(off) - body.grainWithin;
    if (excess > 0) {
      double arm = Math.max(body.radius, LEAST_GRAIN_ARM);
      double shortfall = excess * arm;
      energy += shortfall * shortfall;
      torque += 2 * shortfall * arm * Math.signum(off);
    }
  }

  private void rectangle(
      Body body, double x, double y, double cos, double sin, double cx, double cy) {
    double left = arena.box.minX() + margin;
    double right = arena.box.maxX() - margin;
    double low = arena.box.minY() + margin;
    double high = arena.box.maxY() - margin;
    double r = body.radius;
    if (cx - r >= left && cx + r <= right && cy - r >= low && cy + r <= high) {
      return;
    }
    for (int k = 0; k < body.cornerX.length; k++) {
      double armX = cos * body.cornerX[k] - sin * body.cornerY[k];
      double armY = sin * body.cornerX[k] + cos * body.cornerY[k];
      side(left - x - armX, -1, 0, armX, armY);
      side(x + armX - right, 1, 0, armX, armY);
      side(low - y - armY, 0, -1, armX, armY);
      side(y + armY - high, 0, 1, armX, armY);
    }
    for (int k = 0; k < body.arcX.length; k++) {
      double ax = cos * body.arcX[k] - sin * body.arcY[k];
      double ay = sin * body.arcX[k] + cos * body.arcY[k];
      double mx = cos * body.arcMiddleX[k] - sin * body.arcMiddleY[k];
      double my = sin * body.arcMiddleX[k] + cos * body.arcMiddleY[k];
      double radius = body.arcRadius[k];
      double spread = body.arcCosHalf[k];
      if (-mx >= spread) {
        side(left - x - ax + radius, -1, 0, ax - radius, ay);
      }
      if (mx >= spread) {
        side(x + ax + radius - right, 1, 0, ax + radius, ay);
      }
      if (-my >= spread) {
        side(low - y - ay + radius, 0, -1, ax, ay - radius);
      }
      if (my >= spread) {
        side(y + ay + radius - high, 0, 1, ax, ay + radius);
      }
    }
  }

  /**
   * A point with its arm beyond a side by {@code shortfall}, the side's outward normal (nx, ny).
   */
  private void side(double shortfall, double nx, double ny, double armX, double armY) {
    if (shortfall > 0) {
      energy += shortfall * shortfall;
      pullX += 2 * shortfall * nx;
      pullY += 2 * shortfall * ny;
      torque += 2 * shortfall * (ny * armX - nx * armY);
    }
  }

  private void polygon(Body body, double x, double y, double cos, double sin) {
    for (int k = 0; k < body.pointX.length; k++) {
      point(
          x,
          y,
          cos * body.pointX[k] - sin * body.pointY[k],
          sin * body.pointX[k] + cos * body.pointY[k]);
    }
    for (int k = 0; k < body.arcX.length; k++) {
      double ax = cos * body.arcX[k] - sin * body.arcY[k];
      double ay = sin * body.arcX[k] + cos * body.arcY[k];
      double mx = cos * body.arcMiddleX[k] - sin * body.arcMiddleY[k];
      double my = sin * body.arcMiddleX[k] + cos * body.arcMiddleY[k];
      for (int e = 0; e < arena.normalX.length; e++) {
        double nx = arena.normalX[e];
        double ny = arena.normalY[e];
        if (nx * mx + ny * my >= body.arcCosHalf[k]) {
          point(x, y, ax + body.arcRadius[k] * nx, ay + body.arcRadius[k] * ny);
        }
      }
    }
    for (int v = 0; v < arena.innerCornerX.length; v++) {
      obstaclePoint(
          body.field, margin, arena.innerCornerX[v] - x, arena.innerCornerY[v] - y, cos, sin);
    }
  }

  /** A point of the piece that must lie inside the sheet by the margin. */
  private void point(double x, double y, double armX, double armY) {
    double reach = arena.field.at(x + armX, y + armY);
    if (reach + margin > 0) {
      arena.field.at(x + armX, y + armY, out);
      side(reach + margin, out[0], out[1], armX, armY);
    }
  }

  private void defect(Body body, Body defect, double x, double y, double cos, double sin) {
    for (int k = 0; k < body.pointX.length; k++) {
      double armX = cos * body.pointX[k] - sin * body.pointY[k];
      double armY = sin * body.pointX[k] + cos * body.pointY[k];
      double reach = defect.field.at(x + armX, y + armY);
      if (reach < gap) {
        defect.field.at(x + armX, y + armY, out);
        side(gap - reach, -out[0], -out[1], armX, armY);
      }
    }
    for (int k = 0; k < defect.pointX.length; k++) {
      obstaclePoint(body.field, gap, defect.pointX[k] - x, defect.pointY[k] - y, cos, sin);
    }
    nearestOnDefect(body, defect, x, y, cos, sin);
  }

  /**
   * Points of the defect's arcs and of the piece's arcs on the lines of centres, and feet on edges.
   */
  private void nearestOnDefect(Body body, Body defect, double x, double y, double cos, double sin) {
    for (int h = 0; h < body.arcCentreX.length; h++) {
      double arcCentreX = cos * body.arcCentreX[h] - sin * body.arcCentreY[h];
      double arcCentreY = sin * body.arcCentreX[h] + cos * body.arcCentreY[h];
      for (int k = 0; k < defect.arcX.length; k++) {
        double ux = x + arcCentreX - defect.arcX[k];
        double uy = y + arcCentreY - defect.arcY[k];
        double apart = Math.sqrt(ux * ux + uy * uy);
        for (int sign = -1; sign <= 1 && apart > 0; sign += 2) {
          double r = sign * defect.arcRadius[k] / apart;
          double along = sign * (ux * defect.arcMiddleX[k] + uy * defect.arcMiddleY[k]) / apart;
          if (along >= defect.arcCosHalf[k]) {
            obstaclePoint(
                body.field,
                gap,
                defect.arcX[k] + r * ux - x,
                defect.arcY[k] + r * uy - y,
                cos,
                sin);
          }
        }
      }
      for (int k = 0; k < defect.edgeX.length; k++) {
        double foot =
            (x + arcCentreX - defect.edgeX[k]) * defect.edgeUnitX[k]
                + (y + arcCentreY - defect.edgeY[k]) * defect.edgeUnitY[k];
        if (foot > 0 && foot < defect.edgeLength[k]) {
          obstaclePoint(
              body.field,
              gap,
              defect.edgeX[k] + foot * defect.edgeUnitX[k] - x,
              defect.edgeY[k] + foot * defect.edgeUnitY[k] - y,
              cos,
              sin);
        }
      }
    }
    for (int h = 0; h < defect.arcCentreX.length; h++) {
      for (int k = 0; k < body.edgeX.length; k++) {
        double ex = cos * body.edgeX[k] - sin * body.edgeY[k];
        double ey = sin * body.edgeX[k] + cos * body.edgeY[k];
        double ux = cos * body.edgeUnitX[k] - sin * body.edgeUnitY[k];
        double uy = sin * body.edgeUnitX[k] + cos * body.edgeUnitY[k];
        double foot = (defect.arcCentreX[h] - x - ex) * ux + (defect.arcCentreY[h] - y - ey) * uy;
        if (foot > 0 && foot < body.edgeLength[k]) {
          double armX = ex + foot * ux;
          double armY = ey + foot * uy;
          double reach = defect.field.at(x + armX, y + armY);
          if (reach < gap) {
            defect.field.at(x + armX, y + armY, out);
            side(gap - reach, -out[0], -out[1], armX, armY);
          }
        }
      }
    }
  }

  /**
   * A fixed point, given relative to the piece's origin, that the piece must keep {@code need}
   * from.
   */
  private void obstaclePoint(
      DistanceField field, double need, double dx, double dy, double cos, double sin) {
    double localX = cos * dx + sin * dy;
    double localY = -sin * dx + cos * dy;
    double reach = field.at(localX, localY);
    if (reach < need) {
      field.at(localX, localY, out);
      double shortfall = need - reach;
      // Moving the piece against the field's outward normal takes its boundary away from the point.
      double nx = cos * out[0] - sin * out[1];
      double ny = sin * out[0] + cos * out[1];
      side(shortfall, nx, ny, dx, dy);
    }
  }
}
