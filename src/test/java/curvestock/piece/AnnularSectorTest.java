package curvestock.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.geometry.Outline;
import curvestock.units.Angle;
import curvestock.units.Length;
import org.assertj.core.data.Offset;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class AnnularSectorTest {

  private static AnnularSector between(double outer, double inner, double degrees) {
    return new AnnularSector(
        Length.ofMillimetres((outer + inner) / 2),
        Length.ofMillimetres(outer - inner),
        Angle.ofDegrees(degrees));
  }

  /** Sources stand in the header of the table. */
  @ParameterizedTest
  @CsvFileSource(resources = "circle-figures.csv")
  void figures_handbook_agree(
      String what, double outer, double inner, double degrees, double value, double percent) {
    AnnularSector sector = between(outer, inner, degrees);
    double found =
        switch (what) {
          case "area" -> sector.area();
          case "chord" -> sector.chord().millimetres();
          case "sagitta" -> sector.sagitta().millimetres();
          case "outer arc" -> sector.outline().outer().edges().get(0).length();
          default -> throw new IllegalArgumentException(what);
        };

    assertThat(found).isCloseTo(value, Percentage.withPercentage(percent));
  }

  /** The closed form of the area against the sum over the outline's edges. */
  @ParameterizedTest
  @CsvSource({"33, 29, 90", "33, 29, 360", "16.5, 13.5, 180", "20, 0, 75", "20, 0, 360"})
  void area_closedForm_equalsTheOutlines(double outer, double inner, double degrees) {
    AnnularSector sector = between(outer, inner, degrees);

    assertThat(sector.outline().area()).isCloseTo(sector.area(), Offset.offset(1e-9));
  }

  @Test
  void outline_wholeTurn_hasAHoleAndNoEndFaces() {
    Outline ring = between(33, 29, 360).outline();

    assertThat(ring.holes()).hasSize(1);
    assertThat(ring.perimeter()).isCloseTo(2 * Math.PI * (33 + 29), Offset.offset(1e-9));
  }

  @Test
  void chord_aboveHalfATurn_isTheDiameter() {
    assertThat(between(33, 29, 270).chord().millimetres()).isEqualTo(66);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 4, 90, radius must be above zero",
    "30, 0, 90, width must be above zero",
    "30, 61, 90, width must be at most twice",
    "30, 4, 0, angle must be above 0°",
    "30, 4, 360.1, angle must be above 0°"
  })
  void sector_impossible_isRefused(double radius, double width, double degrees, String message) {
    assertThatThrownBy(
            () ->
                new AnnularSector(
                    Length.ofMillimetres(radius),
                    Length.ofMillimetres(width),
                    Angle.ofDegrees(degrees)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(message);
  }
}
