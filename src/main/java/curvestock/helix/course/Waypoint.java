package curvestock.helix.course;

import curvestock.geometry.Point;

/**
 * A place on the line in plan.
 *
 * @param point where it is, in millimetres from the ring's centre
 * @param heading direction of climb, in radians counter-clockwise from +x
 */
public record Waypoint(Point point, double heading) {

  /** The point so far to the left of the line. */
  public Point toLeft(double distance) {
    return point.plus(Point.polar(distance, heading + Math.PI / 2));
  }
}
