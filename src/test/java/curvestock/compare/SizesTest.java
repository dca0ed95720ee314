package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.DemoPlans;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import curvestock.units.Angle;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SizesTest {

  /** A plain ring, invented: its pieces are sectors without laps or leads. */
  private static final Job JOB =
      JobReader.read(
          """
          curvestock: 1
          units: in
          currency: $
          sheets: [{name: birch, size: 4x8 ft, thickness: 1/2, price: 70}]
          cutting: {kerf: 1/8, margin: 1/4}
          helix: {turns: 2, radius: 24, width: 4, segments-per-turn: 4}
          search: {effort: quick}
          """,
          "ring.yaml");

  private final Sizes sizes = Sizes.of(JOB, Packers.FORGETFUL);

  @Test
  void divisions_ofAUsualJob_areTheSixUsualOnes() {
    assertThat(sizes.divisions())
        .hasSize(6)
        .first()
        .extracting(d -> d.segment().degrees())
        .isEqualTo(180.0);
    assertThat(sizes.divisions()).filteredOn(sizes::isOwn).hasSize(1);
  }

  /**
   * Of the outer edge of a quarter: chord 2 r sin(t/2), and from it to the inner corners r - s
   * cos(t/2), with r and s the outer and the inner radius. Chord of a circle as in any handbook,
   * from memory.
   */
  @Test
  void look_atAQuarter_hasTheChordOfItsOuterEdge() throws Exception {
    SizeLook look = sizes.look(Division.of(Angle.ofDegrees(90)));

    assertThat(look.largest().length().millimetres() / 25.4)
        .isCloseTo(2 * 26 * Math.sin(Math.PI / 4), within(1e-6));
    assertThat(look.largest().width().millimetres() / 25.4)
        .isCloseTo(26 - 22 * Math.cos(Math.PI / 4), within(1e-6));
    assertThat(look.pieces()).isEqualTo(8);
    assertThat(look.joints()).isEqualTo(7);
    assertThat(look.perSheet()).isGreaterThan(7);
  }

  @Test
  void best_asPlansArrive_isWeighedByThem() throws Exception {
    Division quarters = Division.of(Angle.ofDegrees(90));
    Division eighths = Division.of(Angle.ofDegrees(45));
    List<SizeLook> looks = List.of(sizes.look(quarters), sizes.look(eighths));
    Recommendation guessed = sizes.best(looks, List.of()).orElseThrow();
    Plan plan =
        new Planner(JOB.with(JOB.search().at(Effort.QUICK)), PlanListener.NONE, Packers.FORGETFUL)
            .plan();

    SegmentOption option = sizes.planned(quarters, plan);

    assertThat(option.sheets()).isEqualTo(plan.purchase().sheets());
    assertThat(option.sheetCost()).isEqualTo(plan.cost().paid());
    assertThat(guessed.best()).isEqualTo(quarters);
    assertThat(sizes.best(looks.subList(1, 2), List.of(option)).orElseThrow().best())
        .isEqualTo(quarters);
    assertThat(sizes.compared(List.of(option), List.of(), false).best()).contains(option);
  }

  private static Stream<Path> helices() {
    return DemoPlans.files().stream().filter(file -> DemoPlans.job(file).structure().isPresent());
  }

  /** Segments lie on a sheet together with end pieces too, where a search may find most room. */
  @ParameterizedTest
  @MethodSource("helices")
  void perSheet_isNoLessThanWhatASheetOfThePlanHolds(Path file) throws Exception {
    Plan plan = DemoPlans.plan(file);
    Sizes all = Sizes.of(plan.job(), Packers.FORGETFUL);
    Division own = all.divisions().stream().filter(all::isOwn).findFirst().orElseThrow();
    Piece segment = all.planned(own, plan).segment();

    for (Layout layout : plan.layouts()) {
      Layout nothing = new Layout(layout.sheet(), layout.cutting(), List.of());
      SheetFill fill = SheetFill.known(plan, segment, nothing);
      long held =
          layout.pieces().stream()
              .filter(piece -> piece.shape().blank().equals(segment.shape().blank()))
              .count();
      assertThat((long) fill.count()).isGreaterThanOrEqualTo(held);
      assertThat(fill.bound().count()).isGreaterThanOrEqualTo(fill.count());
    }
  }
}
