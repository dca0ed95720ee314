package curvestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The banned words ({@code banned-words.txt}) stand in no text that a user can meet: string
 * literals of the code, the page, the schema, demo jobs, README and guide.
 */
class WordsTest {

  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|^\\s*//[^\\n]*", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern LITERAL =
      Pattern.compile("\"\"\".*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"", Pattern.DOTALL);
  private static final Pattern GLUED = Pattern.compile("\"\\s*\\+\\s*\"");

  private static List<Path> files(String folder, String... endings) throws IOException {
    try (Stream<Path> files = Files.walk(Path.of(folder))) {
      return files
          .filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
          .filter(file -> !file.toString().contains("vendor"))
          .sorted()
          .toList();
    }
  }

  private static List<String> found(Path file, String text) {
    return BannedWords.in(text).stream().map(words -> file + ": " + words).toList();
  }

  @Test
  void literals_holdNoBannedWord() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : files("src/main/java", ".java")) {
      String code = COMMENT.matcher(Files.readString(file)).replaceAll("");
      // A sentence that is broken over two lines is one sentence.
      Matcher literal = LITERAL.matcher(GLUED.matcher(code).replaceAll(""));
      while (literal.find()) {
        found.addAll(found(file, literal.group()));
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void pageSchemaAndJobs_holdNoBannedWord() throws IOException {
    List<String> found = new ArrayList<>();
    List<Path> files = new ArrayList<>(files("src/main/resources", ".js", ".html", ".json"));
    files.addAll(files("demo-data", ".yaml"));
    for (Path file : files) {
      found.addAll(found(file, COMMENT.matcher(Files.readString(file)).replaceAll("")));
    }
    assertThat(found).isEmpty();
  }

  @Test
  void readmeAndGuide_holdNoBannedWord() throws IOException {
    List<String> found = new ArrayList<>();
    List<Path> files = new ArrayList<>(files("src/site/guide", ".md"));
    files.add(Path.of("README.md"));
    files.add(Path.of("src/site/CHANGELOG.md"));
    for (Path file : files) {
      found.addAll(found(file, Files.readString(file)));
    }
    assertThat(found).isEmpty();
  }

  /** What the commands and their help print of the built-in job, word for word. */
  @Test
  void outputsAndHelp_holdNoBannedWord() throws IOException {
    List<String> found = new ArrayList<>();
    for (Path file : files("src/test/resources/curvestock/golden", ".txt")) {
      found.addAll(found(file, Files.readString(file).replaceAll("\\s+", " ")));
    }
    assertThat(found).isEmpty();
  }

  /** {@code formatted} writes numbers in the digits of the machine's country; texts do not. */
  @Test
  void formattedSentences_takeNumbersAsTexts() throws IOException {
    Pattern numbers =
        Pattern.compile(
            "\"(?:[^\"\\\\\\n]|\\\\.)*%[-+0-9.,]*[dfeg](?:[^\"\\\\\\n]|\\\\.)*\"\\s*\\)?\\s*\\.formatted\\(");
    List<String> found = new ArrayList<>();
    for (Path file : files("src/main/java", ".java")) {
      Matcher matcher = numbers.matcher(GLUED.matcher(Files.readString(file)).replaceAll(""));
      while (matcher.find()) {
        found.add(file + ": " + matcher.group());
      }
    }
    assertThat(found).isEmpty();
  }

  @Test
  void list_catchesWhatItNames() {
    assertThat(found(BannedWords.LIST, "Something is to be Mended first")).hasSize(1);
    assertThat(
            found(BannedWords.LIST, "recommended amendments").toString().toLowerCase(Locale.ROOT))
        .isEqualTo("[]");
  }
}
