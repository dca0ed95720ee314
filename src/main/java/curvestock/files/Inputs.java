package curvestock.files;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads the text files that a run goes by, and remembers of each what it read: who reads the same
 * again works on the same job.
 */
public final class Inputs {

  private static final int MOST_BYTES = 1_000_000;

  /** Latin, Greek, Cyrillic and Hebrew end here: letters of the font inside the program. */
  private static final char AFTER_OWN_LETTERS = '\u0600';

  private static final char FIRST_SIGN = '\u2000';
  private static final char AFTER_SIGNS = '\u2300';

  /** Checksums of the texts by the paths as given. */
  private final Map<String, String> checksums = new LinkedHashMap<>();

  private boolean lasting = true;

  /**
   * The file's text.
   *
   * @throws FileProblem as {@link TextFiles#read}; files longer than 1,000,000 bytes are refused
   */
  public String read(Path file) throws FileProblem {
    // Asked before it is read: a pipe gives its text once only.
    lasting &= isPlainFile(file);
    String text = TextFiles.read(file, MOST_BYTES);
    String checksum = Checksum.of(text);
    String before = checksums.put(file.toString(), checksum);
    lasting &= (before == null || before.equals(checksum)) && isOfOwnLetters(text);
    return text;
  }

  /** Whether it can be read twice: no pipe, no terminal. */
  static boolean isPlainFile(Path file) {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** Others are drawn with the fonts of the machine, to which a user may add one any time. */
  private static boolean isOfOwnLetters(String text) {
    for (int i = 0; i < text.length(); i++) {
      char letter = text.charAt(i);
      if (letter >= AFTER_OWN_LETTERS && (letter < FIRST_SIGN || letter >= AFTER_SIGNS)) {
        return false;
      }
    }
    return true;
  }

  /** Whether what was made of them would be made of them again. */
  boolean isLasting() {
    return lasting;
  }

  /** In the order first read, as given. */
  List<String> paths() {
    return List.copyOf(checksums.keySet());
  }

  /** What was read, in short: the paths as given and the checksums of the texts. */
  List<String> fingerprint() {
    List<String> lines = new ArrayList<>();
    for (Map.Entry<String, String> each : checksums.entrySet()) {
      lines.add(each.getKey());
      lines.add(each.getValue());
    }
    return lines;
  }
}
