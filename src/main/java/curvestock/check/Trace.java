package curvestock.check;

import curvestock.geometry.Point;

/**
 * An edge as read from a file, in the sheet's frame: {@code at(0)} its start, {@code at(1)} its
 * end.
 */
sealed interface Trace {

  Point at(double t);

  double length();

  Trace reversed();

  /** This edge's share of ½∮(x dy − y dx). */
  double areaShare();

  /** How far the curve strays from its chord between two parameters, at most. */
  double stray(double from, double to);

  /** Direction of travel at the start, a unit vector. */
  Point startDirection();

  /** Distance to the nearest point of the edge. */
  double distanceTo(Point point);

  default Point endDirection() {
    return reversed().startDirection().times(-1);
  }

  default Point start() {
    return at(0);
  }

  default Point end() {
    return at(1);
  }

  /** A straight edge. */
  record Straight(Point from, Point to) implements Trace {

    @Override
    public Point at(double t) {
      if (t == 1) {
        return to;
      }
      return new Point(from.x() + t * (to.x() - from.x()), from.y() + t * (to.y() - from.y()));
    }

    @Override
    public double length() {
      return Math.hypot(to.x() - from.x(), to.y() - from.y());
    }

    @Override
    public Straight reversed() {
      return new Straight(to, from);
    }

    @Override
    public double areaShare() {
      return (from.x() * to.y() - from.y() * to.x()) / 2;
    }

    @Override
    public double stray(double from, double to) {
      return 0;
    }

    @Override
    public Point startDirection() {
      return to.minus(from).times(1 / length());
    }

    @Override
    public double distanceTo(Point point) {
      Point along = to.minus(from);
      double square = along.dot(along);
      double t = square == 0 ? 0 : point.minus(from).dot(along) / square;
      return point.distance(at(Math.max(0, Math.min(1, t))));
    }
  }

  /** A circular edge from angle {@code first} through the signed {@code sweep}. */
  record Round(Point centre, double radius, double first, double sweep) implements Trace {

    @Override
    public Point at(double t) {
      double angle = first + t * sweep;
      return new Point(
          centre.x() + radius * Math.cos(angle), centre.y() + radius * Math.sin(angle));
    }

    @Override
    public double length() {
      return radius * Math.abs(sweep);
    }

    @Override
    public Round reversed() {
      return new Round(centre, radius, first + sweep, -sweep);
    }

    @Override
    public double areaShare() {
      Point a = start();
      Point b = end();
      double aboutCentre = radius * radius * sweep;
      double ofCentre = centre.x() * (b.y() - a.y()) - centre.y() * (b.x() - a.x());
      return (aboutCentre + ofCentre) / 2;
    }

    /** The sagitta r(1 − cos(s/2)), written so that no digits are lost for small angles. */
    @Override
    public double stray(double from, double to) {
      double quarter = Math.sin(Math.abs(sweep) * (to - from) / 4);
      return 2 * radius * quarter * quarter;
    }

    @Override
    public Point startDirection() {
      return Point.polar(Math.signum(sweep), first + Math.PI / 2);
    }

    @Override
    public double distanceTo(Point point) {
      double ahead = (point.minus(centre).angle() - first) * Math.signum(sweep);
      ahead -= 2 * Math.PI * Math.floor(ahead / (2 * Math.PI));
      if (ahead <= Math.abs(sweep)) {
        return Math.abs(point.distance(centre) - radius);
      }
      return Math.min(point.distance(start()), point.distance(end()));
    }

    boolean isWholeCircle() {
      return Math.abs(sweep) >= 2 * Math.PI;
    }
  }
}
