package curvestock.geometry;

import java.util.List;

/**
 * The true gap between two outlines of lines and circular arcs.
 *
 * <p>Exact up to rounding (about 1e-12 of the coordinates' size): arcs are never replaced by
 * chords. The gap is 0 where the outlines touch, cross or lie in each other's material; a piece
 * that lies in another's hole has a gap like any other. Cost: edges of one × edges of the other.
 */
public final class Clearance {

  private Clearance() {}

  /**
   * The least distance between the material of {@code a} and the material of {@code b}, at least 0.
   */
  public static double between(Outline a, Outline b) {
    double least = betweenBoundaries(a.edges(), b.edges());
    if (least > 0 && (sharesMaterial(a, b) || sharesMaterial(b, a))) {
      return 0;
    }
    return least;
  }

  /**
   * How far the outline stays inside a region: the least distance from its boundary to the region's
   * boundary, or a negative number of that size if it does not lie inside.
   */
  public static double within(Outline outline, Outline region) {
    double least = betweenBoundaries(outline.edges(), region.edges());
    boolean inside = region.contains(outline.outer().edges().get(0).start());
    boolean swallowsHole =
        region.holes().stream().anyMatch(hole -> outline.contains(hole.edges().get(0).start()));
    return inside && !swallowsHole ? least : -least;
  }

  private static double betweenBoundaries(List<Edge> first, List<Edge> second) {
    double least = Double.POSITIVE_INFINITY;
    List<Box> boxes = second.stream().map(Edge::box).toList();
    for (Edge a : first) {
      Box box = a.box();
      for (int k = 0; k < boxes.size(); k++) {
        if (box.distance(boxes.get(k)) < least) {
          least = Math.min(least, EdgeDistance.between(a, second.get(k)));
        }
      }
    }
    return least;
  }

  /** With boundaries apart, material is shared only if a whole loop of one lies in the other. */
  private static boolean sharesMaterial(Outline a, Outline b) {
    return a.contains(b.outer().edges().get(0).start());
  }
}
