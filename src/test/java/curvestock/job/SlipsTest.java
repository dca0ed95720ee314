package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What people write without thinking of the format, and what they are told. */
class SlipsTest {

  @ParameterizedTest
  @CsvSource({"5¼", "5-1/4", "5 1/4", "5.25"})
  void turns_asPeopleWriteThem_areRead(String turns) {
    Job job = JobReader.read(HelixJob.with("turns: 2 1/4", "turns: " + turns), "job.yaml");

    assertThat(job.structure().orElseThrow().plan().climb().turns()).isCloseTo(5.25, within(1e-9));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size: 800x1200 mm | size: 4 x 8 | did you mean feet? Then write \"4 x 8 ft\"",
        "radius: 330 | radius: 30 | helix.radius: 30 is smaller than half the roadbed's width (70)",
        "{nut: 0.05, washer: 0.03} | {nut: 0,05} | write the number with a point: nut: 0.05",
        "per-turn: 12 | per-turn: 12\\n    skip: [T12] | must be a support such as S12",
      })
  void slip_isExplained(String find, String put, String says) {
    String text = HelixJob.with(find, put.replace("\\n", "\n"));

    assertThatThrownBy(() -> JobReader.read(text, "job.yaml")).hasMessageContaining(says);
  }
}
