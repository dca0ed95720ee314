package curvestock.geometry;

/**
 * Where a shape lies: turned by {@code rotation} radians counter-clockwise about its own origin,
 * then moved so that the origin comes to (x, y), in millimetres.
 */
public record Pose(double x, double y, double rotation) {

  /** Leaves a shape where its own frame has it. */
  public static final Pose HOME = new Pose(0, 0, 0);

  /**
   * @throws IllegalArgumentException if a value is not finite
   */
  public Pose {
    if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(rotation)) {
      throw new IllegalArgumentException(
          "pose must be finite, but was (" + x + ", " + y + ", " + rotation + ")");
    }
  }

  /** A point of the shape's own frame, brought to where the shape lies. */
  public Point apply(Point local) {
    double cos = StrictMath.cos(rotation);
    double sin = StrictMath.sin(rotation);
    return new Point(x + cos * local.x() - sin * local.y(), y + sin * local.x() + cos * local.y());
  }

  /** The pose reached by taking {@code this} first and {@code next} after it. */
  public Pose then(Pose next) {
    Point origin = next.apply(new Point(x, y));
    return new Pose(origin.x(), origin.y(), rotation + next.rotation);
  }

  /** The motion back: {@code then(inverse())} is {@link #HOME} up to rounding. */
  public Pose inverse() {
    Point origin = new Pose(0, 0, -rotation).apply(new Point(-x, -y));
    return new Pose(origin.x(), origin.y(), -rotation);
  }

  /**
   * The same rotation, so many millimetres further along x and y.
   *
   * @throws IllegalArgumentException if the new place is not finite
   */
  public Pose movedBy(double dx, double dy) {
    return new Pose(x + dx, y + dy, rotation);
  }
}
