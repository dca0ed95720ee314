package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.units.Angle;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class QuestionTest {

  private static Question asking(List<Angle> angles) {
    return new Question(angles, false, OptionalInt.empty());
  }

  @Test
  void angles_givenTwice_areAskedOnce() {
    Angle quarter = Angle.ofDegrees(90);

    assertThat(asking(List.of(quarter, quarter)).angles()).containsExactly(quarter);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.5, -90, 361})
  void angle_outOfRange_isRefusedWithItsValue(double degrees) {
    Angle angle = Angle.ofDegrees(degrees);

    assertThatThrownBy(() -> asking(List.of(angle)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("must be from 1° to 360°, but was " + angle);
  }

  @Test
  void angles_tooMany_areRefused() {
    List<Angle> angles = IntStream.rangeClosed(30, 54).mapToObj(Angle::ofDegrees).toList();

    assertThatThrownBy(() -> asking(angles)).hasMessageContaining("at most 24, but were 25");
  }

  @Test
  void sheetsOnHand_belowNone_isRefused() {
    assertThatThrownBy(() -> new Question(List.of(), false, OptionalInt.of(-1)))
        .hasMessageContaining("must not be negative, but was -1");
  }
}
