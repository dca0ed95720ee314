package curvestock.packing.atlas;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Charts as they are written, read and asked for. */
class AtlasTest {

  private static final Proportions QUARTER = new Proportions(Math.PI / 2, 0.6, 0.1, 2);

  private static Chart chart(double outer, double width, int count) {
    double[] places = new double[3 * count];
    for (int k = 0; k < places.length; k++) {
      places[k] = k / (double) places.length;
    }
    return Chart.of(new Proportions(Math.PI / 2, outer, width, 2), places);
  }

  @Test
  void chart_writtenAndRead_isTheSame() {
    double[] places = {0, 1, -0.5, 0.123456, 0.654321, 7};

    Chart read = Chart.parse(Chart.of(QUARTER, places).line());

    assertThat(read.line()).isEqualTo(Chart.of(QUARTER, places).line());
    assertThat(read.count()).isEqualTo(2);
    assertThat(read.proportions().outer()).isEqualTo(0.6);
    assertThat(read.proportions().sweep()).isCloseTo(Math.PI / 2, within(1e-5));
    double step = 0.5 / 65535;
    assertThat(read.places()[3]).isCloseTo(0.123456, within(step));
    assertThat(read.places()[4]).isCloseTo(0.654321, within(step));
    assertThat(read.places()[2]).isCloseTo(2 * Math.PI - 0.5, within(2 * Math.PI * step));
    assertThat(read.places()[5]).isCloseTo(7 - 2 * Math.PI, within(2 * Math.PI * step));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "90.000 2.0000 0.60000 0.10000 2",
        "90.000 2.0000 0.60000 0.10000 2 AAAA",
        "90.000 2.0000 0.60000 0.90000 1 AAAAAAAA",
        "90.000 0.5000 0.60000 0.10000 1 AAAAAAAA",
        "ninety 2.0000 0.60000 0.10000 1 AAAAAAAA"
      })
  void chart_fromABrokenLine_isRefused(String line) {
    assertThatIllegalArgumentException().isThrownBy(() -> Chart.parse(line));
  }

  @Test
  void near_charts_holdMostFirst_andOnlyWhatMayFit() {
    Chart ten = chart(0.61, 0.1, 10);
    Chart roomier = chart(0.62, 0.1, 10);
    Chart twelve = chart(0.6, 0.1, 12);
    Chart forSmaller = chart(0.55, 0.1, 15);
    Chart muchWider = chart(0.62, 0.2, 11);
    Atlas atlas = Atlas.of("test", List.of(ten, roomier, twelve, forSmaller, muchWider));

    assertThat(atlas.near(QUARTER, 9)).containsExactly(twelve, roomier, ten);
    assertThat(atlas.near(QUARTER, 10)).containsExactly(twelve);
    assertThat(atlas.near(QUARTER, 12)).isEmpty();
    assertThat(atlas.near(new Proportions(Math.PI / 3, 0.6, 0.1, 2), 0)).isEmpty();
    assertThat(atlas.near(new Proportions(Math.PI / 2, 0.6, 0.1, 1), 0)).isEmpty();
  }

  @Test
  void table_shipped_isWholeInOrderAndSmall() throws IOException {
    try (InputStream in = Atlas.class.getResourceAsStream("layouts.txt")) {
      byte[] bytes = in.readAllBytes();
      List<String> lines =
          new String(bytes, StandardCharsets.UTF_8)
              .lines()
              .filter(line -> !line.startsWith("#"))
              .toList();

      assertThat(bytes.length).isLessThan(3_000_000);
      assertThat(Atlas.SHIPPED.charts()).hasSameSizeAs(lines).hasSizeGreaterThan(200);
      assertThat(Atlas.table(Atlas.SHIPPED.charts())).isEqualTo(lines);
    }
  }
}
