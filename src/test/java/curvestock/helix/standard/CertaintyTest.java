package curvestock.helix.standard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class CertaintyTest {

  @Test
  void memory_isNeverPrinted_everythingElseIs() {
    assertThat(List.of(Certainty.values()))
        .filteredOn(certainty -> !certainty.isPrintable())
        .containsExactly(Certainty.MEMORY);
  }

  @Test
  void everyTable_everyRow_namesSourceAndCertainty() {
    List<String> tables =
        List.of(
            "scales.csv",
            "clearance-heights.csv",
            "track-spacing.csv",
            "curve-widening.csv",
            "clear-half-width.csv",
            "smallest-radius.csv",
            "easement-shift.csv",
            "rod-threads.csv",
            "support-spacing.csv",
            "wood-density.csv");

    for (String table : tables) {
      assertThat(CsvTable.read(table).rows())
          .as(table)
          .isNotEmpty()
          .allSatisfy(row -> assertThat(row.sourced(0).citation()).isNotBlank());
    }
  }
}
