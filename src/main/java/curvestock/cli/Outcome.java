package curvestock.cli;

import curvestock.files.FileProblem;
import curvestock.files.FinishedRun;
import curvestock.files.FinishedRuns;
import curvestock.files.Inputs;
import curvestock.files.ResultFolder;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SortedMap;
import picocli.CommandLine.Model.CommandSpec;

/**
 * What a command leaves behind. If it came to its own end it is kept, and who asks the same again
 * while no file has changed gets it at once.
 */
final class Outcome {

  private static final String FROM_EARLIER =
      "Nothing has changed since an earlier run, so this is its result. To work it out again, add"
          + " --no-cache.";

  private final Inputs inputs = new Inputs();
  private SortedMap<String, byte[]> files = Collections.emptySortedMap();
  private String said = "";
  private boolean stopped;

  /** To read all files with that the command goes by. */
  Inputs inputs() {
    return inputs;
  }

  /** Writes the folder. */
  void publish(ResultFolder folder, Path out, boolean force) throws FileProblem {
    folder.publish(out, force);
    files = folder.contents();
  }

  /** Whoever stops a search gets an answer that another run might not find. */
  void stoppedIf(boolean early) {
    stopped |= early;
  }

  /**
   * Prints the answer.
   *
   * @param lines with {@link FinishedRun#FOLDER} for the folder's name
   */
  void print(List<String> lines, Optional<Path> out, PrintWriter printer) {
    said = String.join("\n", lines);
    print(said, out, printer);
  }

  private static void print(String said, Optional<Path> out, PrintWriter printer) {
    String folder = out.isPresent() ? out.get().toString() : "";
    for (String line : said.split("\n", -1)) {
      printer.println(line.replace(FinishedRun.FOLDER, folder));
    }
    printer.flush();
  }

  /** Keeps it all, unless that is not wanted or it was stopped, and gives the exit code. */
  int end(int code, CommandSpec command) {
    if (!stopped) {
      List<String> arguments = command.root().commandLine().getParseResult().originalArgs();
      Asked.of(arguments)
          .ifPresent(
              asked ->
                  FinishedRuns.ofUser()
                      .ifPresent(
                          runs ->
                              runs.keep(asked.key(), inputs, new FinishedRun(code, said, files))));
    }
    return code;
  }

  /**
   * Answers a command line from an earlier run; without any class that works a job out, and without
   * lambdas, which take longer to make than all else here.
   *
   * @return the exit code, or nothing if it is to be worked out
   */
  static OptionalInt ofEarlier(String... arguments) {
    Optional<Asked> asked = Asked.of(List.of(arguments));
    Optional<FinishedRuns> runs = asked.isPresent() ? FinishedRuns.ofUser() : Optional.empty();
    Optional<FinishedRun> run =
        runs.isPresent() ? runs.get().find(asked.get().key()) : Optional.empty();
    return run.isPresent() ? OptionalInt.of(repeated(asked.get(), run.get())) : OptionalInt.empty();
  }

  private static int repeated(Asked asked, FinishedRun run) {
    if (asked.out().isPresent()) {
      try {
        run.publish(asked.out().get(), asked.force());
      } catch (FileProblem inTheWay) {
        System.err.println(inTheWay.getMessage());
        return Main.WRONG_INPUT;
      }
    }
    if (!asked.quiet()) {
      System.err.println(FROM_EARLIER);
    }
    print(run.said(), asked.out(), new PrintWriter(new OutputStreamWriter(System.out, charset())));
    return run.code();
  }

  /** That of the terminal where it is known, as for what is worked out. */
  private static Charset charset() {
    String stated = System.getProperty("sun.stdout.encoding");
    return stated == null ? Charset.defaultCharset() : Charset.forName(stated);
  }
}
