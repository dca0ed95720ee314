package curvestock.bound;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Segment;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.List;

/**
 * Areas for the area argument: pieces that keep a gap k from each other can each be widened by k/2
 * without sharing wood, and widened pieces lie in the usable sheet widened by k/2.
 *
 * <p>A convex shape of area A and perimeter P widened by d covers exactly A + P·d + π·d² (Steiner's
 * formula). The annular sector obeys the same formula as long as d is less than its inner radius
 * and its ends and corners do not meet. Where that is not sure, a smaller area is used, so that the
 * bound stays a bound.
 */
public final class InflatedArea {

  private InflatedArea() {}

  /**
   * At most the area that the piece takes up with half the spacing around it, in square
   * millimetres.
   */
  public static double ofPiece(Piece piece, Cutting cutting) {
    double d = cutting.spacing().millimetres() / 2;
    Outline outline = piece.shape().blank().outline();
    double widened = outline.perimeter() * d + Math.PI * d * d;
    return outline.area() + (d <= mostWidening(piece) ? widened : 0);
  }

  /** At least the area within which all widened pieces lie, in square millimetres. */
  public static double ofSheet(SheetStock sheet, Cutting cutting) {
    double d = cutting.spacing().millimetres() / 2;
    double m = cutting.margin().millimetres();
    if (sheet.isRectangle()) {
      double width = Math.max(0, sheet.length().millimetres() - 2 * m);
      double height = Math.max(0, sheet.width().millimetres() - 2 * m);
      return width * height + 2 * (width + height) * d + Math.PI * d * d;
    }
    double beyond = Math.max(0, d - m);
    return sheet.area() + sheet.outline().perimeter() * beyond + Math.PI * beyond * beyond;
  }

  /** The most by which the piece can be widened so that its area surely follows the formula. */
  static double mostWidening(Piece piece) {
    if (piece.shape().blank() instanceof AnnularSector sector) {
      return mostWidening(sector);
    }
    return isConvex(piece.shape().blank().outline()) ? Double.POSITIVE_INFINITY : 0;
  }

  /** Whether the piece's blank has no hollow, so that a sheet could be filled with it. */
  public static boolean isConvex(Piece piece) {
    return isConvex(piece.shape().blank().outline());
  }

  /** Until the inner corners meet, across the piece's own chord or across its opening. */
  private static double mostWidening(AnnularSector sector) {
    if (sector.isRing()) {
      return 0;
    }
    double sweep = sector.sweep().radians();
    double opening = sweep <= Math.PI ? sweep : 2 * Math.PI - sweep;
    return Math.max(0, sector.innerRadius().millimetres())
        * StrictMath.sin(opening / 2)
        * (1 - 1e-9);
  }

  private static boolean isConvex(Outline outline) {
    if (!outline.holes().isEmpty()) {
      return false;
    }
    List<Edge> edges = outline.outer().edges();
    for (int i = 0; i < edges.size(); i++) {
      if (edges.get(i) instanceof Arc arc && arc.sweep() < 0) {
        return false;
      }
      Point before = direction(edges.get(i), false);
      Point after = direction(edges.get((i + 1) % edges.size()), true);
      if (before.cross(after) < 0) {
        return false;
      }
    }
    return true;
  }

  private static Point direction(Edge edge, boolean atStart) {
    if (edge instanceof Arc arc) {
      double angle = arc.startAngle() + (atStart ? 0 : arc.sweep());
      double tangent = angle + Math.copySign(Math.PI / 2, arc.sweep());
      return Point.polar(1, tangent);
    }
    Segment segment = (Segment) edge;
    Point along = segment.end().minus(segment.start());
    return along.times(1 / along.norm());
  }
}
