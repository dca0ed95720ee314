package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The exact boundary of a flat shape: one outer loop (counter-clockwise) and any number of holes
 * (clockwise) inside it.
 */
public record Outline(Loop outer, List<Loop> holes) {

  /**
   * @throws IllegalArgumentException if the outer loop is not counter-clockwise or a hole not
   *     clockwise
   */
  public Outline {
    holes = List.copyOf(holes);
    if (!(outer.signedArea() > 0)) {
      throw new IllegalArgumentException(
          "the outer loop must run counter-clockwise, but its area was "
              + outer.signedArea()
              + " mm²");
    }
    for (Loop hole : holes) {
      if (!(hole.signedArea() < 0)) {
        throw new IllegalArgumentException(
            "a hole must run clockwise, but its area was " + hole.signedArea() + " mm²");
      }
    }
  }

  /**
   * An outline without holes.
   *
   * @throws IllegalArgumentException if the loop does not run counter-clockwise
   */
  public static Outline of(Loop outer) {
    return new Outline(outer, List.of());
  }

  /**
   * A rectangle from (0, 0) to (width, height), in mm.
   *
   * @throws IllegalArgumentException if it has no area
   */
  public static Outline rectangle(double width, double height) {
    return of(
        Loop.polygon(
            List.of(
                new Point(0, 0),
                new Point(width, 0),
                new Point(width, height),
                new Point(0, height))));
  }

  /** The outline after the shape was laid at the pose. */
  public Outline at(Pose pose) {
    return new Outline(outer.at(pose), holes.stream().map(hole -> hole.at(pose)).toList());
  }

  /** The outer loop first, then the holes in their order. */
  public Stream<Loop> loops() {
    return Stream.concat(Stream.of(outer), holes.stream());
  }

  /** All edges: the outer loop's first, then each hole's. */
  public List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    loops().forEach(loop -> edges.addAll(loop.edges()));
    return edges;
  }

  /** Area of the material in mm²: the holes' is taken off; exact for arcs. */
  public double area() {
    return loops().mapToDouble(Loop::signedArea).sum();
  }

  /** Length of all loops, which is the length of cut, in mm; exact for arcs. */
  public double perimeter() {
    return loops().mapToDouble(Loop::perimeter).sum();
  }

  /** The least axis-parallel rectangle around the outer loop; exact for arcs. */
  public Box box() {
    return outer.box();
  }

  /** Whether the point lies in the material; either answer may come for a point on the boundary. */
  public boolean contains(Point point) {
    return outer.encloses(point) && holes.stream().noneMatch(hole -> hole.encloses(point));
  }

  /**
   * The point of a grid that lies deepest in the material, where a text finds most room; of nearly
   * equal ones the middle.
   *
   * @param steps of the grid, each way
   */
  public Point roomiest(int steps) {
    Box box = box();
    Point best = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    FlatOutline flat = new FlatOutline(this);
    double deepest = flat.contains(best.x(), best.y()) ? 1.02 * flat.depth(best.x(), best.y()) : 0;
    for (int i = 1; i < steps; i++) {
      for (int j = 1; j < steps; j++) {
        double x = box.minX() + box.width() * i / steps;
        double y = box.minY() + box.height() * j / steps;
        double depth = flat.contains(x, y) ? flat.depth(x, y) : 0;
        if (depth > deepest) {
          best = new Point(x, y);
          deepest = depth;
        }
      }
    }
    return best;
  }

  /** Distance in mm to the nearest edge, for a point on either side of it. */
  public double depth(Point point) {
    return new FlatOutline(this).depth(point.x(), point.y());
  }
}
