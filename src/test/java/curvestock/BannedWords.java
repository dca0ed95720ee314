package curvestock;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Words that no text for users holds: {@code banned-words.txt}, and what a number is measured in
 * that the job does not measure in.
 */
public final class BannedWords {

  static final Path LIST = Path.of("src/test/resources/curvestock/banned-words.txt");

  private static final Pattern BANNED = banned();
  private static final Pattern METRIC = Pattern.compile("\\d (?:mm|cm|m|kg|g|kg/m³)(?![\\w²³])");
  private static final Pattern IMPERIAL = Pattern.compile("\\d (?:in|ft|lb|oz|lb/ft³)(?![\\w²³])");

  private BannedWords() {}

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

  /** Each banned word with what stands around it. */
  public static List<String> in(String text) {
    return found(BANNED, text);
  }

  /** Each figure in a unit of the other system. */
  public static List<String> otherUnits(boolean imperial, String text) {
    return found(imperial ? METRIC : IMPERIAL, text);
  }

  private static List<String> found(Pattern pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      int from = Math.max(0, matcher.start() - 40);
      int to = Math.min(text.length(), matcher.end() + 40);
      found.add("..." + text.substring(from, to).replace('\n', ' ') + "...");
    }
    return found;
  }
}
