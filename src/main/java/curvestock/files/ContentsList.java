package curvestock.files;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The file in a result folder that names all its files. By it a folder is known as ours, and a file
 * that someone else put there as not ours.
 */
final class ContentsList {

  static final String NAME = "contents.txt";

  private static final String HEADER = "# A Curvestock result is made of these files:";

  private ContentsList() {}

  static String of(Collection<String> paths) {
    return paths.stream().sorted().collect(Collectors.joining("\n", HEADER + "\n", "\n"));
  }

  /** The paths of a list, its own among them; empty if the text is no such list. */
  static Optional<Set<String>> read(String text) {
    List<String> lines = text.lines().toList();
    if (lines.isEmpty() || !lines.get(0).equals(HEADER)) {
      return Optional.empty();
    }
    Set<String> paths = new TreeSet<>(lines.subList(1, lines.size()));
    paths.add(NAME);
    return Optional.of(paths);
  }
}
