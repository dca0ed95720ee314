package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The options of {@code compare}, on an invented bit of a ring whose pieces fill their panels, so
 * that nothing is searched for.
 */
class CompareCommandTest {

  private static final String RING =
      """
      curvestock: 1
      title: Small ring (invented)
      invented: true
      units: in
      currency: $
      sheets:
        - {name: panel, size: 5.5 x 3.8, thickness: 1/2, price: 4}
      cutting: {kerf: 1/8, margin: 1/4}
      helix: {turns: 1/6, radius: 8, width: 3, segment-angle: 30}
      search: {seed: 1, effort: quick}
      """;

  @TempDir private Path folder;
  private String job;

  @BeforeEach
  void writeJob() throws IOException {
    Path file = folder.resolve("ring.yaml");
    Files.writeString(file, RING);
    job = file.toString();
  }

  @Test
  void angles_givenAsDegrees_areTheChoicesCompared() {
    CommandRun run = CommandRun.of("compare", job, "--quiet", "--angles", "30,20");

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("1/12 (30°)", "1/18 (20°)").doesNotContain("1/8 (45°)");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void fractions_givenAsParts_areTheChoicesCompared() {
    CommandRun run = CommandRun.of("compare", job, "--quiet", "--fractions", "1/12, 1/18");

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("1/12 (30°)", "1/18 (20°)").doesNotContain("1/8 (45°)");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "--angles 30 --fractions 1/12| mutually exclusive",
        "--fractions 0.25            | is not a part of a turn",
        "--fractions 1/0             | is not a part of a turn",
        "--angles 0.5                | must be from 1° to 360°",
        "--angles ninety             | ninety",
        "--with-sheets -1            | must not be negative",
        "--with-sheets two           | is not an int",
        "--effort mild               | mild",
        "--seed x                    | must be 0 or a whole number above it"
      })
  void option_thatCannotBe_isRefusedWithTheReason(String options, String reason) {
    String[] given = options.split(" ", -1);
    String[] args = new String[given.length + 2];
    args[0] = "compare";
    args[1] = job;
    System.arraycopy(given, 0, args, 2, given.length);

    CommandRun run = CommandRun.of(args);

    assertThat(run.code()).isEqualTo(Main.WRONG_INPUT);
    assertThat(run.err()).contains(reason);
    assertThat(run.out()).isEmpty();
  }

  @Test
  void out_named_getsTableDataAndChart_andIsKeptWithoutForce() {
    String out = folder.resolve("result").toString();

    CommandRun first = CommandRun.of("compare", job, "--quiet", "--angles", "30", "--out", out);
    assertThat(first.code()).as(first.err()).isZero();
    assertThat(folder.resolve("result/compare.txt")).exists();
    assertThat(folder.resolve("result/compare.json")).content().contains("\"seed\" : 1");
    assertThat(folder.resolve("result/charts/choices.png")).exists();

    CommandRun refused = CommandRun.of("compare", job, "--quiet", "--angles", "30", "--out", out);
    assertThat(refused.code()).isEqualTo(Main.WRONG_INPUT);
    assertThat(refused.err()).contains("not empty", "--force");

    CommandRun forced =
        CommandRun.of(
            "compare", job, "--quiet", "--angles", "30", "--out", out, "--force", "--seed", "5");
    assertThat(forced.code()).as(forced.err()).isZero();
    assertThat(folder.resolve("result/compare.json")).content().contains("\"seed\" : 5");
  }

  @Test
  void scan_asked_namesTheBestAngleOfAll() {
    CommandRun run = CommandRun.of("compare", job, "--quiet", "--angles", "30", "--scan");

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("All angles from 30° to 180°", "Most turns from one sheet:");
  }

  @Test
  void withSheets_asked_saysHowManyTurnsTheyGive() {
    CommandRun run =
        CommandRun.of("compare", job, "--quiet", "--angles", "30", "--with-sheets", "2");

    assertThat(run.code()).isZero();
    assertThat(run.out()).contains("With 2 sheets of panel", "turns");
  }

  @Test
  void progress_withoutQuiet_showsFirstNumbersBeforeTheAnswer() {
    CommandRun run = CommandRun.of("compare", job, "--angles", "30");

    assertThat(run.err()).contains("Quick count", "the cost follow");
    assertThat(run.out()).doesNotContain("Quick count");
  }

  @Test
  void jobs_several_areComparedTogether_andPlannedTogether() throws IOException {
    Path other = folder.resolve("other.yaml");
    Files.writeString(other, RING.replace("Small ring", "Other ring"));
    String out = folder.resolve("both").toString();

    CommandRun compared =
        CommandRun.of("compare", job, other.toString(), "--quiet", "--angles", "30,20");
    CommandRun planned = CommandRun.of("plan", job, other.toString(), "--quiet", "--out", out);

    assertThat(compared.code()).as(compared.err()).isZero();
    assertThat(compared.out()).contains("All jobs together", "each its own best", "Other ring");
    assertThat(planned.code()).as(planned.err()).isZero();
    assertThat(planned.out())
        .containsPattern("B +Other ring \\(invented\\) +2 +50.0 % +\\$8.00 +3-4");
    assertThat(folder.resolve("both/sheets/sheet-04.svg")).content().contains("B.S-2");
    CommandRun checked =
        CommandRun.of(
            "check",
            out + "/sheets/sheet-04-cut.svg",
            "--partial",
            "--job",
            job,
            "--job",
            other.toString());
    assertThat(checked.code()).as(checked.out()).isZero();
    CommandRun whole = CommandRun.of("check", out);
    assertThat(whole.code()).as(whole.out() + whole.err()).isZero();
    assertThat(whole.out()).contains("cut files (SVG), 4 files: complete, ");
  }

  @Test
  void jobs_cutInOtherWays_areRefused() throws IOException {
    Path other = folder.resolve("other.yaml");
    Files.writeString(other, RING.replace("kerf: 1/8", "kerf: 1/16"));

    CommandRun run = CommandRun.of("plan", job, other.toString());

    assertThat(run.code()).isEqualTo(Main.WRONG_INPUT);
    assertThat(run.err()).contains("must be cut alike");
  }

  @ParameterizedTest
  @CsvSource({
    "10, 0.5, (about 10 s to go)",
    "45, 0.9, (about 5 s to go)",
    "9, 0.9, ''",
    "60, 0.25, (about 3 min to go)"
  })
  void estimate_goesOnAsUntilNow(double seconds, double share, String words) {
    assertThat(Terminal.estimate(seconds, share).strip()).isEqualTo(words);
  }
}
