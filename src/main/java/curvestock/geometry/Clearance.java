package curvestock.geometry;

import java.util.List;

/**
 * The true gap between two outlines of lines and circular arcs.
 *
 * <p>Exact up to rounding (about 1e-12 of the coordinates' size): arcs are never replaced by
 * chords. The gap is 0 where outlines touch, and below 0 where they share material; a piece that
 * lies in another's hole has a gap like any other. The sign is certain down to the rounding, the
 * size of a negative gap never too large: see {@link Reach}. Cost: edges of one × edges of the
 * other.
 */
public final class Clearance {

  private Clearance() {}

  /**
   * The least distance in millimetres between the material of {@code a} and the material of {@code
   * b}; where they share material a negative number, by how far the boundary of one reaches into
   * the other.
   */
  public static double between(Outline a, Outline b) {
    double least = betweenBoundaries(a.edges(), b.edges());
    if (least > Reach.MEETING && !holdsStart(a, b) && !holdsStart(b, a)) {
      return least;
    }
    double shared = Math.max(new Reach(a).into(b.edges()), new Reach(b).into(a.edges()));
    if (shared <= Reach.MEETING) {
      // Boundaries that do not pass through each other bound the same material, or none in common.
      Point inner = innerPoint(a);
      shared = b.contains(inner) ? Math.min(a.depth(inner), b.depth(inner)) : shared;
    }
    return shared > 0 ? -shared : least;
  }

  /**
   * How far in millimetres the outline stays inside a region: the least distance from its boundary
   * to the region's boundary, or, if it does not lie inside, a negative number: how far it reaches
   * out, or over one of the region's holes.
   */
  public static double within(Outline outline, Outline region) {
    double least = betweenBoundaries(outline.edges(), region.edges());
    List<Edge> holes = region.holes().stream().flatMap(hole -> hole.edges().stream()).toList();
    boolean overHole = region.holes().stream().anyMatch(hole -> outline.contains(start(hole)));
    if (least > Reach.MEETING && holdsStart(region, outline) && !overHole) {
      return least;
    }
    double out = new Reach(region).outOf(outline.edges());
    out = Math.max(out, new Reach(outline).into(holes));
    if (out <= Reach.MEETING) {
      // Nothing passes through: then all of it lies inside, or all of it fills a hole.
      Point inner = innerPoint(outline);
      out = region.contains(inner) ? out : Math.max(out, region.depth(inner));
    }
    return out > 0 ? -out : least;
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
  private static boolean holdsStart(Outline a, Outline b) {
    return a.contains(start(b.outer()));
  }

  private static Point start(Loop loop) {
    return loop.edges().get(0).start();
  }

  /** A point well inside the material: from an edge's middle as far inwards as halving finds. */
  private static Point innerPoint(Outline outline) {
    Edge edge = outline.outer().edges().get(0);
    Point middle = edge.middle();
    Point along = edge.part(0.5, 1).startDirection();
    Point inwards = new Point(-along.y(), along.x());
    double far = outline.box().width() + outline.box().height();
    Point best = middle;
    double deepest = 0;
    for (int i = 0; i < 40; i++) {
      far /= 2;
      Point point = middle.plus(inwards.times(far));
      if (outline.contains(point) && outline.depth(point) > deepest) {
        best = point;
        deepest = outline.depth(point);
      }
    }
    return best;
  }
}
