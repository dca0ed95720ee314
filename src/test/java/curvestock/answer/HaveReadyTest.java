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
    return String.join("\n", new HaveReady(answer).lines());
  }

  @Test
  void blocks_askForASawAndBits() {
    assertThat(lines(JOB))
        .contains("double-sided tape", "pencil", "clamps", "glue brush", "mitre saw", "3/16 in")
        .doesNotContain("wrenches");
  }

  @Test
  void rods_askForAHacksawAndWrenches() {
    assertThat(lines(JOB.replace("foot-height: 2", "per-turn: 12, rods: {thread: 1/4-20}")))
        .contains("hacksaw", "wrenches", "safety glasses")
        .doesNotContain("mitre saw", "countersink");
  }
}
