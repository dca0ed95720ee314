package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoundsTest {

  /** How near each round came, least overlaps in mm², and after how many the search ends. */
  @ParameterizedTest(name = "{0} ends after {1}")
  @CsvSource({
    "770 770 770 770 770 770, 2",
    "905 880 890 900 890 885, 3",
    "900 600 350 700 800 500, 6",
    "900 600 30 700 800 500 900 900 900 900 900 900 900, 12",
    "900 600 350 700 800 500 30 30, 6",
    "0 900 900 900 900 900 900 900 900 900 900 900 900, 12",
  })
  void endsWhereItIsStuckAndGoesOnWhereItCameNear(String overlaps, int rounds) {
    double[] each = Arrays.stream(overlaps.split(" ")).mapToDouble(Double::parseDouble).toArray();
    Rounds search = new Rounds();

    while (search.goOn()) {
      search.vain(each[search.inVain()]);
    }

    assertThat(search.inVain()).isEqualTo(rounds);
  }
}
