package curvestock.geometry;

/** An axis-parallel rectangle, in millimetres: the bounding box of something. */
public record Box(double minX, double minY, double maxX, double maxY) {

  /**
   * @throws IllegalArgumentException if a maximum lies below its minimum
   */
  public Box {
    if (!(minX <= maxX && minY <= maxY)) {
      throw new IllegalArgumentException(
          "box must have min <= max, but was x "
              + minX
              + ".."
              + maxX
              + ", y "
              + minY
              + ".."
              + maxY);
    }
  }

  /** The box with two opposite corners at the points, whichever they are. */
  public static Box of(Point a, Point b) {
    return new Box(
        Math.min(a.x(), b.x()),
        Math.min(a.y(), b.y()),
        Math.max(a.x(), b.x()),
        Math.max(a.y(), b.y()));
  }

  /** The box carried along by {@code by}. */
  public Box moved(Point by) {
    return new Box(minX + by.x(), minY + by.y(), maxX + by.x(), maxY + by.y());
  }

  /** The least box that holds both. */
  public Box union(Box other) {
    return new Box(
        Math.min(minX, other.minX),
        Math.min(minY, other.minY),
        Math.max(maxX, other.maxX),
        Math.max(maxY, other.maxY));
  }

  /** Size along x, in mm; zero or more. */
  public double width() {
    return maxX - minX;
  }

  /** Size along y, in mm; zero or more. */
  public double height() {
    return maxY - minY;
  }

  /** Whether they share more than their edges. */
  public boolean overlaps(Box other) {
    return minX < other.maxX && other.minX < maxX && minY < other.maxY && other.minY < maxY;
  }

  /** Least distance between the two boxes, in mm; 0 where they touch or overlap. */
  public double distance(Box other) {
    double dx = Math.max(0, Math.max(other.minX - maxX, minX - other.maxX));
    double dy = Math.max(0, Math.max(other.minY - maxY, minY - other.maxY));
    return Math.hypot(dx, dy);
  }
}
