package curvestock.purchase;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * Invented offers for tests. Layouts here count pieces only: where a piece lies does not matter to
 * the purchase, so all lie at the origin.
 */
final class Shop {

  static final Length THICKNESS = Length.ofMillimetres(12);
  private static final Cutting NO_GAPS =
      Cutting.leaving(Length.ofMillimetres(0), Length.ofMillimetres(0), Length.ofMillimetres(0));

  private Shop() {}

  /** A piece of the given area, 10 mm wide. */
  static Piece piece(String id, double squareMillimetres) {
    return Piece.of(
        id,
        "strip " + id,
        new Strip(Length.ofMillimetres(squareMillimetres / 10), Length.ofMillimetres(10)));
  }

  static SheetStock sheet(String name, double squareMillimetres, long price) {
    return SheetStock.rectangle(
        name,
        Length.ofMillimetres(squareMillimetres / 100),
        Length.ofMillimetres(100),
        THICKNESS,
        new Money(price));
  }

  static SheetStock limited(SheetStock sheet, int available) {
    return new SheetStock(
        sheet.name(),
        sheet.outline(),
        sheet.defects(),
        sheet.thickness(),
        sheet.nominalThickness(),
        sheet.price(),
        OptionalInt.of(available),
        sheet.grain());
  }

  /** A layout that holds so many of each of the pieces. */
  static Layout layout(SheetStock sheet, List<Piece> pieces, int... counts) {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      for (int n = 0; n < counts[i]; n++) {
        placements.add(new Placement(pieces.get(i), new Pose(0, 0, 0)));
      }
    }
    return new Layout(sheet, NO_GAPS, placements);
  }

  static List<Demand> demands(List<Piece> pieces, int... counts) {
    List<Demand> demands = new ArrayList<>();
    for (int i = 0; i < counts.length; i++) {
      demands.add(new Demand(pieces.get(i), counts[i]));
    }
    return demands;
  }

  /** Limits by the areas of sheet and piece alone, without gaps: true of any layout. */
  static PackingLimits areaLimits(List<Demand> demands, List<Product> products) {
    List<SheetLimit> limits = new ArrayList<>();
    List<Double> areas = demands.stream().map(demand -> demand.piece().shape().area()).toList();
    List<Panel> panels =
        products.stream()
            .flatMap(product -> product.breakdowns().stream())
            .flatMap(breakdown -> breakdown.panels().stream())
            .toList();
    for (Panel panel : panels) {
      double capacity = panel.stock().area();
      List<Integer> counts =
          areas.stream().map(area -> (int) Math.floor(capacity * (1 + 1e-9) / area)).toList();
      limits.add(new SheetLimit(capacity, areas, counts, "area"));
    }
    return new PackingLimits(limits);
  }
}
