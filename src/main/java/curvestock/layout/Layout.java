package curvestock.layout;

import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
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

  /** What lies on the sheet, in the order of the placements. */
  public List<Piece> pieces() {
    return placements.stream().map(Placement::piece).toList();
  }

  /**
   * What is still wanted when the layout has been cut so often; never less than nothing.
   *
   * @param times at least 0
   */
  public List<Demand> rest(List<Demand> wanted, int times) {
    List<Demand> rest = new ArrayList<>();
    for (Demand demand : wanted) {
      int count = demand.count() - times * count(demand.piece());
      if (count > 0) {
        rest.add(new Demand(demand.piece(), count));
      }
    }
    return rest;
  }

  /** The least rectangle that holds all pieces, in the sheet's frame; nothing's is a point. */
  public Box extent() {
    return placements.stream()
        .map(placement -> placement.outline().box())
        .reduce(Box::union)
        .orElse(new Box(0, 0, 0, 0));
  }

  /** How far the pieces reach from the sheet's lower left: to the right, and upwards. */
  public Point reach() {
    double x = sheet.outline().box().minX();
    double y = sheet.outline().box().minY();
    for (Placement placement : placements) {
      Box box = placement.outline().box();
      x = Math.max(x, box.maxX());
      y = Math.max(y, box.maxY());
    }
    return new Point(x, y);
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
