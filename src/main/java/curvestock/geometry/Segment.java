package curvestock.geometry;

/** A straight edge. */
public record Segment(Point start, Point end) implements Edge {

  /** The straight line that joins the end of one edge to the start of the next. */
  public static Segment joining(Edge before, Edge after) {
    Point from = before.end();
    Point to = after.start();
    return new Segment(from, to);
  }

  @Override
  public double length() {
    return start.distance(end);
  }

  @Override
  public Segment at(Pose pose) {
    return new Segment(pose.apply(start), pose.apply(end));
  }

  @Override
  public Segment reversed() {
    return new Segment(end, start);
  }

  @Override
  public Segment part(double from, double to) {
    return new Segment(at(from), at(to));
  }

  private Point at(double share) {
    if (share == 1) {
      return end;
    }
    return start.plus(end.minus(start).times(share));
  }

  @Override
  public Point startDirection() {
    return end.minus(start).times(1 / length());
  }

  @Override
  public Box box() {
    return Box.of(start, end);
  }

  @Override
  public double distanceTo(Point point) {
    return point.distance(nearest(point));
  }

  /** The point of the segment that is nearest to {@code point}. */
  public Point nearest(Point point) {
    Point along = end.minus(start);
    double lengthSquared = along.dot(along);
    if (lengthSquared == 0) {
      return start;
    }
    double t = Math.max(0, Math.min(1, point.minus(start).dot(along) / lengthSquared));
    return start.plus(along.times(t));
  }

  @Override
  public double areaTerm() {
    return start.cross(end) / 2;
  }
}
