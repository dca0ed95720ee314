package curvestock.geometry;

/** A point of the plane, in millimetres. */
public record Point(double x, double y) {

  /** The point (0, 0). */
  public static final Point ORIGIN = new Point(0, 0);

  /**
   * The point at a distance (mm) and direction (radians) from the origin, the same on every
   * machine.
   */
  public static Point polar(double radius, double angle) {
    return new Point(radius * StrictMath.cos(angle), radius * StrictMath.sin(angle));
  }

  /** The sum of the two as vectors. */
  public Point plus(Point other) {
    return new Point(x + other.x, y + other.y);
  }

  /** The vector that leads from {@code other} to this point. */
  public Point minus(Point other) {
    return new Point(x - other.x, y - other.y);
  }

  /** This vector, stretched by the factor. */
  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  /** The scalar product of the two as vectors, in mm². */
  public double dot(Point other) {
    return x * other.x + y * other.y;
  }

  /** The z component of the cross product, in mm²: above zero if {@code other} lies to the left. */
  public double cross(Point other) {
    return x * other.y - y * other.x;
  }

  /**
   * Distance from the origin, in mm. By the root of the squares, so not for coordinates whose
   * squares overflow.
   */
  public double norm() {
    return Math.sqrt(x * x + y * y);
  }

  /**
   * Distance between the two points, in mm; as {@link #norm}, not for coordinates whose squares
   * overflow.
   */
  public double distance(Point other) {
    double dx = x - other.x;
    double dy = y - other.y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  /** Direction from the origin in radians, in (−π, π]. */
  public double angle() {
    return StrictMath.atan2(y, x);
  }
}
