package curvestock.helix.build;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import org.assertj.core.data.Offset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** By hand: strips across the face grain, side by side, 1/8 in or 3 mm of saw cut between two. */
class StripPanelTest {

  /**
   * Ten of 1 7/8 in and nine cuts of 1/8 in are 19 7/8 in. Sixty of them would be 119 7/8 in, more
   * than 8 ft, so of strips of 20 in two lie end to end: 40 1/8 in by thirty, 59 7/8 in. A strip of
   * 30 in leaves no room for a second one in 4 ft.
   */
  @ParameterizedTest
  @CsvSource({
    "INCH, 10, 31.625, 1.875, 1, 31.625, 19.875",
    "INCH, 60, 20, 1.875, 2, 40.125, 59.875",
    "INCH, 60, 30, 1.875, 1, 30, 119.875",
    "INCH, 2, 60, 2, 1, 60, 4.125",
    "MILLIMETRE, 4, 500, 47, 1, 500, 197"
  })
  void panel_isAsWorkedOutByHand(
      LengthUnit unit,
      long layers,
      double length,
      double depth,
      int rows,
      double across,
      double along) {
    LengthStyle style = unit.isImperial() ? LengthStyle.INCH_FRACTIONS : LengthStyle.METRIC;
    Bridge.Cut cut =
        new Bridge.Cut(Length.of(length, unit), Length.of(depth, unit), Length.of(1, unit));

    StripPanel panel = StripPanel.of(layers, cut, style);

    assertThat(panel.rows()).isEqualTo(rows);
    assertThat(panel.across().in(unit)).isEqualTo(across, within());
    assertThat(panel.along().in(unit)).isEqualTo(along, within());
  }

  private static Offset<Double> within() {
    return Offset.offset(1e-9);
  }
}
