package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.job.Job;
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
    Answer answer = Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true);

    assertThat(new HelixWords(answer.building().orElseThrow(), answer.figures()).size())
        .anySatisfy(
            line ->
                assertThat(line)
                    .isEqualTo(
                        "Floor space 57 in across, or 60 1/2 x 60 1/2 in with the leads; 47 1/2 in"
                            + " clear inside. Allow standing room around it. The highest rail is"
                            + " 24 61/64 in above the base, the roof of the tallest train 27 47/64 in."));
  }
}
