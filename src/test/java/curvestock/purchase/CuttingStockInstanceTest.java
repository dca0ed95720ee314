package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class CuttingStockInstanceTest {

  private static final List<Piece> AB = List.of(Shop.piece("A", 1000), Shop.piece("B", 500));
  private static final SheetStock SHEET = Shop.sheet("ply", 10_000, 5000);
  private static final List<Product> ONE = List.of(Product.of(SHEET));

  @Test
  void new_pieceInNoLayout_saysWhich() {
    assertThatThrownBy(
            () ->
                new CuttingStockInstance(
                    Shop.demands(AB, 3, 3), ONE, List.of(Shop.layout(SHEET, AB, 5, 0))))
        .hasMessage("no layout holds piece B");
  }

  @Test
  void new_pieceOnlyOnSoldOutSheet_saysWhich() {
    SheetStock soldOut = Shop.limited(Shop.sheet("large", 20_000, 5000), 0);
    assertThatThrownBy(
            () ->
                new CuttingStockInstance(
                    Shop.demands(AB, 3, 3),
                    List.of(Product.of(SHEET), Product.of(soldOut)),
                    List.of(Shop.layout(SHEET, AB, 5, 0), Shop.layout(soldOut, AB, 0, 5))))
        .hasMessage("no layout holds piece B");
  }

  @Test
  void new_layoutOnUnknownSheet_saysWhich() {
    assertThatThrownBy(
            () ->
                new CuttingStockInstance(
                    Shop.demands(AB, 3, 3),
                    ONE,
                    List.of(Shop.layout(Shop.sheet("other", 10_000, 1), AB, 5, 5))))
        .hasMessageContaining("lies on other");
  }

  @Test
  void new_layoutWithUnwantedPiece_saysWhich() {
    assertThatThrownBy(
            () ->
                new CuttingStockInstance(
                    Shop.demands(AB, 3), ONE, List.of(Shop.layout(SHEET, AB, 5, 5))))
        .hasMessage("layouts must hold wanted pieces only, but one holds piece B");
  }

  @Test
  void new_pieceOnSheetOfAnotherThickness_isRefused() {
    List<Piece> thin = List.of(AB.get(0).ofThickness(Length.ofMillimetres(6)));
    assertThatThrownBy(
            () ->
                new CuttingStockInstance(
                    Shop.demands(thin, 3), ONE, List.of(Shop.layout(SHEET, thin, 5))))
        .hasMessage(
            "piece A must be cut from a sheet of its thickness, but a layout has it on ply");
  }

  @Test
  void new_sameNameTwice_isRefused() {
    assertThatThrownBy(
            () ->
                new CuttingStockInstance(
                    Shop.demands(AB, 3, 3),
                    List.of(Product.of(SHEET), Product.of(SHEET)),
                    List.of(Shop.layout(SHEET, AB, 5, 5))))
        .hasMessage("each sheet must be given once, but ply occurs twice");
  }

  @Test
  void limits_thatALayoutDisproves_areRefused() {
    CuttingStockInstance instance =
        new CuttingStockInstance(
            Shop.demands(AB, 3, 3), ONE, List.of(Shop.layout(SHEET, AB, 5, 5)));
    PackingLimits tooFew =
        new PackingLimits(
            List.of(new SheetLimit(10_000, List.of(1000.0, 500.0), List.of(4, 9), "wrong")));
    PackingLimits tooSmall =
        new PackingLimits(
            List.of(new SheetLimit(7_000, List.of(1000.0, 500.0), List.of(9, 9), "wrong")));
    assertThatThrownBy(() -> new LowerBound(instance, tooFew))
        .hasMessage("proven limit of 4 for piece A on ply is wrong: a layout holds 5");
    assertThatThrownBy(() -> new LowerBound(instance, tooSmall))
        .hasMessageContaining("a layout takes 7500.0 mm²");
  }

  @Test
  void counts_layout_inOrderOfDemands() {
    CuttingStockInstance instance =
        new CuttingStockInstance(
            Shop.demands(List.of(AB.get(1), AB.get(0)), 3, 3),
            ONE,
            List.of(Shop.layout(SHEET, AB, 5, 2)));
    assertThat(instance.counts(instance.layouts().get(0))).containsExactly(2, 5);
  }
}
