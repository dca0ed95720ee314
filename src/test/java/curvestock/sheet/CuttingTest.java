package curvestock.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Gap and wood between cuts. Each of two cuts is a kerf wide: plain arithmetic, no source. */
class CuttingTest {

  private static Length mm(double length) {
    return Length.ofMillimetres(length);
  }

  @ParameterizedTest
  @CsvSource({"3, 0, 3, 0", "3, 2, 8, 2", "3, 0.5, 6.5, 0.5", "0, 4, 4, 4"})
  void leaving_wood_isWhatStandsBetweenTwoCuts(double kerf, double extra, double gap, double wood) {
    Cutting cutting = Cutting.leaving(mm(kerf), mm(extra), mm(5));

    assertThat(cutting.spacing().millimetres()).isCloseTo(gap, Offset.offset(1e-12));
    assertThat(cutting.standing().millimetres()).isCloseTo(wood, Offset.offset(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"3, 4", "8, 10", "4, 5"})
  void withKerf_keepsWoodBetweenCuts(double spacing, double spacingThen) {
    Cutting cutting = new Cutting(mm(3), mm(spacing), mm(5)).withKerf(mm(4));

    assertThat(cutting.spacing().millimetres()).isCloseTo(spacingThen, Offset.offset(1e-12));
  }

  @Test
  void spacing_belowTheKerf_isRefused() {
    assertThatThrownBy(() -> new Cutting(mm(3), mm(2), mm(5)))
        .hasMessageContaining("spacing must be at least the kerf");
  }

  @Test
  void apart_saysBothNumbers() {
    assertThat(Cutting.leaving(mm(3), mm(2), mm(5)).apart(LengthStyle.METRIC))
        .isEqualTo("pieces at least 8 mm apart (2 mm of wood between two cuts)");
    assertThat(Cutting.leaving(mm(3), mm(0), mm(5)).apart(LengthStyle.METRIC))
        .isEqualTo("pieces at least 3 mm apart (neighbours may share a cut)");
    assertThat(new Cutting(mm(3), mm(4), mm(5)).apart(LengthStyle.METRIC))
        .isEqualTo("pieces at least 4 mm apart (no wood between two cuts)");
  }
}
