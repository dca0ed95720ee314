package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.plan.Plan;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * An oval's pieces have laps of two lengths: all on the arc, or half on the straight. By plane
 * geometry, 50 mm at a radius of 590 mm on roadbed 112 mm wide measure 50 × 646/590 = 54.7 mm at
 * the outer edge on the arc, and 25 + 25 × 646/590 = 52.4 mm where half is straight; marked in
 * halves of a millimetre.
 */
class LapSizesTest {

  @Test
  void told_pieceWithLapsOfTwoLengths_standsUnderBoth() {
    Plan plan = DemoPlans.plan(Path.of("demo-data/helix/brewery-oval.yaml"));
    HalfLapWords words = new HalfLapWords(plan);
    List<String> lines =
        HalfLapWords.told(
            IntStream.rangeClosed(1, plan.layouts().size())
                .boxed()
                .flatMap(sheet -> words.ofSheet(sheet).stream())
                .toList());
    String told = String.join("\n", lines);
    int arcs = told.indexOf("54.5 mm at the outer edge");
    assertThat(told.indexOf("52.5 mm at the outer edge")).isBetween(0, arcs);
    assertThat(told.substring(0, arcs)).contains("R2: cut the half-lap at C–D (upper end)");
    assertThat(told.substring(arcs)).contains("R2: cut the half-lap at F–A (lower end)");
  }
}
