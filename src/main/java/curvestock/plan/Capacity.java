package curvestock.plan;

import curvestock.bound.Bound;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;

/**
 * How many of one piece a sheet of one kind holds.
 *
 * @param found most that a layout was found for; looked for only up to the number wanted
 * @param sought up to how many were looked for: the least of the bound and the number wanted
 * @param bound how many no layout can exceed
 * @param how how the layout was found
 * @param searched whether more were looked for with the whole budget, to no avail
 */
public record Capacity(
    Piece piece,
    SheetStock sheet,
    int found,
    int sought,
    Bound bound,
    String how,
    boolean searched) {

  /** Whether no layout at all can hold more. */
  public boolean isProvenBest() {
    return found == bound.count();
  }

  /** Whether the search ended because no more were wanted. */
  public boolean isEnough() {
    return found >= sought && found < bound.count();
  }
}
