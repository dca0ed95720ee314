package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointLineTest {

  @ParameterizedTest
  @CsvSource({
    "180, IN_LINE",
    "120, IN_LINE",
    "51.42857142857143, IN_LINE",
    "80, STAGGERED_BY_HALF",
    "144, STAGGERED_BY_HALF",
    "100, WANDERING",
    "33.3, WANDERING"
  })
  void of_segment_followsFromPiecesPerTurn(double degrees, JointLine expected) {
    assertThat(JointLine.of(Angle.ofDegrees(degrees))).isEqualTo(expected);
  }
}
