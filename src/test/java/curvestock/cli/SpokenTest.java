package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What each command says of the built-in job, word for word: one file a command in {@code
 * src/test/resources/curvestock/golden}. Whoever changes the words on purpose writes the files anew
 * by {@code mvn -q test -Dtest=SpokenTest -Dcurvestock.golden=write} and reads the difference.
 */
class SpokenTest {

  private static final Path GOLDEN = Path.of("src/test/resources/curvestock/golden");
  private static final boolean WRITE = "write".equals(System.getProperty("curvestock.golden"));
  private static final int SCREEN = 25;
  private static final int WIDTH = 100;
  private static final Pattern BLOCK =
      Pattern.compile("(?m)^```\\n(\\w+ \\(\\d+°\\) come out best.*?)^```$", Pattern.DOTALL);

  @TempDir private Path folder;

  private void requireSame(String name, String said) throws IOException {
    String general = said.replace(folder.toString(), "DIR");
    Path file = GOLDEN.resolve(name + ".txt");
    if (WRITE) {
      Files.writeString(file, general);
    }
    assertThat(general).isEqualTo(Files.readString(file));
  }

  private static String run(String... words) {
    CommandRun run = CommandRun.of(words);
    assertThat(run.code()).as(run.err()).isZero();
    return run.out();
  }

  @Test
  void planThenCheck_sayTheDecisionOnOneScreen() throws IOException {
    String out = folder.resolve("out").toString();
    String plan = run("plan", "--effort", "quick", "--quiet", "--out", out);

    requireSame("plan", plan);
    assertThat(plan.lines()).hasSizeLessThanOrEqualTo(SCREEN);
    assertThat(plan).contains("Caution: ");
    requireSame("check", run("check", out));
    requireSame(
        "plan-details", Files.readString(Path.of(out, "summary.txt"), StandardCharsets.UTF_8));
  }

  @Test
  void helix_saysTheDecisionOnOneScreen() throws IOException {
    String helix = run("helix", "--quiet");

    requireSame("helix", helix);
    assertThat(helix.lines()).hasSizeLessThanOrEqualTo(SCREEN);
    requireSame("helix-details", run("helix", "--quiet", "--no-sheets", "--details"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"boathouse-spiral", "brewery-oval", "orchard-climb", "../foundry-oval"})
  void helix_ofADemoJob_fitsOneScreen(String job) {
    String helix = run("helix", "demo-data/helix/" + job + ".yaml", "--quiet", "--effort", "quick");

    assertThat(helix.lines()).as(helix).hasSizeLessThanOrEqualTo(SCREEN);
    assertThat(helix.lines()).allMatch(line -> line.length() <= WIDTH);
    assertThat(helix).contains("Caution: ").doesNotContainPattern(KEY_PATH);
  }

  /** A key of a job file is for whoever edits it, with the details. */
  private static final Pattern KEY_PATH =
      Pattern.compile("\\b[a-z]{3,}\\.[a-z]+-?[a-z]*\\b(?<!yaml|png)");

  /** The README shows the decision and the table as they are. */
  @Test
  void compare_saysTheDecisionOnOneScreen() throws IOException {
    String out = folder.resolve("out").toString();
    String brief = run("compare", "--quiet", "--out", out);

    requireSame("compare", brief);
    requireSame(
        "compare-details", Files.readString(Path.of(out, "compare.txt"), StandardCharsets.UTF_8));
    assertThat(brief.lines()).hasSizeLessThanOrEqualTo(SCREEN);
    assertThat(brief.lines()).allMatch(line -> line.length() <= WIDTH);
    Matcher shown = BLOCK.matcher(Files.readString(Path.of("README.md")));
    assertThat(shown.find()).isTrue();
    assertThat(brief.lines().toList()).containsAll(shown.group(1).lines().toList());
  }

  @Test
  void help_ofEveryCommand() throws IOException {
    String help =
        Stream.of(
                "", "plan", "helix", "compare", "packet", "check", "schema", "serve", "completion")
            .map(name -> name.isEmpty() ? List.of("--help") : List.of(name, "--help"))
            .map(words -> run(words.toArray(String[]::new)))
            .collect(Collectors.joining("\n"));

    requireSame("help", help);
  }
}
