package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Sizes are invented; inches. */
class StoreCutsTest {

  private static final SheetStock SHEET =
      SheetStock.rectangle(
          "ply", Length.ofInches(96), Length.ofInches(48), Length.ofInches(0.5), new Money(5000));

  private static StoreCuts cuts(double kerf, double tolerance, double a, double b) {
    return new StoreCuts(
        new Money(100),
        Length.ofInches(kerf),
        Length.ofInches(tolerance),
        Length.ofInches(a),
        Length.ofInches(b));
  }

  @Test
  void breakdowns_sheetThatCanBeCarried_isLeftWhole() {
    assertThat(cuts(0.125, 0.125, 48, 96).breakdowns(SHEET))
        .containsExactly(Breakdown.whole(SHEET));
  }

  /**
   * By hand: n panels lose n-1 times the kerf and twice the tolerance; a panel may come out larger.
   */
  @ParameterizedTest
  @CsvSource({
    // kerf, tolerance, carry; panels, one side of the first way
    "0.125, 0.125, 60, 48.5, 2, 47.8125",
    "0.125, 0.125, 48.5, 40, 3, 31.75",
    "0, 0, 48, 48, 2, 48",
    "0.125, 0, 96, 24, 2, 23.9375",
  })
  void breakdowns_equalPanels_loseKerfAndTolerance(
      double kerf, double tolerance, double a, double b, int panels, double side) {
    Breakdown first = cuts(kerf, tolerance, a, b).breakdowns(SHEET).get(0);

    assertThat(first.panels()).hasSize(1);
    Panel panel = first.panels().get(0);
    assertThat(panel.perSheet()).isEqualTo(panels);
    assertThat(first.cuts()).isEqualTo(panels - 1);
    assertThat(first.cutting()).isEqualTo(new Money(100L * (panels - 1)));
    List<Double> sides = List.of(panel.stock().length().inches(), panel.stock().width().inches());
    assertThat(sides).anyMatch(value -> Math.abs(value - side) < 1e-9);
  }

  @Test
  void breakdowns_carThatTakesMoreThanHalf_offersTheLargestAndTheRest() {
    List<Breakdown> ways = cuts(0.125, 0.125, 62, 48.5).breakdowns(SHEET);

    assertThat(ways).hasSize(2);
    assertThat(ways.get(1).panels())
        .extracting(panel -> panel.stock().length().inches() * 1e6)
        .extracting(Math::round)
        // 62 less two tolerances; what is left of 96 beyond the largest it may be, and the rest
        // is 33.875 by 48, which lies with its longer side along x.
        .containsExactly(61_750_000L, 48_000_000L);
    assertThat(ways.get(1).panels().get(1).stock().width().inches())
        .isCloseTo(33.875, offset(1e-9));
  }

  @Test
  void breakdowns_panelTurned_keepsItsGrain() {
    Breakdown thirds = cuts(0.125, 0.125, 48.5, 40).breakdowns(SHEET).get(0);
    SheetStock panel = thirds.panels().get(0).stock();

    // The sheet's grain runs along 96 in, which is the panel's shorter side.
    assertThat(panel.length()).isEqualTo(Length.ofInches(48));
    assertThat(panel.grain()).isEqualTo(Angle.ofDegrees(90));
  }

  @Test
  void breakdowns_nothingCanBeCarried_isEmpty() {
    assertThat(cuts(0.125, 0.125, 4, 4).breakdowns(SHEET)).isEmpty();
  }

  static LongStream seeds() {
    return LongStream.range(0, 200);
  }

  /** Whatever the store's saw does within its tolerance, panels fit the sheet and the car. */
  @ParameterizedTest
  @MethodSource("seeds")
  void breakdowns_random_fitSheetAndCar(long seed) {
    Random random = new Random(seed);
    double kerf = random.nextInt(3) / 16.0;
    double tolerance = random.nextInt(4) / 16.0;
    StoreCuts cuts = cuts(kerf, tolerance, 20 + random.nextInt(70), 10 + random.nextInt(60));
    for (Breakdown way : cuts.breakdowns(SHEET)) {
      double area = 0;
      for (Panel panel : way.panels()) {
        SheetStock stock = panel.stock();
        area += panel.perSheet() * stock.area();
        assertThat(cuts.canCarry(stock.length(), stock.width())).as("seed %d", seed).isTrue();
      }
      int count = way.panels().stream().mapToInt(Panel::perSheet).sum();
      assertThat(area).isLessThanOrEqualTo(SHEET.area() * (1 + 1e-9));
      assertThat(way.cuts()).isEqualTo(count - 1);
      assertThat(way.cutting()).isEqualTo(cuts.price().times(count - 1L));
    }
  }
}
