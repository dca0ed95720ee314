package curvestock.bound;

import curvestock.packing.Control;
import curvestock.piece.AnnularSector;
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

  /** Beyond this many pieces the cases are too many. */
  private static final int FEW_CASES = 5;

  /** Beyond this many pieces the edges matter less than the rounding of the proof. */
  private static final int MANY = 60;

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
   * As {@link #quick}, and for few large pieces the sharper {@link FractionalCoverBound}, which
   * takes minutes and some hundred megabytes.
   */
  public static Bound thorough(Piece piece, SheetStock sheet, Cutting cutting) {
    Bound quick = quick(piece, sheet, cutting);
    if (quick.count() < 2 || quick.count() > FEW) {
      return quick;
    }
    return FractionalCoverBound.of(piece, sheet, cutting, CELLS, ROUNDS)
        .map(quick::or)
        .orElse(quick);
  }

  /**
   * A sharper bound by edge waste, for sectors: the same as this bound if it is not lower.
   *
   * @param closely looks closer, for some seconds; else for some tenths of a second
   */
  public Bound byEdges(Piece piece, SheetStock sheet, Cutting cutting, boolean closely) {
    if (count < 2
        || count > MANY
        || !sheet.isRectangle()
        || !(piece.shape().blank() instanceof AnnularSector sector)) {
      return this;
    }
    EdgeWeightBound.Grain grain =
        closely ? EdgeWeightBound.Grain.FINE : EdgeWeightBound.Grain.COARSE;
    double most =
        KnownLimits.of(
            new KnownLimits.Asked(sector, sheet.length(), sheet.width(), cutting, grain, count),
            () -> new EdgeWeightBound(sector, sheet, cutting, grain).most(count));
    return most >= count
        ? this
        : new Bound(
            (int) Math.floor(most),
            "by edge waste: as by area, but wood along the edges and in the corners counts less,"
                + " because curved pieces cannot fill it");
  }

  /**
   * A sharper bound by cases, for few large sectors of which {@code found} are known to fit: one
   * more, or two more, may be proven impossible. The same as this bound if neither is.
   *
   * @param mostTests budget: how many pairs of cells to test for each count; a million takes about
   *     a second
   * @param control stops the proof, as it stops a search: then this bound is returned
   */
  public Bound byCases(
      Piece piece, SheetStock sheet, Cutting cutting, int found, long mostTests, Control control) {
    if (found < 1 || found > FEW_CASES) {
      return this;
    }
    for (int more = 1; more <= 2 && found + more <= count; more++) {
      if (CaseBound.isImpossible(piece, sheet, cutting, found + more, mostTests, control)) {
        return new Bound(
            found + more - 1,
            "by cases: all ways to place "
                + (found + more)
                + " were split into ever smaller cells, and in every cell two of them overlap");
      }
    }
    return this;
  }

  /** The lower of the two. */
  public Bound or(Bound other) {
    return other.count < count ? other : this;
  }
}
