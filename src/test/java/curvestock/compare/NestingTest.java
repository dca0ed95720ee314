package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.units.Angle;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Small parts lie on sheets as thick as they are, whatever segment size is compared. */
class NestingTest {

  @Test
  void plates_ofAnotherThickness_areBoughtForEverySize() throws Exception {
    Job job =
        TestJobs.small(
            "price: 40}",
            "price: 40}\n  - {name: thin, size: 2x4 ft, thickness: 1/4, price: 12}",
            "segments-per-turn: 4}",
            "segments-per-turn: 4, scale: HO, rise-per-turn: 4,"
                + " joint: {plate: {length: 5, inset: 1/4, thickness: 1/4}}}");
    Comparison comparison =
        new Comparer(
                job,
                new Question(
                    List.of(Angle.ofDegrees(120), Angle.ofDegrees(90)),
                    false,
                    OptionalInt.empty(),
                    false),
                TestJobs.untilPlanned())
            .compare();

    assertThat(comparison.options()).isNotEmpty();
    for (SegmentOption option : comparison.options()) {
      List<Layout> thin =
          option.small().layouts().stream()
              .filter(layout -> layout.sheet().name().equals("thin"))
              .toList();
      long plates = thin.stream().mapToLong(layout -> layout.placements().size()).sum();
      assertThat(plates).as(option.division().toString()).isEqualTo(option.joints());
      assertThat(option.small().layouts())
          .filteredOn(layout -> !layout.sheet().name().equals("thin"))
          .flatExtracting(Layout::placements)
          .extracting(Placement::piece)
          .allMatch(piece -> piece.thickness().isEmpty());
    }
  }
}
