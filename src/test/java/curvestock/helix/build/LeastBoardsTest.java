package curvestock.helix.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * By hand. 55 and 46 do not fit one board of 100, so three boards hold a 55 each and the three 46
 * need two more: 5, where their total is 303. The last is a list of threaded rods of 36 in, in mm
 * with a sixteenth for the saw: by length 19 would hold them; a linear program over all patterns
 * (SciPy's HiGHS) says 20.
 */
class LeastBoardsTest {

  @ParameterizedTest
  @CsvSource({
    "100, 5, '55 55 55 46 46 46'",
    "100, 3, '55 55 55 45 45 45'",
    "100, 2, '40 40 40 40'",
    "100, 3, '51 51 51'",
    "916, 20, '130.1 130.1 130.9 130.9 453 453 457.8 457.8 462.7 462.7 467.5 467.5 472.3 472.3"
        + " 477.2 482 482 486.8 486.8 491.6 491.6 496.5 496.5 501.3 501.3 506.1 506.1'"
  })
  void least_isWhatNoNestingGoesBelow(double board, int least, String lengths) {
    List<Double> all = Arrays.stream(lengths.split(" ", -1)).map(Double::valueOf).toList();

    assertThat(LeastBoards.of(all, board)).isEqualTo(least);
  }
}
