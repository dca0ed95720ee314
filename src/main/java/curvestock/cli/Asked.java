package curvestock.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A command line, told apart into what decides the answer and what says where it goes. Whatever is
 * not plainly understood here is not told apart, and is worked out each time.
 *
 * @param key the command and its options, but for those below
 * @param out the folder to write to
 * @param force whether it may be replaced
 * @param quiet whether to leave out all but the answer
 */
record Asked(List<String> key, Optional<Path> out, boolean force, boolean quiet) {

  private static final Set<String> COMMANDS = Set.of("plan", "helix", "compare", "packet");
  private static final String OUT = "--out";
  private static final String FORCE = "--force";
  private static final String QUIET = "--quiet";

  /** Those that ask for the work itself, and those that are written in a way of their own. */
  private static final List<String> NEVER =
      List.of("--debug", "--no-cache", OUT, FORCE, QUIET, "@");

  /** The command line; nothing if its answer is not to be kept, or no longer kept one given. */
  static Optional<Asked> of(List<String> arguments) {
    if (arguments.isEmpty() || !COMMANDS.contains(arguments.get(0))) {
      return Optional.empty();
    }
    List<String> key = new ArrayList<>();
    Set<String> options = new HashSet<>();
    Optional<Path> out = Optional.empty();
    for (int i = 0; i < arguments.size(); i++) {
      String word = arguments.get(i);
      String name = word.startsWith(OUT + "=") ? OUT : word;
      if (name.startsWith("--") && (name.length() == 2 || !options.add(name))) {
        return Optional.empty();
      }
      if (name.equals(OUT)) {
        boolean follows = word.equals(OUT);
        i += follows ? 1 : 0;
        out = i < arguments.size() ? folder(follows ? arguments.get(i) : value(word)) : out;
        if (out.isEmpty()) {
          return Optional.empty();
        }
        key.add(OUT);
      } else if (!name.equals(FORCE) && !name.equals(QUIET)) {
        if (isNever(name)) {
          return Optional.empty();
        }
        key.add(word);
      }
    }
    return Optional.of(new Asked(key, out, options.contains(FORCE), options.contains(QUIET)));
  }

  private static boolean isNever(String word) {
    for (String never : NEVER) {
      if (word.startsWith(never)) {
        return true;
      }
    }
    return false;
  }

  private static String value(String word) {
    return word.substring(OUT.length() + 1);
  }

  private static Optional<Path> folder(String name) {
    try {
      return name.isBlank() || name.startsWith("-") ? Optional.empty() : Optional.of(Path.of(name));
    } catch (InvalidPathException refused) {
      return Optional.empty();
    }
  }
}
