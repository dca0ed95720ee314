package curvestock;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The banned words ({@code banned-words.txt}) stand in no text that a user can meet: string
 * literals of the code, the page, the schema, demo jobs, README and guide.
 */
class WordsTest {

  private static final Path LIST = Path.of("src/test/resources/curvestock/banned-words.txt");
  private static final Pattern COMMENT =
      Pattern.compile("/\\*.*?\\*/|^\\s*//[^\\n]*", Pattern.DOTALL | Pattern.MULTILINE);
  private static final Pattern LITERAL =
      Pattern.compile("\"\"\".*?\"\"\"|\"(?:[^\"\\\\\\n]|\\\\.)*\"", Pattern.DOTALL);
  private static final Pattern GLUED = Pattern.compile("\"\\s*\\+\\s*\"");

  private static final Pattern BANNED = banned();

  private static Pattern banned() {
    try (Stream<String> lines = Files.lines(LIST)) {
      return Pattern.compile(
          lines
              .filter(line -> !line.startsWith("#"))
              .map(line -> Pattern.quote(line.substring(0, line.indexOf('|')).strip()))
              .collect(Collectors.joining("|", "\\b(", ")\\b")),
          Pattern.CASE_INSENSITIVE);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

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
    List<String> found = new ArrayList<>();
    Matcher banned = BANNED.matcher(text);
    while (banned.find()) {
      int from = Math.max(0, banned.start() - 40);
      int to = Math.min(text.length(), banned.end() + 40);
      found.add(file + ": ..." + text.substring(from, to).replace('\n', ' ') + "...");
    }
    return found;
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
    for (Path file : files) {
      found.addAll(found(file, Files.readString(file)));
    }
    assertThat(found).isEmpty();
  }

  @Test
  void list_catchesWhatItNames() {
    assertThat(found(LIST, "Something is to be Mended first")).hasSize(1);
    assertThat(found(LIST, "recommended amendments").toString().toLowerCase(Locale.ROOT))
        .isEqualTo("[]");
  }
}
