package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JointFallTest {

  /** Joints of equal pieces over three turns. */
  private static List<Double> equal(double degrees) {
    List<Double> joints = new ArrayList<>();
    for (double at = degrees; at < 3 * 360 - 1e-6; at += degrees) {
      joints.add(at);
    }
    return joints;
  }

  @ParameterizedTest
  @CsvSource({
    "180, IN_LINE, 0",
    "120, IN_LINE, 0",
    "51.42857142857143, IN_LINE, 0",
    "80, STAGGERED_BY_HALF, 40",
    "144, STAGGERED_BY_HALF, 72",
    // 360 = 3 x 100 + 60: the joint above lies 40 before or 60 behind.
    "100, WANDERING, 40"
  })
  void of_equalPieces_followsFromPiecesPerTurn(double degrees, JointLine line, double least) {
    JointFall fall = JointFall.of(equal(degrees), degrees);

    assertThat(fall.line()).isEqualTo(line);
    assertThat(fall.leastDegrees()).isCloseTo(least, within(1e-9));
  }

  @Test
  void of_quartersBelowSixths_isPartlyInLine() {
    List<Double> joints = List.of(90.0, 180.0, 270.0, 360.0, 420.0, 480.0, 540.0, 600.0);

    assertThat(JointFall.of(joints, 90)).isEqualTo(new JointFall(JointLine.PARTLY_IN_LINE, 0));
  }

  @Test
  void of_lessThanATurn_hasNoneAbove() {
    assertThat(JointFall.of(List.of(90.0, 180.0), 90).line()).isEqualTo(JointLine.NONE_ABOVE);
    assertThat(JointFall.of(List.of(), 90).line()).isEqualTo(JointLine.NONE_ABOVE);
  }
}
