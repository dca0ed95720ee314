package curvestock.files;

import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Whole outcomes of runs, kept on disk: who asks the same of the same files with the same build
 * gets the same answer without waiting.
 *
 * <p>What is kept was drawn, read back and judged in the run that made it; by its checksum it is
 * the same to the byte, else it is thrown away.
 *
 * <p>Two entries a run. Under what was asked stands which files it read; under that, together with
 * checksums of these files as read, stands the outcome. So a file that a job refers to counts as
 * the job itself, and a job that is changed back finds its former outcome.
 */
public final class FinishedRuns {

  /** All entries together, in bytes: some fifty packets. */
  private static final long MOST_BYTES = 256L << 20;

  private static final int LONGEST_ENTRY = 64 << 20;

  private final CacheFolder folder;

  FinishedRuns(CacheFolder folder) {
    this.folder = folder;
  }

  /** Those of the user; nothing where none can be kept. */
  public static Optional<FinishedRuns> ofUser() {
    return CacheFolder.ofUser(".run", LONGEST_ENTRY, MOST_BYTES).map(FinishedRuns::new);
  }

  /**
   * The outcome of a former run.
   *
   * @param asked all that decides it but the files read: the command and its options
   */
  public Optional<FinishedRun> find(List<String> asked) {
    Optional<byte[]> paths = folder.find(paths(asked));
    if (paths.isEmpty()) {
      return Optional.empty();
    }
    Inputs now = new Inputs();
    try {
      for (String path : new String(paths.get(), StandardCharsets.UTF_8).lines().toList()) {
        Path file = Path.of(path);
        if (!Inputs.isPlainFile(file)) {
          return Optional.empty();
        }
        now.read(file);
      }
    } catch (FileProblem | InvalidPathException gone) {
      return Optional.empty();
    }
    return folder.find(outcome(asked, now)).map(FinishedRun::of);
  }

  /**
   * Keeps an outcome, if the same files would give it again.
   *
   * @param read what the run read
   */
  public void keep(List<String> asked, Inputs read, FinishedRun run) {
    if (!read.isLasting()) {
      return;
    }
    folder.keep(paths(asked), String.join("\n", read.paths()).getBytes(StandardCharsets.UTF_8));
    folder.keep(outcome(asked, read), run.bytes());
  }

  private static String paths(List<String> asked) {
    return "files read\n" + joined(asked);
  }

  private static String outcome(List<String> asked, Inputs read) {
    return "outcome\n" + joined(asked) + "\0" + joined(read.fingerprint());
  }

  /** No argument and no path holds the sign between them. */
  private static String joined(List<String> words) {
    return words.size() + "\0" + String.join("\0", words);
  }
}
