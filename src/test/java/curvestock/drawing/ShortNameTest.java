package curvestock.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Short names are explained by names that the reader finds on the same paper. */
class ShortNameTest {

  @Test
  void legend_blocksAndPlates_showsOnlyTheseByTheirOwnNames() {
    assertThat(ShortName.legend(List.of("R1", "block-7", "plate-3", "block-12-2")))
        .hasValue(
            "Parts too small for their whole name show it short: 12-2 for block-12-2, p3 for plate-3.");
  }

  @Test
  void legend_braces_areShownToo() {
    assertThat(ShortName.legend(List.of("brace-3-1")))
        .hasValue("Parts too small for their whole name show it short: br3-1 for brace-3-1.");
  }

  @Test
  void legend_namesThatStayWhole_isEmpty() {
    assertThat(ShortName.legend(List.of("R1", "L1-3", "S"))).isEmpty();
  }
}
