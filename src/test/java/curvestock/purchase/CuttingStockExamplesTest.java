package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.layout.Layout;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of one-dimensional cutting: rolls become sheets of the same length, 100 mm wide,
 * and pieces go across the whole width, so that area is length.
 */
class CuttingStockExamplesTest {

  /**
   * The paper mill's example of the encyclopedia article 'Cutting stock problem' (Wikipedia): roll
   * 5600 mm, 13 widths; 73 rolls are needed at least and waste is 0.401 %. Values from memory; that
   * the total length is 72.7 rolls and the waste 0.401 % confirms them.
   */
  @Test
  void choose_paperMill_73RollsProvenCheapest() {
    int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
    int[] wanted = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
    Purchase purchase = choose(5600, widths, wanted);
    assertThat(purchase.sheets()).isEqualTo(73);
    assertThat(purchase.gap()).isEqualTo(Money.ZERO);
    double cut = purchase.trimmed().stream().mapToDouble(Layout::pieceArea).sum();
    assertThat(1 - cut / (73 * 5600 * 100.0)).isCloseTo(0.00401, within(0.000005));
  }

  /**
   * The example CUTSTOCK of the model library of GAMS (data read at miro.gams.com, gallery): roll
   * 100 in, orders 97 of 45, 610 of 36, 395 of 31, 211 of 14. The optimum, 453 rolls, is from
   * memory, and CP-SAT proves it here for all patterns.
   */
  @Test
  void choose_modelLibraryExample_453Rolls() {
    int[] widths = {450, 360, 310, 140};
    int[] wanted = {97, 610, 395, 211};
    Purchase purchase = choose(1000, widths, wanted);
    assertThat(new ExactPurchase(purchase.instance()).solve().orElseThrow().sheets())
        .isEqualTo(453);
    assertThat(purchase.sheets()).isEqualTo(453);
  }

  private static Purchase choose(int roll, int[] widths, int[] wanted) {
    SheetStock sheet =
        SheetStock.rectangle(
            "roll",
            Length.ofMillimetres(roll),
            Length.ofMillimetres(100),
            Shop.THICKNESS,
            new Money(100));
    List<Piece> pieces =
        IntStream.of(widths)
            .mapToObj(
                width ->
                    Piece.of(
                        "W" + width,
                        "width " + width,
                        new Strip(Length.ofMillimetres(width), Length.ofMillimetres(100))))
            .toList();
    List<Layout> layouts = new ArrayList<>();
    patterns(sheet, pieces, widths, roll, 0, new int[widths.length], layouts);
    List<Demand> demands = Shop.demands(pieces, wanted);
    List<Product> products = List.of(Product.of(sheet));
    return new CheapestPurchase(
            new CuttingStockInstance(demands, products, layouts),
            Shop.areaLimits(demands, products),
            SearchSettings.DEFAULT)
        .choose();
  }

  /** Every pattern to which nothing can be added. */
  private static void patterns(
      SheetStock sheet,
      List<Piece> pieces,
      int[] widths,
      int room,
      int i,
      int[] counts,
      List<Layout> to) {
    if (i == widths.length) {
      if (IntStream.of(widths).allMatch(width -> width > room)) {
        to.add(Shop.layout(sheet, pieces, counts));
      }
      return;
    }
    for (int n = room / widths[i]; n >= 0; n--) {
      counts[i] = n;
      patterns(sheet, pieces, widths, room - n * widths[i], i + 1, counts, to);
    }
    counts[i] = 0;
  }
}
