package curvestock.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Lines of a long run, kept in {@code target/bench}: a run that was broken off goes on where it
 * stopped. Of another engine, or asked for other things, it begins anew.
 */
final class Journal {

  private static final Path FOLDER = Path.of("target", "bench");

  private final Path file;
  private final Map<String, List<String>> lines = new LinkedHashMap<>();

  private Journal(Path file) {
    this.file = file;
  }

  /**
   * The journal of that name, with what it holds of that engine and the same question.
   *
   * @param asked whatever the lines hang on besides the engine
   */
  static Journal open(Engine engine, String name, String asked) throws IOException {
    String first = "# " + engine + "; " + asked;
    Files.createDirectories(FOLDER);
    Journal journal = new Journal(FOLDER.resolve(name + ".txt"));
    List<String> kept = Files.exists(journal.file) ? Files.readAllLines(journal.file) : List.of();
    if (kept.isEmpty() || !kept.get(0).equals(first)) {
      Files.writeString(journal.file, first + "\n");
      return journal;
    }
    for (String line : kept.subList(1, kept.size())) {
      List<String> cells = List.of(line.split("\t", -1));
      journal.lines.put(cells.get(0), cells.subList(1, cells.size()));
    }
    return journal;
  }

  /** What was noted under this key. */
  Optional<List<String>> line(String key) {
    return Optional.ofNullable(lines.get(key));
  }

  /** Notes a line; neither key nor cells may hold tabs or line ends. */
  void note(String key, List<String> cells) throws IOException {
    lines.put(key, List.copyOf(cells));
    Files.writeString(
        file, key + "\t" + String.join("\t", cells) + "\n", StandardOpenOption.APPEND);
  }
}
