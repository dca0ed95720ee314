package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.job.JobReader;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Tools and consumables are named by what the steps of this job ask for. */
class HaveReadyTest {

  private static final String JOB =
      """
      curvestock: 2
      title: Ready (invented)
      invented: true
      units: in
      sheets: [{name: ply, size: 4x8 ft, thickness: 1/2, price: 68}]
      cutting: {kerf: 1/8, margin: 1/4}
      helix: {scale: HO, turns: 3, radius: 29, width: 4, rise-per-turn: 4 1/2,
              segments-per-turn: 4, joint: {half-lap: 2}, supports: {foot-height: 2}}
      """;

  private static String lines(String text) {
    var job = JobReader.read(text, "ready.yaml");
    Answer answer = Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true);
    return String.join("\n", new HaveReady(answer, job.cutting()).lines());
  }

  @Test
  void blocks_askForASawAndBits() {
    assertThat(lines(JOB))
        .contains("double-sided tape", "pencil", "clamps", "glue brush", "mitre saw", "3/16 in")
        .doesNotContain("wrenches");
  }

  /** Gaps for a laser are narrower than any router bit: common practice, no source. */
  @Test
  void narrowGaps_askForNoRouter() {
    assertThat(lines(JOB)).contains("router with a straight bit");
    assertThat(lines(JOB.replace("kerf: 1/8", "kerf: 0.01")))
        .contains("too narrow for a router bit")
        .doesNotContain("straight bit", "bearing bit");
  }

  /**
   * By hand: the lap in plywood of 0.242 in is 0.121 in each; a screw of less than 0.242 - 0.118 in
   * would not hold in the lower half, so none is advised.
   */
  @Test
  void thinLaps_takeNoScrews() {
    assertThat(
            fixing(
                JOB.replace("thickness: 1/2", "thickness: 0.242")
                    .replace("foot-height: 2", "foot-height: 2, per-turn: 9")))
        .contains("Use no screws");
    assertThat(fixing(JOB)).doesNotContain("Use no screws");
  }

  /**
   * The plate's holes are wide enough for the screw to pass, so it goes up and bites the roadbed.
   */
  @Test
  void screwsOfPlates_goUpThroughThePlate() {
    String plates = JOB.replace("joint: {half-lap: 2}", "joint: {plate: {}}");

    assertThat(fixing(plates))
        .contains(
            "No. 6", "up through it", "more up from below", "Drill the holes that the layouts show")
        .doesNotContain("The layouts have no screw holes");
  }

  /**
   * 12 supports and 4 pieces a turn put every joint on a block of 1 1/2 in: a screw on the line of
   * the support would go down the seam.
   */
  @Test
  void buttJointOnABlock_takesAScrewIntoEachPiece() {
    String plates =
        JOB.replace("joint: {half-lap: 2}", "joint: {plate: {}}")
            .replace("foot-height: 2", "foot-height: 2, per-turn: 12");

    assertThat(fixing(plates))
        .contains("drive two, one down through each piece, 3/8 in from the seam");
    assertThat(fixing(JOB)).doesNotContain("from the seam");
  }

  private static String fixing(String text) {
    var job = JobReader.read(text, "ready.yaml");
    Answer answer = Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true);
    return String.join(
        " ", new FixingWords(answer.building().orElseThrow(), answer.figures()).all());
  }

  @Test
  void rods_askForAHacksawAndWrenches() {
    assertThat(lines(JOB.replace("foot-height: 2", "per-turn: 12, rods: {thread: 1/4-20}")))
        .contains("hacksaw", "wrenches", "safety glasses")
        .doesNotContain("mitre saw", "countersink");
  }
}
