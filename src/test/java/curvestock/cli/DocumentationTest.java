package curvestock.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
