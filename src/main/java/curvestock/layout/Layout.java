package curvestock.layout;

import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.List;

/** What is cut from one sheet, and where. */
public record Layout(SheetStock sheet, Cutting cutting, List<Placement> placements) {

  public Layout {
    placements = List.copyOf(placements);
  }

  /** How many of the given piece lie on the sheet. */
  public int count(Piece piece) {
    return (int) placements.stream().filter(placement -> placement.piece().equals(piece)).count();
  }

  /** Area of the pieces in square millimetres. */
  public double pieceArea() {
    return placements.stream().mapToDouble(placement -> placement.piece().shape().area()).sum();
  }

  /** Share of the sheet's area that becomes pieces, 0 to 1. */
  public double areaYield() {
    return pieceArea() / sheet.area();
  }
}
