package curvestock.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One run of the command line in this machine.
 *
 * @param code exit code
 * @param out what it printed
 * @param err what it complained of
 */
record CommandRun(int code, String out, String err) {

  static CommandRun of(String... args) {
    return of("off", args);
  }

  /** With results kept in this folder, and taken from there. */
  static CommandRun keptIn(Path cache, String... args) {
    try {
      return of(cache.toString(), args);
    } finally {
      System.setProperty("curvestock.cache", "off");
    }
  }

  private static CommandRun of(String cache, String... args) {
    System.setProperty("curvestock.cache", cache);
    PrintStream out = System.out;
    PrintStream err = System.err;
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    ByteArrayOutputStream complained = new ByteArrayOutputStream();
    try {
      System.setOut(new PrintStream(said, true, StandardCharsets.UTF_8));
      System.setErr(new PrintStream(complained, true, StandardCharsets.UTF_8));
      int code = Outcome.ofEarlier(args).orElseGet(() -> Main.run(args));
      return new CommandRun(
          code, said.toString(StandardCharsets.UTF_8), complained.toString(StandardCharsets.UTF_8));
    } finally {
      System.setOut(out);
      System.setErr(err);
    }
  }

  /** The files of a folder by their paths in it. */
  static SortedMap<String, byte[]> contents(Path folder) throws IOException {
    SortedMap<String, byte[]> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return contents;
  }
}
