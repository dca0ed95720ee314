package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.geometry.Point;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Path data by the commands of SVG 1.1 (second edition), section 8.3; the figures by hand. Drawn at
 * SVG (x, y), read at (x, 100 − y).
 */
class PathReaderTest {

  private static List<Chain> read(String data) throws CheckException {
    return PathReader.read(data, 100);
  }

  private static String corners(Chain chain) {
    StringBuilder text = new StringBuilder();
    for (Trace edge : chain.edges()) {
      text.append(String.format(Locale.ROOT, "%.3f,%.3f ", edge.start().x(), edge.start().y()));
    }
    return text + String.format(Locale.ROOT, "%.3f,%.3f", chain.end().x(), chain.end().y());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M 10 20 L 30 40 H 50 V 60 Z|10,80 30,60 50,60 50,40 10,80",
        "m 10 20 l 20 20 h 20 v 20 z|10,80 30,60 50,60 50,40 10,80",
        "M 10 20 l 20 20 H 50 v 20 Z|10,80 30,60 50,60 50,40 10,80",
        "M 10 20 30 40 50 40 50 60 Z|10,80 30,60 50,60 50,40 10,80",
        "M 10 20 L 30 40 L 30 40 L 50 60 L 10 20 Z|10,80 30,60 50,40 10,80",
        "M 10 20 L 30 40|10,80 30,60",
        "M 10 20 A 5 5 0 0 1 20 20 L 10 20 Z|10,80 20,80 10,80",
        "M 10 20 a 5 5 0 0 1 10 0 Z|10,80 20,80 10,80"
      })
  void read_linesAndArcs_endWhereTheCommandsSay(String data, String corners) throws Exception {
    Chain chain = read(data).get(0);

    assertThat(corners(chain)).isEqualTo(corners.replaceAll("(\\d+)", "$1.000"));
    assertThat(chain.closed()).isEqualTo(data.endsWith("Z") || data.endsWith("z"));
  }

  /** Section 8.3.3: after a closing the next part starts at the same point. */
  @Test
  void read_severalParts_areChainsOfTheirOwn() throws Exception {
    List<Chain> chains =
        read("M 10 20 L 30 20 L 30 40 Z l 5 5 l 5 0 z M 70 70 L 80 80 m 1 2 l 3 4 l 9 9 Z");

    assertThat(chains).hasSize(4);
    assertThat(chains.get(1).start()).isEqualTo(new Point(10, 80));
    assertThat(chains.get(1).edges()).hasSize(3);
    assertThat(chains.get(2).closed()).isFalse();
    assertThat(chains.get(3).start()).isEqualTo(new Point(81, 18));
  }

  /** Sweep flag 1: clockwise to the eye, as SVG's y points down; so clockwise when y points up. */
  @ParameterizedTest
  @CsvSource({
    "0, 1, 15, 80, -180",
    "0, 0, 15, 80, 180",
  })
  void read_arc_isTurnedOverWithTheAxis(int large, int sweep, double x, double y, double degrees)
      throws Exception {
    Chain chain = read("M 10 20 A 5 5 0 " + large + " " + sweep + " 20 20 Z").get(0);
    Trace.Round round = (Trace.Round) chain.edges().get(0);

    assertThat(round.centre().distance(new Point(x, y))).isLessThan(1e-9);
    assertThat(Math.toDegrees(round.sweep())).isEqualTo(degrees);
    assertThat(round.radius()).isEqualTo(5);
    double top = sweep == 1 ? 85 : 75;
    assertThat(round.at(0.5).distance(new Point(15, top))).isLessThan(1e-9);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "L 1 1|must start with M",
        "M 0 0 A 5 6 0 0 1 9 9 Z|not circular: radii 5.0 and 6.0 mm",
        "M 0 0 C 1 1 2 2 3 0 Z|circular arc: command C",
        "M 0 0 c 1 1 2 2 3 0 Z|circular arc: command c",
        "M 0 0 S 2 2 3 0 Z|circular arc: command S",
        "M 0 0 s 2 2 3 0 Z|circular arc: command s",
        "M 0 0 Q 2 2 3 0 Z|circular arc: command Q",
        "M 0 0 q 2 2 3 0 Z|circular arc: command q",
        "M 0 0 T 3 0 Z|circular arc: command T",
        "M 0 0 t 3 0 Z|circular arc: command t",
        "M 0 0 L 1000001 0 Z|out of bounds: 1000001 (at most 1000000 mm)",
        "M 0 0 L -1000001 0 Z|out of bounds: -1000001 (at most",
        "M 0 0 L 5|malformed path data",
        "M 0 0|the path encloses nothing",
        "M 0 0 L 0 0 Z|the path encloses nothing",
        "M 0 0 A 10 10 0 0110 10 Z|set every number off"
      })
  void read_whatIsNotForUs_saysWhat(String data, String message) {
    assertThatThrownBy(() -> read(data))
        .isInstanceOf(CheckException.class)
        .hasMessageContaining(message);
  }

  @Test
  void read_numbersOfEveryForm_areReadToAllTheirDigits() throws Exception {
    Chain chain = read("M+1.5e1,.25L-2.5E-1 1234.56789z").get(0);

    assertThat(chain.start()).isEqualTo(new Point(15, 99.75));
    assertThat(chain.edges().get(0).end()).isEqualTo(new Point(-0.25, 100 - 1234.56789));
    assertThat(read("M 0 0 L 1000000 0 L 0 -1000000 Z")).hasSize(1);
  }

  @Test
  void read_moreCommandsThanAreFollowed_isRefused() throws Exception {
    String most = "M 0 0" + " L 1 1 L 0 1".repeat(999) + " Z";

    assertThat(read(most).get(0).edges()).hasSize(1999);
    assertThatThrownBy(() -> read(most + " L 1 1")).hasMessageContaining("more than 2000 commands");
  }

  @ParameterizedTest
  @CsvSource({"30, false", "40, false", "41, true", "400, true"})
  void read_longNumberOutOfBounds_isToldInShort(int digits, boolean shortened) {
    String number = "9".repeat(digits);

    assertThatThrownBy(() -> read("M 0 0 L " + number + " 0 Z"))
        .hasMessageContaining(
            shortened ? "9".repeat(40) + "... (at most" : ": " + number + " (at most");
  }
}
