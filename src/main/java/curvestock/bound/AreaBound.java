package curvestock.bound;

import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;

/**
 * The bound by area: the usable wood over the wood that one piece takes up with half its gap around
 * it.
 */
final class AreaBound {

  /** Far more than the rounding of two areas; it can only raise the bound. */
  private static final double ROUNDING = 1e-9;

  private AreaBound() {}

  static Bound of(Piece piece, SheetStock sheet, Cutting cutting) {
    // What keeps the spacing also keeps any less of it: so that a piece that cannot be widened by
    // all of it does not gain by a sheet that is.
    double sure = 2 * InflatedArea.mostWidening(piece);
    Length spacing = Length.ofMillimetres(Math.min(sure, cutting.spacing().millimetres()));
    Cutting less = Cutting.leaving(spacing, Length.ZERO, cutting.margin());
    double share = InflatedArea.ofSheet(sheet, less) / area(piece, less);
    int count = (int) Math.min(Integer.MAX_VALUE, Math.floor(share * (1 + ROUNDING)));
    return new Bound(
        count,
        "by area: the pieces, with half the gap around each, must fit in the area of the usable sheet");
  }

  /** A ring cannot lie in the hole of another of its own size, so it takes up a whole disc. */
  private static double area(Piece piece, Cutting cutting) {
    if (piece.shape().blank() instanceof AnnularSector sector && sector.isRing()) {
      double radius = sector.outerRadius().millimetres() + cutting.spacing().millimetres() / 2;
      return Math.PI * radius * radius;
    }
    return InflatedArea.ofPiece(piece, cutting);
  }
}
