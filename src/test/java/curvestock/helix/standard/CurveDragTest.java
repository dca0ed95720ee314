package curvestock.helix.standard;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** 0.04 % per degree of curve: railway handbooks, read; the constants per scale are derived. */
class CurveDragTest {

  @ParameterizedTest
  @CsvSource({"Z, 12.50", "N, 17.19", "TT, 22.92", "HO, 31.58", "S, 42.97", "O, 57.30"})
  void constant_perScale_is2750OverRatio(String scale, double constant) {
    assertThat(CurveDrag.constant(Scale.named(scale))).isCloseTo(constant, within(0.005));
  }

  /** The hobby's rule for HO is 32/R: common practice, no source. */
  @ParameterizedTest
  @CsvSource({"24", "30", "36"})
  void percent_ho_isNearly32OverR(double radius) {
    assertThat(CurveDrag.percent(Scale.named("HO"), Length.ofInches(radius)))
        .isCloseTo(32 / radius, within(0.02));
  }

  /** Railway handbooks, read: 10° 573.69 ft, 12° 478.34 ft, 60° 100 ft by the chord. */
  @ParameterizedTest
  @CsvSource({"10, 573.69", "12, 478.34", "60, 100"})
  void radiusByChord_handbookCurves_agree(double degree, double feet) {
    assertThat(CurveDrag.radiusByChord(degree)).isCloseTo(feet, within(0.005));
  }

  @ParameterizedTest
  @CsvSource({"5729.58, 1", "572.958, 10"})
  void degreeByArc_handbookCurves_agree(double feet, double degree) {
    assertThat(CurveDrag.degreeByArc(feet)).isCloseTo(degree, within(1e-5));
  }
}
