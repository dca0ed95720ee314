package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets ripped for a machine that reaches less than a sheet. */
class BedRipsTest {

  private static Optional<Breakdown> rips(double length, double width, double a, double b) {
    SheetStock sheet =
        SheetStock.rectangle(
            "birch",
            Length.ofMillimetres(length),
            Length.ofMillimetres(width),
            Length.ofMillimetres(12),
            new Money(6000));
    return BedRips.of(
        sheet, Length.ofMillimetres(3), Length.ofMillimetres(a), Length.ofMillimetres(b));
  }

  /**
   * Shared scenario 6 (invented figures): one sheet of 2440 x 1220 yields 5 blanks of 900 x 600.
   */
  @Test
  void of_sheetForASmallRouter_givesFiveFullPanels() {
    Breakdown way = rips(2440, 1220, 900, 600).orElseThrow();

    int full =
        way.panels().stream()
            .filter(panel -> Math.abs(panel.stock().area() - 540_000) < 1)
            .mapToInt(Panel::perSheet)
            .sum();
    assertThat(full).isEqualTo(5);
  }

  @ParameterizedTest
  @CsvSource({
    "2440,1220,900,600",
    "2438.4,1219.2,609.6,457.2",
    "1525,1525,700,500",
    "900,600,800,500"
  })
  void of_anySheet_givesPanelsThatFitTheBedAndTogetherTheSheet(
      double length, double width, double a, double b) {
    Breakdown way = rips(length, width, a, b).orElseThrow();

    double area = 0;
    for (Panel panel : way.panels()) {
      area += panel.perSheet() * panel.stock().area();
      double longer =
          Math.max(panel.stock().length().millimetres(), panel.stock().width().millimetres());
      double shorter =
          Math.min(panel.stock().length().millimetres(), panel.stock().width().millimetres());
      assertThat(longer).isLessThanOrEqualTo(a + 1e-9);
      assertThat(shorter).isLessThanOrEqualTo(b + 1e-9);
    }
    assertThat(area).isLessThan(length * width);
  }

  @Test
  void of_sheetSmallerThanTheBed_givesNoFullPanel() {
    assertThat(rips(500, 400, 900, 600)).isEmpty();
  }
}
