package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Which command lines ask the same. */
class AskedTest {

  private static Asked asked(String line) {
    return Asked.of(List.of(line.split(" "))).orElseThrow();
  }

  @ParameterizedTest
  @CsvSource({
    "plan job.yaml --out one, plan job.yaml --out two",
    "plan job.yaml --out one, plan job.yaml --out=two",
    "plan job.yaml --out one, plan job.yaml --out one --force --quiet",
    "helix, helix --quiet"
  })
  void lines_thatDifferInWhereTheAnswerGoes_askTheSame(String one, String other) {
    assertThat(asked(one).key()).isEqualTo(asked(other).key());
  }

  @ParameterizedTest
  @CsvSource({
    "plan job.yaml, plan job.yaml --out one",
    "plan job.yaml, plan other.yaml",
    "plan job.yaml, helix job.yaml",
    "plan job.yaml, plan job.yaml --details",
    "plan job.yaml --seed 1, plan job.yaml --seed 2",
    "plan job.yaml --effort quick, plan job.yaml --effort normal",
    "packet --out o --paper a4, packet --out o --paper a3"
  })
  void lines_thatDifferInTheAnswer_askForDifferentThings(String one, String other) {
    assertThat(asked(one).key()).isNotEqualTo(asked(other).key());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "plan --debug",
        "plan --no-cache",
        "plan --no-cache=true",
        "plan --force=false --out o",
        "plan --out",
        "plan --out --force",
        "plan --out one --out two",
        "plan --out=one --out two",
        "plan --seed 1 --seed 2",
        "plan @words.txt",
        "plan -- --out",
        "check folder",
        "serve",
        "--version"
      })
  void line_thatAsksForTheWork_orIsNotPlain_isWorkedOutEachTime(String line) {
    assertThat(Asked.of(List.of(line.split(" ")))).isEmpty();
  }

  @Test
  void line_tellsWhereTheAnswerGoes() {
    Asked asked = asked("plan --out=a/b --force job.yaml");

    assertThat(asked.out()).contains(Path.of("a/b"));
    assertThat(asked.force()).isTrue();
    assertThat(asked.quiet()).isFalse();
    assertThat(asked.key()).containsExactly("plan", "--out", "job.yaml");
    assertThat(Asked.of(List.of("plan", "--out", " "))).isEmpty();
    assertThat(Asked.of(List.of())).isEmpty();
  }
}
