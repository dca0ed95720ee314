package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.verdict.Rule;
import curvestock.report.JobReference;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** README and guide: links lead somewhere, commands are ours, lists are whole. */
class DocumentationTest {

  private static final Path GUIDE = Path.of("src/site/guide");
  private static final int ONE_SCREENFUL = 150;

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
  private static final Pattern COMMAND = Pattern.compile("^(?: {4})?curvestock ([a-z][^#>`]*)");

  static Stream<Path> pages() throws IOException {
    try (Stream<Path> guide = Files.list(GUIDE)) {
      List<Path> pages = new ArrayList<>(guide.sorted().toList());
      pages.add(Path.of("README.md"));
      pages.add(Path.of("DEVELOPERS.md"));
      return pages.stream();
    }
  }

  @Test
  void readme_isOneScreenful() throws IOException {
    assertThat(Files.readAllLines(Path.of("README.md"))).hasSizeLessThanOrEqualTo(ONE_SCREENFUL);
  }

  /** What README and guide tell of the built-in job is what the program says of it. */
  @Test
  void figuresOfTheExample_areThoseOfTheProgram() throws IOException {
    String guide = words(GUIDE.resolve("README.md"));
    String rules = words(GUIDE.resolve("helix-rules.md"));
    String plan = CommandRun.of("plan", "--quiet").out();
    assertThat(plan).contains("15 x R2");
    assertThat(guide)
        .contains("Fifteen quarters fit on the first", offcutOfTheSecondSheet(plan))
        .contains("2 sheets, $136.00 and 15 joints");
    assertThat(plan).contains("Buy 2 sheets", "$136.00");

    String helix = CommandRun.of("helix", "--quiet", "--no-sheets", "--details").out();
    assertThat(helix).contains("4.054 in - 0.476 plywood - 0.187 underlay - 0.07 ties - 0.1 rail");
    assertThat(helix).contains("= 3.22 in clear", "grade 2.48 %", "135 riser blocks and 7 braces");
    assertThat(helix).contains("24 of 25 checks pass", "edge strip between S11 and S1");
    assertThat(rules).contains("4.054 in per turn", "2.48 %", "3.22 in of clearance");
    assertThat(rules).contains("0.476 in of plywood, 0.187 in of underlay, 0.07 in of ties");
    assertThat(rules).contains("24 of 25 checks pass", "135 riser blocks");
    assertThat(helix.replaceAll("\\s+", " "))
        .contains(
            "13 5/8 in apart along the centre line (rule of thumb for plywood this thick: 12 in to 16 in");
    assertThat(rules).contains("12 to 16 in for 1/2 in plywood");
  }

  /**
   * An ordinary segment is as long as the chord of its outer edge, 2 R sin(angle / 2): geometry of
   * a circle. Each is longer than its part of the turn by the angle of a half-lap of 2 in.
   */
  @Test
  void lengthsOfOrdinarySegments_areTheirChords() throws IOException {
    double lap = Math.toDegrees(2.0 / 26);
    double outer = 28.25;
    assertThat(2 * outer * Math.sin(Math.toRadians((120 + lap) / 2))).isCloseTo(50, within(0.25));
    assertThat(2 * outer * Math.sin(Math.toRadians((90 + lap) / 2))).isCloseTo(41.5, within(0.25));
    for (Path page : List.of(Path.of("README.md"), GUIDE.resolve("README.md"))) {
      assertThat(words(page)).contains("about 50 in long").contains("about 41 1/2 in");
    }
  }

  private static String words(Path page) throws IOException {
    return Files.readString(page).replaceAll("\\s+", " ");
  }

  private static String offcutOfTheSecondSheet(String plan) {
    Matcher offcut = Pattern.compile("1 x R3 .* % +(\\d.* in)").matcher(plan);
    assertThat(offcut.find()).as(plan).isTrue();
    return offcut.group(1);
  }

  @ParameterizedTest
  @MethodSource("pages")
  void links_leadSomewhere(Path page) throws IOException {
    Matcher link = LINK.matcher(Files.readString(page));
    Path folder = page.toAbsolutePath().getParent();
    while (link.find()) {
      assertThat(folder.resolve(link.group(1))).as("%s in %s", link.group(1), page).exists();
    }
  }

  @Test
  void readme_leadsToEveryPageOfTheGuide() throws IOException {
    String all = "";
    for (Path page : pages().toList()) {
      all += Files.readString(page);
    }
    for (Path page : pages().toList()) {
      assertThat(all).contains(page.getFileName().toString());
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void commands_areTakenAsTheyStand(Path page) throws IOException {
    for (String line : Files.readAllLines(page)) {
      Matcher command = COMMAND.matcher(line);
      if (command.find()) {
        List<String> words = new ArrayList<>(Arrays.asList(command.group(1).strip().split("\\s+")));
        words.add("--help");
        CommandRun run = CommandRun.of(words.toArray(String[]::new));
        assertThat(run.code()).as("%s in %s: %s", line, page, run.err()).isZero();
      }
    }
  }

  /** Made anew by {@code curvestock schema --reference}. */
  @Test
  void jobReference_isThatOfTheSchema() throws IOException {
    assertThat(GUIDE.resolve("job-reference.md")).content().isEqualTo(JobReference.text());
  }

  @Test
  void helixRules_nameEveryRule() throws IOException {
    String text = Files.readString(GUIDE.resolve("helix-rules.md"));
    for (Rule rule : Rule.values()) {
      assertThat(text).contains("| " + rule.title() + " |");
    }
  }
}
