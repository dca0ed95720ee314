package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.Assumption;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.piece.Drilled;
import curvestock.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HelixBlockTest {

  private static final SchemaJudge JUDGE = new SchemaJudge();

  private static HelixOrder order(String text) {
    return JobReader.read(text, "helix.yaml").structure().orElseThrow();
  }

  @Test
  void read_shortForm_isAPlainRing() {
    Job job = JobReader.read(BrokenJob.SOUND, "job.yaml");

    assertThat(job.structure()).isEmpty();
    assertThat(job.helix()).isPresent();
  }

  @Test
  void read_wholeHelix_givesAllThatItSays() {
    HelixSpec spec = order(HelixJob.TEXT).plan().spec();

    assertThat(spec.scale().name()).isEqualTo("N");
    assertThat(spec.ground().innerTrack().millimetres()).isEqualTo(330);
    assertThat(spec.ground().width().millimetres()).isCloseTo(70, within(1e-9));
    assertThat(spec.stack().plywood().millimetres()).isEqualTo(6.2);
    assertThat(spec.stack().aboveWood().millimetres()).isCloseTo(3, within(1e-9));
    assertThat(spec.ascent().risePerTurn()).contains(Length.ofMillimetres(60));
    assertThat(spec.construction()).isInstanceOf(Construction.ButtWithPlate.class);
    assertThat(spec.construction().hangsBelow().millimetres()).isEqualTo(6.2);
    assertThat(spec.supports().riser()).isInstanceOf(Riser.ThreadedRods.class);
    assertThat(spec.bottom().leadIn().millimetres()).isEqualTo(220);
    assertThat(spec.traffic().tallest()).contains(Length.ofMillimetres(30));
  }

  @Test
  void read_wholeHelix_keepsItsPlainRing() {
    Job job = HelixJob.read();

    assertThat(job.helix().orElseThrow().turns()).isEqualTo(2.25);
    assertThat(job.helix().orElseThrow().segment().degrees()).isEqualTo(60);
  }

  /** 13 joints by hand: 2.25 turns of sixths are 13 whole pieces and a half. */
  @Test
  void demands_wholeHelix_areDrilledRoadbedAndPlates() {
    Job job = HelixJob.read();

    assertThat(job.demands().stream().mapToInt(d -> d.count()).sum()).isEqualTo(14 + 13);
    assertThat(job.demands().get(0).piece().shape()).isInstanceOf(Drilled.class);
    assertThat(job.demands()).extracting(d -> d.piece().id()).contains("plate");
  }

  @Test
  void read_fieldsLeftOut_areAssumedAndNamed() {
    String bare =
        HelixJob.TEXT.replaceAll("(?m)^  (joint|heights|bottom|top|trains|prices):.*\\n", "");

    assertThat(order(bare).assumed())
        .extracting(Assumption::field)
        .contains(
            "joint",
            "joint.half-lap",
            "heights.rail",
            "bottom.vertical-curve",
            "top.lead-in",
            "trains.clearance-standard",
            "supports.rods.washer",
            "density");
  }

  @Test
  void read_fieldsStated_areNotAssumed() {
    assertThat(order(HelixJob.TEXT).assumed())
        .extracting(Assumption::field)
        .doesNotContain("joint", "heights.rail", "bottom.vertical-curve", "supports.per-turn");
  }

  /**
   * HO practice in proportion to the scales: 24 in × 87.0857 / 160, and 12 in × 87.0857 / 160 for
   * each per cent, rounded up to a millimetre, where that is more.
   */
  @Test
  void read_scaleN_takesHoPracticeToScale() {
    String bare = HelixJob.with("bottom: {vertical-curve: 300, ", "bottom: {");
    HelixPlan plan = order(bare).plan();

    double perCent = 12 * 87.0857 / 160;
    double asked = Math.max(2, plan.climb().grade().percent()) * perCent;
    assertThat(plan.spec().bottom().verticalCurve().inches())
        .isBetween(asked - 1e-9, asked + 1 / 25.4);
  }

  @Test
  void read_twoTracks_takesThePublishedSpacing() {
    String text =
        HelixJob.with("scale: N", "scale: H0")
            .replace("radius: 330", "radius: 610\n  tracks: 2")
            .replace("width: 70", "width: 150")
            .replace("tallest: 30", "tallest: 40");

    // NEM 112 (second hand): 55 mm from a radius of 600 mm in H0.
    assertThat(order(text).plan().spec().ground().trackSpacing().orElseThrow().millimetres())
        .isEqualTo(55);
  }

  @Test
  void read_base_isOneDemandMore() {
    Job plain = HelixJob.read();
    Job based = JobReader.read(HelixJob.with("turns:", "base: {form: octagon}\n  turns:"), "a");

    assertThat(based.demands()).hasSize(plain.demands().size() + 1);
    assertThat(based.demands()).extracting(d -> d.piece().id()).contains("base");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          scale: N                     | scale: NN                    | 11:10 | helix.scale | must be one of
          scale: N                     | entry: 0                     | 11:3  | helix.scale | is missing
          rise-per-turn: 60            | rise-per-turn: 60 km         | 15:18 | helix.rise-per-turn | km
          rise-per-turn: 60            | rise-per-trun: 60            | 15:3  | helix | did you mean "rise-per-turn"
          rise-per-turn: 60            | direction: left              | 15:14 | helix.direction | counter-clockwise
          rise-per-turn: 60            | entry: 12                    | 11:3  | helix | two of: turns, climb
          rise-per-turn: 60            | rise-per-turn: 60@climb: 500 | 11:3  | helix | contradict each other
          joint: {plate: {length: 60,  | joint: {plate: {length: -60, | 17:27 | helix.joint.plate.length | 0.1 mm
          joint: {plate: {length: 60,  | joint: {plates: {length: 60, | 17:11 | helix.joint | did you mean "plate"
          inset: 12, screws            | thickness: 3, screws         | 17:42 | helix.joint.plate.thickness | from-sheets: false
          underlay: 0                  | underlay: thick              | 18:23 | helix.heights.underlay | thick
          lead-in: 220}@  top          | lead-in: 220, easement: 900}@  top | 19:11 | helix.bottom | at least half the easement
          thread: M8                   | thread: M9                   | 24:20 | helix.supports.rods.thread | M10
          inset: 12, fit               | inset: -20, fit              | 24:11 | helix.supports.rods | inside the wood
          rods: {thread                | blocks: {}@    rods: {thread | 22:5  | helix.supports | both are given
          per-turn: 12                 | per-turn: 2                  | 22:15 | helix.supports.per-turn | 3 to 200
          nut: 0.05                    | nut: -1                      | 26:17 | helix.prices.nut | not negative
          nut: 0.05                    | nut: 90000000                | 26:17 | helix.prices.nut | at most 1000000
          opening: 500                 | longest: {height: 30, length: 100, width: 18, truck-centres: 120} | 25:44 | helix.trains.longest | at most the vehicle's length
          """)
  void read_badField_isLocated(String find, String put, String place, String path, String says) {
    String text =
        HelixJob.TEXT.replace(find.replace("@", "\n"), put.replace("@climb", "\n  climb"));
    text = text.replace("@", "\n");
    assertThat(text).isNotEqualTo(HelixJob.TEXT);
    String broken = text;
    JobException e =
        catchThrowableOfType(JobException.class, () -> JobReader.read(broken, "helix.yaml"));

    assertThat(e).as("a JobException for: %s", text).isNotNull();
    List<Problem> problems = e.problems();
    assertThat(problems).as("%s", problems).hasSize(1);
    Problem problem = problems.get(0);
    assertThat(problem.line() + ":" + problem.column()).isEqualTo(place);
    assertThat(problem.path()).isEqualTo(path);
    assertThat(problem.message()).contains(says);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          scale: N          | scale: NN
          scale: N          | entry: 0
          rise-per-turn: 60 | rise-per-trun: 60
          rise-per-turn: 60 | direction: left
          thread: M8        | thread: M9
          per-turn: 12      | per-turn: 2
          nut: 0.05         | nut: -1
          """)
  void schema_badFieldOfHelix_isRefused(String find, String put) throws Exception {
    assertThat(JUDGE.errors(HelixJob.TEXT)).isEmpty();
    assertThat(JUDGE.errors(HelixJob.with(find, put))).isNotEmpty();
  }
}
