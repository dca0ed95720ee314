package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.bound.Fit;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The counting that a careful builder can do with a pocket calculator: like pieces stacked the same
 * way round. Closed form, derived from two circles that keep their distance: pitch {@code √((R+k)²
 * − r²·sin²a) − r·cos a}, chord {@code 2R·sin a}, depth {@code R − r·cos a}, where 2a is the sweep.
 * A good nest must never do worse. Turns per sheet were worked out apart from this program.
 */
class HandbookStackTest {

  private static final double KERF = 0.125;
  private static final double MARGIN = 0.25;
  private static final Cutting CUTTING =
      Cutting.leaving(Length.ofInches(KERF), Length.ZERO, Length.ofInches(MARGIN));

  private static Piece piece(double radius, double width, double degrees) {
    return Piece.of(
        "S",
        "segment",
        new AnnularSector(
            Length.ofInches(radius), Length.ofInches(width), Angle.ofDegrees(degrees)));
  }

  private static SheetStock sheet(double length, double width) {
    return SheetStock.rectangle(
        "sheet",
        Length.ofInches(length),
        Length.ofInches(width),
        Length.ofInches(0.5),
        new Money(6800));
  }

  private static int stacked(double radius, double width, int parts, double along, double across) {
    double a = Math.PI / parts;
    double outer = radius + width / 2;
    double inner = radius - width / 2;
    double chord = 2 * outer * Math.sin(a);
    double depth = outer - inner * Math.cos(a);
    double reach = inner * Math.sin(a);
    double pitch = Math.sqrt((outer + KERF) * (outer + KERF) - reach * reach) - inner * Math.cos(a);
    int columns = (int) Math.floor((across + KERF) / (chord + KERF));
    return depth > along ? 0 : columns * (1 + (int) Math.floor((along - depth) / pitch));
  }

  @ParameterizedTest
  @CsvSource({
    // radius, width, parts of a turn, sheet, turns per sheet; inches, 1/8 kerf, 1/4 margin
    "16, 3, 2, 96, 48, 4.0",
    "16, 3, 4, 96, 48, 7.5",
    "16, 3, 8, 96, 48, 12.3",
    "17.5, 4.5, 4, 96, 48, 5.25",
    "24, 4.5, 3, 96, 48, 3.7",
    "24, 4.5, 4, 96, 48, 3.5",
    "24, 4.5, 8, 96, 48, 4.75",
    "28, 5.5, 2, 96, 48, 0.5",
    "28, 5.5, 3, 96, 48, 1.3",
    "28, 5.5, 4, 96, 48, 3.0",
    "28, 5.5, 6, 96, 48, 3.5",
    "28, 5.5, 4, 60, 60, 1.75",
    "28, 5.5, 4, 48, 48, 1.25",
    "36, 6, 6, 96, 48, 2.2",
    "42, 7, 6, 96, 48, 1.8",
    "48, 10, 8, 96, 48, 1.0"
  })
  void pattern_isNeverWorseThanThePlainStack(
      double radius, double width, int parts, double length, double across, double turns) {
    double x = length - 2 * MARGIN;
    double y = across - 2 * MARGIN;
    int plain = Math.max(stacked(radius, width, parts, x, y), stacked(radius, width, parts, y, x));
    Packer packer = new Packer(sheet(length, across), CUTTING, new SearchSettings(1, Effort.QUICK));

    int found = packer.structured(piece(radius, width, 360.0 / parts)).layout().placements().size();

    assertThat((double) plain / parts).isCloseTo(turns, within(0.07));
    assertThat(found).isGreaterThanOrEqualTo(plain);
  }

  /**
   * Largest outer radius whose piece still lies across the usable width, R = w / (2·sin a): closed
   * form. A panel just as long as the piece is deep leaves it no room to turn.
   */
  @ParameterizedTest
  @CsvSource({
    // usable width in inches, parts of a turn, largest outer radius in inches
    "47.5, 2, 23.75",
    "47.5, 3, 27.42",
    "47.5, 4, 33.59",
    "47.5, 6, 47.50",
    "47.5, 8, 62.06",
    "59.5, 3, 34.35",
    "59.5, 4, 42.07",
    "59.5, 8, 77.74"
  })
  void pattern_atTheLargestRadius_fitsAcrossAndNoFurther(double usable, int parts, double outer) {
    double width = 5;
    assertThat(fits(usable, parts, outer - 0.01, width)).isTrue();
    assertThat(fits(usable, parts, outer + 0.02, width)).isFalse();
  }

  private static boolean fits(double usable, int parts, double outer, double width) {
    double a = Math.PI / parts;
    double depth = outer - (outer - width) * Math.cos(a);
    SheetStock panel = sheet(usable + 2 * MARGIN, depth + 2 * MARGIN + 1e-3);
    Piece piece = piece(outer - width / 2, width, 360.0 / parts);
    int found =
        new Packer(panel, CUTTING, new SearchSettings(1, Effort.QUICK))
            .structured(piece)
            .layout()
            .placements()
            .size();
    assertThat(Fit.isImpossible(piece, panel, CUTTING)).isEqualTo(found == 0);
    return found > 0;
  }
}
