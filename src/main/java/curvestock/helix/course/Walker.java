package curvestock.helix.course;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import java.util.List;

/** Lays edges one after another, each beginning where and in the direction the last ended. */
final class Walker {

  private final List<Edge> path;
  private Point point;
  private double heading;

  Walker(Waypoint from, List<Edge> path) {
    this.path = path;
    point = from.point();
    heading = from.heading();
  }

  Waypoint here() {
    return new Waypoint(point, heading);
  }

  void straight(double length) {
    Segment segment = new Segment(point, point.plus(Point.polar(length, heading)));
    path.add(segment);
    point = segment.end();
  }

  /** An arc of up to one turn, to the left if the sweep is above zero. */
  void arc(double radius, double sweep) {
    double side = Math.signum(sweep) * Math.PI / 2;
    Point centre = point.plus(Point.polar(radius, heading + side));
    Arc arc = new Arc(centre, radius, heading - side, sweep);
    path.add(arc);
    point = arc.end();
    heading += sweep;
  }

  /** Arcs of half a turn, and what is left. */
  void round(double radius, double sweep) {
    double left = Math.abs(sweep);
    while (left > 1e-12) {
      double step = Math.min(Math.PI, left);
      arc(radius, Math.signum(sweep) * step);
      left -= step;
    }
  }
}
