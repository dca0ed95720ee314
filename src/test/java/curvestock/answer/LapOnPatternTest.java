package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.build.LapEnd;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A pattern names the laps that its piece has: the first and the last piece of a helix have one.
 */
class LapOnPatternTest {

  @ParameterizedTest
  @CsvSource({"UPPER, lower end", "LOWER, upper end"})
  void onPattern_pieceWithOneLap_doesNotSpeakOfTheOther(LapEnd end, String other) {
    String words =
        HalfLapWords.onPattern(
            List.of(end), Length.ofInches(2), Length.ofInches(0.476), LengthStyle.INCH_FRACTIONS);

    assertThat(words).startsWith("Half-lap:").doesNotContain(other);
  }
}
