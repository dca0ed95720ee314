package curvestock.geometry;

import java.util.ArrayList;
import java.util.List;

/** A closed chain of edges, each starting where the one before ends. */
public record Loop(List<Edge> edges) {

  /** Edges meet within this much; a hundred times the rounding of coordinates near 10 m. */
  private static final double JOINT_TOLERANCE = 1e-9;

  /**
   * @throws IllegalArgumentException if there is no edge, or if the edges do not close up
   */
  public Loop {
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("a loop must have at least one edge");
    }
    for (int i = 0; i < edges.size(); i++) {
      Point end = edges.get(i).end();
      Point next = edges.get((i + 1) % edges.size()).start();
      double slack = JOINT_TOLERANCE * (1 + Math.abs(end.x()) + Math.abs(end.y()));
      if (!(end.distance(next) <= slack)) {
        throw new IllegalArgumentException(
            "edge "
                + i
                + " must end where the next begins, but the gap is "
                + end.distance(next)
                + " mm");
      }
    }
  }

  /**
   * A loop of straight edges through the corners, closed at the end.
   *
   * @throws IllegalArgumentException if there is no corner
   */
  public static Loop polygon(List<Point> corners) {
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      edges.add(new Segment(corners.get(i), corners.get((i + 1) % corners.size())));
    }
    return new Loop(edges);
  }

  /**
   * A whole circle, counter-clockwise, as two arcs.
   *
   * @param radius in mm
   * @throws IllegalArgumentException if the radius is not above zero and finite
   */
  public static Loop circle(Point centre, double radius) {
    return new Loop(
        List.of(new Arc(centre, radius, 0, Math.PI), new Arc(centre, radius, Math.PI, Math.PI)));
  }

  /** The loop after the shape it belongs to was laid at the pose. */
  public Loop at(Pose pose) {
    return new Loop(edges.stream().map(edge -> edge.at(pose)).toList());
  }

  /** The same points, run the other way round. */
  public Loop reversed() {
    List<Edge> reversed = new ArrayList<>();
    for (int i = edges.size() - 1; i >= 0; i--) {
      reversed.add(edges.get(i).reversed());
    }
    return new Loop(reversed);
  }

  /** Enclosed area in mm²: above zero if the loop runs counter-clockwise; exact for arcs. */
  public double signedArea() {
    return edges.stream().mapToDouble(Edge::areaTerm).sum();
  }

  /** Length of all edges, in mm; exact for arcs. */
  public double perimeter() {
    return edges.stream().mapToDouble(Edge::length).sum();
  }

  /** The least axis-parallel rectangle around the loop; exact for arcs. */
  public Box box() {
    return edges.stream().map(Edge::box).reduce(Box::union).orElseThrow();
  }

  /**
   * Whether the point lies inside, by the parity of crossings to its right. Exact but for points on
   * the boundary itself, where either answer may come.
   */
  public boolean encloses(Point point) {
    boolean odd = false;
    for (Run run : Run.of(this)) {
      odd ^= run.crosses(point.x(), point.y());
    }
    return odd;
  }
}
