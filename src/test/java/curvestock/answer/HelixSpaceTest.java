package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.app.Workshop;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.ScheduleRow;
import curvestock.job.DefaultJob;
import curvestock.job.HelixJob;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.units.Length;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What room a helix takes, by hand. */
class HelixSpaceTest {

  /**
   * The built-in job (invented): outer edge at 28 1/4 in, and 1/4 in of edge strip beyond it. It
   * enters at 0° through a lead of 32 in that comes from below, and leaves at 90° through one of 32
   * in to the left: 28 1/2 + 32 in both ways. The tallest train, 2.78 in, stands on the top turn:
   * 24.958 + 2.78 = 27.738 in.
   */
  @Test
  void size_ofTheBuiltInJob_countsBothLeads() throws Exception {
    Job job = Workshop.readJob(Optional.empty());
    assertThat(floorSpace(job))
        .isEqualTo(
            "Floor space 57 in across (edge strips included), or 60 1/2 x 60"
                + " 1/2 in with the leads; 47 1/2 in clear inside. Allow standing room around it. The highest rail is"
                + " about 25 in above the base, the roof of the tallest train about 27 3/4 in.");
  }

  /**
   * The built-in job on a base 2 in wider on both sides (invented), by hand: the outer edge at 28
   * 1/4 in and 2 in make 60 1/2 in across, with a lead of 32 in 30 1/4 + 32 in; the inner edge at
   * 23 3/4 in less 2 in leaves 43 1/2 in.
   */
  @Test
  void size_countsABaseThatIsWiderThanTheRoadbed() {
    String text = DefaultJob.text().replace("helix:\n", "helix:\n  base: {form: square, rim: 2}\n");
    Job job = JobReader.read(text, "base.yaml");
    assertThat(floorSpace(job))
        .startsWith(
            "Floor space 60 1/2 in across (base included), or 62 1/4 x 62 1/4 in with"
                + " the leads; 43 1/2 in clear inside.");
  }

  /**
   * The demo helix on a square base, by hand: outer edge at 37 1/2 + 2 7/8 in, and 2 in of base
   * beyond it, make 84 3/4 in both ways. Its leads lie within that, so one size is told.
   */
  @Test
  void size_ofLeadsThatStayWithinTheBase_isToldOnce() throws Exception {
    Job job = Workshop.readJob(Optional.of(Path.of("demo-data/helix/boathouse-spiral.yaml")));
    assertThat(floorSpace(job))
        .startsWith("Floor space 84 3/4 in across, leads and base included; 65 1/4 in clear");
  }

  private static String floorSpace(Job job) {
    Answer answer = Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true);
    return new HelixWords(answer.building().orElseThrow(), answer.figures())
        .size().stream().filter(line -> line.startsWith("Floor space ")).findFirst().orElseThrow();
  }

  /** Ears stand out 30 mm on either side, and are part of the pieces: they count once. */
  @Test
  void room_withEars_countsThemOnce() throws Exception {
    Table plain = figures(HelixJob.TEXT);
    Table ears =
        figures(
            HelixJob.with(
                "inset: 12, fit: 0.4", "inset: -14, fit: 0.4, ear: {width: 40, reach: 30}"));

    for (String side : List.of("roomLength", "roomWidth")) {
      assertThat(mm(ears, side) - mm(plain, side)).as(side).isBetween(0.0, 60.001);
    }
  }

  /** Foot 40 mm, all of the climb, and 6.2 + 1.6 + 1.4 mm of wood and track above it. */
  @Test
  void roomHeight_whereTheExitLeadClimbs_isItsEnd() throws Exception {
    Table figures = figures(HelixJob.TEXT);

    assertThat(mm(figures, "roomHeight")).isCloseTo(49.2 + mm(figures, "climb"), within(1e-9));
  }

  /** What lies below has to be there first: two layers on the same rods. */
  @Test
  void schedule_ofTwoLayers_laysTheLowerFirst() throws Exception {
    List<BedPiece> order =
        building(
                HelixJob.with(
                    "{plate: {length: 60, inset: 12, screws-each-side: 2}}", "two-layers"))
            .plan()
            .schedule()
            .rows()
            .stream()
            .map(ScheduleRow::piece)
            .toList();

    assertThat(order).anyMatch(piece -> piece.layer() == 2);
    for (BedPiece upper : order) {
      for (BedPiece lower : order) {
        if (lower.layer() < upper.layer()
            && lower.from() < upper.to() - 1e-6
            && upper.from() < lower.to() - 1e-6) {
          assertThat(order.indexOf(lower))
              .as(lower.number() + " under " + upper.number())
              .isLessThan(order.indexOf(upper));
        }
      }
    }
  }

  private static Building building(String text) throws Exception {
    Job job = JobReader.read(text, "helix.yaml");
    return Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true)
        .building()
        .orElseThrow();
  }

  private static Table figures(String text) throws Exception {
    return building(text).figures();
  }

  private static double mm(Table figures, String column) {
    return ((Length) figures.at(0, column)).millimetres();
  }
}
