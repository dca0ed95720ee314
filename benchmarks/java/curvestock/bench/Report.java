package curvestock.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/**
 * A report as Markdown, written anew after each change of it, so that a broken run leaves what it
 * has. Its first lines say which engine was measured, by which yardstick, and what the run was
 * asked for; until {@link #finish} a line says that it is not finished.
 */
final class Report {

  /** {@code reports.sh} makes a report again that has this line. */
  private static final String UNFINISHED = "**Not finished: broken off, or still running.**";

  private final Path file;
  private final String head;
  private final StringBuilder body = new StringBuilder();
  private boolean finished;

  /**
   * A report on the packing engine.
   *
   * @param asked effort, seed and whatever else the run was asked for, as a sentence without its
   *     stop
   */
  Report(Path file, String title, String asked) {
    this(file, Engine.packing(), title, asked);
  }

  Report(Path file, Engine engine, String title, String asked) {
    this.file = file;
    this.head = head(engine, title, asked);
  }

  /**
   * Prints the head alone, for reports that scripts write, on the whole program.
   *
   * @param args title; what was asked for
   */
  public static void main(String[] args) {
    System.out.print(head(Engine.program(), args[0], args[1]));
  }

  /** Title, engine, yardstick, what was asked for, machine. Measures the yardstick. */
  static String head(Engine engine, String title, String asked) {
    return String.format(
        Locale.ROOT,
        "# %s%n%n%s; calibrator %.2f s; %s; %s.%n%n",
        title,
        engine,
        Calibrator.seconds(),
        asked,
        machine());
  }

  private static String machine() {
    int processors = Runtime.getRuntime().availableProcessors();
    return String.join(
        ", ",
        processors == 1 ? "1 processor" : processors + " processors",
        "Java " + System.getProperty("java.version"),
        System.getProperty("os.name") + " " + System.getProperty("os.arch"));
  }

  /** Adds a line, formatted if there are values. */
  void line(String form, Object... values) throws IOException {
    String line = values.length == 0 ? form : String.format(Locale.ROOT, form, values);
    body.append(line).append('\n');
    System.out.println(line);
    write();
  }

  /** Puts this below the head in place of all that was there. */
  void body(String text) throws IOException {
    body.setLength(0);
    body.append(text);
    write();
  }

  /** Says that nothing is missing any more. */
  void finish() throws IOException {
    finished = true;
    write();
  }

  private void write() throws IOException {
    Files.writeString(file, head + (finished ? "" : UNFINISHED + "\n\n") + body);
  }
}
