package curvestock.bench;

import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.List;

/**
 * One question put to the engine and to its rivals.
 *
 * @param wanted the kinds with the most of each; a single kind has no limit worth naming
 */
record BenchCase(String name, SheetStock sheet, Cutting cutting, List<Demand> wanted) {

  BenchCase {
    wanted = List.copyOf(wanted);
  }

  boolean isMixed() {
    return wanted.size() > 1;
  }

  /** The only piece, or the first kind. */
  Piece piece() {
    return wanted.get(0).piece();
  }

  /** Least gap between two pieces, in millimetres. */
  double gap() {
    return cutting.spacing().millimetres();
  }

  /** Length of the sheet within its margins, in millimetres. */
  double usableLength() {
    return sheet.length().millimetres() - 2 * cutting.margin().millimetres();
  }

  /** Width of the sheet within its margins, in millimetres. */
  double usableWidth() {
    return sheet.width().millimetres() - 2 * cutting.margin().millimetres();
  }
}
