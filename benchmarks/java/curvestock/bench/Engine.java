package curvestock.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;

/**
 * Which engine a run measures: the last commit that changed {@code src/main}, and the hash of that
 * tree, so that commits of reports do not make other reports old.
 *
 * @param commit short hash of the commit, with {@code -dirty} if files under {@code src/main}
 *     differ from it; {@code unknown} outside of a clone
 * @param tree short hash of the tree {@code src/main} as committed
 */
record Engine(String commit, String tree) {

  private static final String SOURCES = "src/main";

  /** What lies in the working directory now. */
  static Engine present() {
    String commit = git("log", "-1", "--format=%h", "--", SOURCES);
    if (commit.isEmpty()) {
      return new Engine("unknown", "unknown");
    }
    boolean dirty = !git("status", "--porcelain", "--", SOURCES).isEmpty();
    String tree = git("rev-parse", "--short", "HEAD:" + SOURCES);
    return new Engine(dirty ? commit + "-dirty" : commit, tree);
  }

  /** What git prints, or nothing where it fails. */
  private static String git(String... words) {
    String[] command = new String[words.length + 1];
    command[0] = "git";
    System.arraycopy(words, 0, command, 1, words.length);
    try {
      Process process =
          new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
      byte[] said = process.getInputStream().readAllBytes();
      return process.waitFor() == 0 ? new String(said, StandardCharsets.UTF_8).strip() : "";
    } catch (IOException e) {
      return "";
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return "";
    }
  }

  /** As the first lines of reports say it; {@code reports.sh} looks for it there. */
  @Override
  public String toString() {
    return "Engine " + commit + " (tree " + tree + ")";
  }
}
