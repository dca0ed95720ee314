package curvestock.bench;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Which code a run measures: the last commit that changed it, and a hash of its trees, so that
 * commits of reports or words do not make other reports old.
 *
 * @param commit short hash of the commit, with {@code -dirty} if files differ from it; {@code
 *     unknown} outside of a clone
 * @param tree short hash of the trees as committed
 */
record Engine(String commit, String tree) {

  private static final String CODE = "src/main/java/curvestock/";

  /** What a layout hangs on; what only words, draws or plans does not count. */
  private static final List<String> PACKING =
      List.of(
          CODE + "geometry",
          CODE + "piece",
          CODE + "sheet",
          CODE + "layout",
          CODE + "packing",
          CODE + "bound",
          "src/main/resources/curvestock/packing");

  /** The packing engine that lies in the working directory now. */
  static Engine packing() {
    return of(PACKING);
  }

  /** The whole program that lies in the working directory now. */
  static Engine program() {
    return of(List.of("src/main"));
  }

  private static Engine of(List<String> folders) {
    String commit = git(words(List.of("log", "-1", "--format=%h", "--"), folders));
    if (commit.isEmpty()) {
      return new Engine("unknown", "unknown");
    }
    boolean dirty = !git(words(List.of("status", "--porcelain", "--"), folders)).isEmpty();
    List<String> trees = folders.stream().map(folder -> "HEAD:" + folder).toList();
    String tree = shortHash(git(words(List.of("rev-parse"), trees)));
    return new Engine(dirty ? commit + "-dirty" : commit, tree);
  }

  private static String shortHash(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(hash, 0, 4);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<String> words(List<String> first, List<String> then) {
    return Stream.concat(first.stream(), then.stream()).toList();
  }

  /** What git prints, or nothing where it fails. */
  private static String git(List<String> words) {
    List<String> command = words(List.of("git"), words);
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
