package curvestock.bound;

import curvestock.geometry.Box;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.units.Angle;

/**
 * What all placements of a sector in a cell have in common, up to a shift.
 *
 * <p>A cell is all placements whose arc centre lies in a box and whose bisector lies in a range of
 * directions. Turning a sector about its own arc centre slides it along itself; so whatever the
 * direction within the range, the sector holds the <em>core</em>: the sector shortened at both ends
 * by half the range. And within the core lies every disc of radius {@code depth} about a point of
 * the <em>spine</em>: the part of the centre line that keeps that distance from the core's ends.
 *
 * <p>Millimetres and radians. Values are made once for each cell and read very often.
 */
final class ThickArc {

  /** Points along a spine; more of them make the proof of a clash sharper, never less right. */
  private static final int SAMPLES = 33;

  /** Far more than double precision loses near 5 m, far less than matters. */
  static final double ROUNDING = 1e-6;

  final double x;
  final double y;
  final double halfX;
  final double halfY;
  final double direction;
  final double halfRange;

  private final double radius;
  private final double depth;
  private final double half;
  private final double fromX;
  private final double fromY;
  private final double toX;
  private final double toY;
  private final double middleX;
  private final double middleY;
  private final double step;

  /** No point of the spine lies further from its middle. */
  private final double spread;

  private final double[] sampleX = new double[SAMPLES];
  private final double[] sampleY = new double[SAMPLES];

  /** The common part of the sector's placements in the cell, or null if it is empty. */
  static ThickArc of(
      AnnularSector sector, double x, double y, double halfX, double halfY, double[] directions) {
    double core = sector.sweep().radians() / 2 - directions[1];
    return core <= 0 ? null : new ThickArc(sector, x, y, halfX, halfY, directions, core);
  }

  private ThickArc(
      AnnularSector sector,
      double x,
      double y,
      double halfX,
      double halfY,
      double[] directions,
      double core) {
    this.x = x;
    this.y = y;
    this.halfX = halfX;
    this.halfY = halfY;
    direction = directions[0];
    halfRange = directions[1];
    radius = sector.radius().millimetres();
    double halfWidth = sector.width().millimetres() / 2;
    double trim = StrictMath.asin(Math.min(1, halfWidth / radius));
    half = Math.max(0, core - trim);
    depth = half > 0 ? halfWidth : radius * StrictMath.sin(Math.min(core, trim));
    for (int i = 0; i < SAMPLES; i++) {
      double angle = direction - half + 2 * half * i / (SAMPLES - 1);
      sampleX[i] = radius * StrictMath.cos(angle);
      sampleY[i] = radius * StrictMath.sin(angle);
    }
    fromX = sampleX[0] / radius;
    fromY = sampleY[0] / radius;
    toX = sampleX[SAMPLES - 1] / radius;
    toY = sampleY[SAMPLES - 1] / radius;
    middleX = StrictMath.cos(direction);
    middleY = StrictMath.sin(direction);
    step = radius * half / (SAMPLES - 1);
    spread = 2 * radius * StrictMath.sin(half / 2);
  }

  /** A point on the bisector round which the whole spine lies within {@link #spread}. */
  private double midX() {
    return x + radius * middleX;
  }

  private double midY() {
    return y + radius * middleY;
  }

  /** Box of the core, seen from the arc centre. */
  static Box coreBox(AnnularSector sector, double direction, double halfRange) {
    double core = sector.sweep().degrees() - 2 * StrictMath.toDegrees(halfRange);
    return new AnnularSector(sector.radius(), sector.width(), Angle.ofDegrees(core))
        .outline()
        .at(new Pose(0, 0, direction))
        .box();
  }

  /**
   * Whether every placement of this cell comes nearer than {@code gap} to every placement of the
   * other. False says nothing.
   */
  boolean clashesWith(ThickArc other, double gap) {
    double play =
        Math.sqrt(
                (halfX + other.halfX) * (halfX + other.halfX)
                    + (halfY + other.halfY) * (halfY + other.halfY))
            + ROUNDING;
    double reach = depth + other.depth + gap;
    double apart = square(midX() - other.midX(), midY() - other.midY());
    double nearby = spread + other.spread + reach + ROUNDING;
    if (apart > nearby * nearby) {
      return false;
    }
    return isReachedBy(other, reach, play) || other.isReachedBy(this, reach, play);
  }

  /**
   * Follows the other spine. Either one of its points is nearer to this spine than {@code reach},
   * whatever the shift up to {@code play}; or a stretch of it that surely stays between the rays of
   * this spine's ends leads from one side to the other, so that somewhere on the way it comes as
   * near.
   */
  private boolean isReachedBy(ThickArc other, double reach, double play) {
    double dx = other.x - x;
    double dy = other.y - y;
    double stay = play + other.step;
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < SAMPLES; i++) {
      double px = other.sampleX[i] + dx;
      double py = other.sampleY[i] + dy;
      if (isBetweenRays(px, py)) {
        double fromCentre = Math.sqrt(px * px + py * py);
        if (Math.abs(fromCentre - radius) + play < reach) {
          return true;
        }
        if (isFarFromRays(px, py, fromCentre, stay)) {
          least = Math.min(least, fromCentre);
          most = Math.max(most, fromCentre);
          if (least + play < radius + reach && most - play > radius - reach) {
            return true;
          }
          continue;
        }
      } else if (Math.min(
              square(px - radius * fromX, py - radius * fromY),
              square(px - radius * toX, py - radius * toY))
          < (reach - play) * Math.abs(reach - play)) {
        return true;
      }
      least = Double.POSITIVE_INFINITY;
      most = Double.NEGATIVE_INFINITY;
    }
    return false;
  }

  private static double square(double dx, double dy) {
    return dx * dx + dy * dy;
  }

  private boolean isBetweenRays(double px, double py) {
    boolean pastFrom = fromX * py - fromY * px >= 0;
    boolean beforeTo = toX * py - toY * px <= 0;
    if (2 * half > Math.PI) {
      return pastFrom || beforeTo;
    }
    // Where both rays are one, as for a sector about as wide as long, its opposite passes too.
    return pastFrom && beforeTo && middleX * px + middleY * py >= 0;
  }

  private boolean isFarFromRays(double px, double py, double fromCentre, double distance) {
    return farFromRay(fromX, fromY, px, py, fromCentre, distance)
        && farFromRay(toX, toY, px, py, fromCentre, distance);
  }

  private static boolean farFromRay(
      double rayX, double rayY, double px, double py, double fromCentre, double distance) {
    boolean ahead = rayX * px + rayY * py > 0;
    double away = ahead ? Math.abs(rayX * py - rayY * px) : fromCentre;
    return away >= distance;
  }
}
