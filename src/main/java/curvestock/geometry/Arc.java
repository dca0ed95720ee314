package curvestock.geometry;

import java.util.Objects;

/**
 * A circular edge: from {@code startAngle} as seen from the centre, through the signed {@code
 * sweep} (above zero counter-clockwise), up to a full circle.
 *
 * <p>A class rather than a record because its ends are asked for millions of times and cost four
 * sines and cosines.
 */
public final class Arc implements Edge {

  private static final double FULL = 2 * Math.PI;

  private final Point centre;
  private final double radius;
  private final double startAngle;
  private final double sweep;
  private final Point start;
  private final Point end;

  /**
   * @param radius in mm
   * @param startAngle direction of the start as seen from the centre, in radians
   * @param sweep signed, in radians: above zero counter-clockwise
   * @throws IllegalArgumentException if the radius is not above zero and finite, the start not
   *     finite, or the sweep zero or more than a full circle
   */
  public Arc(Point centre, double radius, double startAngle, double sweep) {
    if (!(radius > 0) || Double.isInfinite(radius)) {
      throw new IllegalArgumentException(
          "arc radius must be above zero, but was " + radius + " mm");
    }
    if (!(Math.abs(sweep) > 0 && Math.abs(sweep) <= FULL * (1 + 1e-12))
        || !Double.isFinite(startAngle)) {
      throw new IllegalArgumentException(
          "arc sweep must be above 0 and at most a full circle, but was "
              + Math.toDegrees(sweep)
              + "°");
    }
    this.centre = centre;
    this.radius = radius;
    this.startAngle = startAngle;
    this.sweep = sweep;
    start = pointAt(startAngle);
    end = pointAt(startAngle + sweep);
  }

  /** The arc centre: that of the circle it is part of, in mm. */
  public Point centre() {
    return centre;
  }

  /** Millimetres, above zero and finite. */
  public double radius() {
    return radius;
  }

  /**
   * Direction of the start as seen from the centre, in radians; finite, but not reduced to one
   * turn.
   */
  public double startAngle() {
    return startAngle;
  }

  /** Radians, signed: above zero counter-clockwise. */
  public double sweep() {
    return sweep;
  }

  @Override
  public Point start() {
    return start;
  }

  @Override
  public Point end() {
    return end;
  }

  /** The point of the whole circle in the given direction (radians) from the centre. */
  public Point pointAt(double angle) {
    return centre.plus(Point.polar(radius, angle));
  }

  @Override
  public Point middle() {
    return pointAt(startAngle + sweep / 2);
  }

  @Override
  public double length() {
    return radius * Math.abs(sweep);
  }

  /** Whether the direction (radians, from the centre) lies within the sweep, ends included. */
  public boolean spans(double direction) {
    double first = sweep > 0 ? startAngle : startAngle + sweep;
    double offset = direction - first;
    offset -= FULL * Math.floor(offset / FULL);
    return offset <= Math.abs(sweep);
  }

  @Override
  public Arc at(Pose pose) {
    return new Arc(pose.apply(centre), radius, startAngle + pose.rotation(), sweep);
  }

  @Override
  public Arc reversed() {
    return new Arc(centre, radius, startAngle + sweep, -sweep);
  }

  @Override
  public Arc part(double from, double to) {
    return new Arc(centre, radius, startAngle + sweep * from, sweep * (to - from));
  }

  @Override
  public Point startDirection() {
    return Point.polar(Math.signum(sweep), startAngle + Math.PI / 2);
  }

  @Override
  public Box box() {
    Box box = Box.of(start(), end());
    for (int quarter = 0; quarter < 4; quarter++) {
      if (spans(quarter * Math.PI / 2)) {
        // Right, top, left, bottom: known without cosines, and exactly.
        double x = centre.x() + (quarter == 0 ? radius : quarter == 2 ? -radius : 0);
        double y = centre.y() + (quarter == 1 ? radius : quarter == 3 ? -radius : 0);
        box = box.union(new Box(x, y, x, y));
      }
    }
    return box;
  }

  @Override
  public double distanceTo(Point point) {
    Point offset = point.minus(centre);
    if (offset.x() == 0 && offset.y() == 0) {
      return radius;
    }
    if (isBetweenEnds(offset)) {
      return Math.abs(offset.norm() - radius);
    }
    return Math.min(point.distance(start), point.distance(end));
  }

  /** As {@link #spans}, without arc tangents; on the rays of the ends either answer may come. */
  private boolean isBetweenEnds(Point offset) {
    double size = Math.abs(sweep);
    double turn = Math.signum(sweep);
    boolean pastStart = turn * start.minus(centre).cross(offset) >= 0;
    boolean beforeEnd = turn * offset.cross(end.minus(centre)) >= 0;
    return size >= FULL || (size <= Math.PI ? pastStart && beforeEnd : pastStart || beforeEnd);
  }

  @Override
  public double areaTerm() {
    // ½∮(x dy − y dx) over the arc = the part seen from its centre + ½ centre × chord.
    return (radius * radius * sweep + centre.cross(end().minus(start()))) / 2;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Arc arc
        && centre.equals(arc.centre)
        && Double.compare(radius, arc.radius) == 0
        && Double.compare(startAngle, arc.startAngle) == 0
        && Double.compare(sweep, arc.sweep) == 0;
  }

  @Override
  public int hashCode() {
    return Objects.hash(centre, radius, startAngle, sweep);
  }

  @Override
  public String toString() {
    return "Arc[centre=%s, radius=%s, startAngle=%s, sweep=%s]"
        .formatted(centre, radius, startAngle, sweep);
  }
}
