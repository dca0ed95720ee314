package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.FreeShape;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Tells the long sides of a piece from the faces at which it is spliced to the next: the tool may
 * come down, and tabs may stay, on sides alone.
 *
 * <p>Sides are the arcs of a sector, the edges of a strip along its length, the arcs and the
 * longest edges of any other piece.
 */
final class Sides {

  /** An edge within this share of the longest is as good. */
  private static final double LONG = 0.9;

  /** A strip shorter than so many widths is no roadbed (common practice, no source). */
  private static final double BLOCK = 3;

  /**
   * Of the longest edge: no roadbed is as wide, against its length (common practice, no source).
   */
  private static final double NO_SPLICE = 0.6;

  private Sides() {}

  /**
   * Whether each edge is a side.
   *
   * @param edges of the piece's outside, maybe grown, where it lies on the sheet
   * @param least length of edge that is of use, in millimetres
   */
  static List<Boolean> of(Placement placement, List<Edge> edges, double least) {
    Shape blank = placement.piece().shape().blank();
    if (blank instanceof Strip) {
      double angle = placement.pose().rotation();
      Point along = Point.polar(1, angle);
      return edges.stream().map(e -> isLong(e, least) && isAlong(e, along)).toList();
    }
    boolean isSector = blank instanceof AnnularSector;
    double longest = edges.stream().mapToDouble(Edge::length).max().orElse(0);
    return edges.stream()
        .map(
            e -> isLong(e, least) && (e instanceof Arc || (!isSector && isLong(e, LONG * longest))))
        .toList();
  }

  /**
   * Whether each edge is the end of a block or a plate, at which no roadbed is spliced: of a strip
   * less than three times as long as wide; of any other piece without a track's course every
   * straight edge if it has no arcs, else those too long for a splice.
   */
  static List<Boolean> endsOfBlock(Placement placement, List<Edge> edges, double least) {
    Shape blank = placement.piece().shape().blank();
    if (blank instanceof FreeShape free) {
      return endsOfFree(free, edges, of(placement, edges, least), least);
    }
    boolean isBlock =
        blank instanceof Strip strip
            && strip.length().millimetres() < BLOCK * strip.width().millimetres();
    Point along = Point.polar(1, placement.pose().rotation());
    return edges.stream()
        .map(e -> isBlock && e instanceof Segment && isLong(e, least) && !isAlong(e, along))
        .toList();
  }

  private static List<Boolean> endsOfFree(
      FreeShape free, List<Edge> edges, List<Boolean> sides, double least) {
    double longest = edges.stream().mapToDouble(Edge::length).max().orElse(0);
    boolean isBracket = free.outline().outer().edges().stream().allMatch(Segment.class::isInstance);
    double enough = isBracket ? least : Math.max(least, NO_SPLICE * longest);
    return IntStream.range(0, edges.size())
        .mapToObj(
            i ->
                free.course().isEmpty()
                    && !sides.get(i)
                    && edges.get(i) instanceof Segment
                    && isLong(edges.get(i), enough))
        .toList();
  }

  private static boolean isAlong(Edge edge, Point direction) {
    return edge instanceof Segment && Math.abs(edge.startDirection().cross(direction)) < 1e-6;
  }

  private static boolean isLong(Edge edge, double least) {
    return edge.length() >= least;
  }
}
