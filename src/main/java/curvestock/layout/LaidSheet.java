package curvestock.layout;

import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.List;

/** One sheet as somebody has laid it by hand. */
public record LaidSheet(SheetStock sheet, List<LaidPiece> pieces) {

  /**
   * A piece on it.
   *
   * @param number that is written on it; may be empty
   * @param pinned whether it shall stay there when others are moved
   */
  public record LaidPiece(Placement placement, String number, boolean pinned) {}

  public LaidSheet {
    pieces = List.copyOf(pieces);
  }

  public Layout layout(Cutting cutting) {
    return new Layout(sheet, cutting, pieces.stream().map(LaidPiece::placement).toList());
  }

  /** What is written on its pieces, in their order. */
  public List<String> numbers() {
    return pieces.stream().map(LaidPiece::number).toList();
  }
}
