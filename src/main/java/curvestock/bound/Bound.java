package curvestock.bound;

import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;

/**
 * No layout holds more than {@code count} of the piece on the sheet.
 *
 * @param proof how that is proven, in plain words
 */
public record Bound(int count, String proof) {

  /** The best of the bounds that are proven at once: by fit and by area. */
  public static Bound quick(Piece piece, SheetStock sheet, Cutting cutting) {
    if (Fit.isImpossible(piece, sheet, cutting)) {
      return new Bound(
          0, "by fit: the piece is larger than the usable sheet, whichever way it is turned");
    }
    return AreaBound.of(piece, sheet, cutting);
  }

  /** The lower of the two. */
  public Bound or(Bound other) {
    return other.count < count ? other : this;
  }
}
