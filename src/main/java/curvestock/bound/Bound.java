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

  /** Above this many pieces cells would have to be too fine to beat the area bound. */
  private static final int FEW = 12;

  private static final int CELLS = 250_000;
  private static final int ROUNDS = 300;

  /** The best of the bounds that are proven at once: by fit and by area. */
  public static Bound quick(Piece piece, SheetStock sheet, Cutting cutting) {
    if (Fit.isImpossible(piece, sheet, cutting)) {
      return new Bound(
          0, "by fit: the piece is larger than the usable sheet, whichever way it is turned");
    }
    return AreaBound.of(piece, sheet, cutting);
  }

  /**
   * As {@link #quick}, and for few large pieces the sharper {@link CoverBound}, which takes minutes
   * and some hundred megabytes.
   */
  public static Bound thorough(Piece piece, SheetStock sheet, Cutting cutting) {
    Bound quick = quick(piece, sheet, cutting);
    if (quick.count() < 2 || quick.count() > FEW) {
      return quick;
    }
    return CoverBound.of(piece, sheet, cutting, CELLS, ROUNDS).map(quick::or).orElse(quick);
  }

  /** The lower of the two. */
  public Bound or(Bound other) {
    return other.count < count ? other : this;
  }
}
