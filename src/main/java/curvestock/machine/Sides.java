package curvestock.machine;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.layout.Placement;
import curvestock.piece.AnnularSector;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import java.util.List;

/**
 * Tells the long sides of a piece from the faces at which it is spliced to the next: the tool may
 * come down, and tabs may stay, on sides alone.
 *
 * <p>Sides are the arcs of a sector, the edges of a strip along its length, the arcs of any other
 * piece, or its longest edges if it has no arc that is long enough.
 */
final class Sides {

  /** An edge within this share of the longest is as good. */
  private static final double LONG = 0.9;

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
    List<Boolean> arcs = edges.stream().map(e -> e instanceof Arc && isLong(e, least)).toList();
    if (blank instanceof AnnularSector || arcs.contains(true)) {
      return arcs;
    }
    double longest = edges.stream().mapToDouble(Edge::length).max().orElse(0);
    return edges.stream().map(e -> isLong(e, Math.max(least, LONG * longest))).toList();
  }

  private static boolean isAlong(Edge edge, Point direction) {
    return edge instanceof Segment && Math.abs(edge.startDirection().cross(direction)) < 1e-6;
  }

  private static boolean isLong(Edge edge, double least) {
    return edge.length() >= least;
  }
}
