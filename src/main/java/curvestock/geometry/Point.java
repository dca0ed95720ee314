package curvestock.geometry;

/** A point of the plane, in millimetres. */
public record Point(double x, double y) {

  public static final Point ORIGIN = new Point(0, 0);

  /** The point at a distance and direction from the origin. */
  public static Point polar(double radius, double angle) {
    return new Point(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
  }

  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** The z component of the cross product: above zero if {@code other} lies to the left. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  public double norm() {
    return Math.sqrt(x * x + y * y);
  }

  public double distance(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Direction from the origin, in (−π, π]. */
  public double angle() {
    return StrictMath.atan2(y, x);
  }
}
