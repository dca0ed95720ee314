package curvestock.job;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Quoting and spelling for messages. */
final class Words {

  private static final int LONGEST_SHOWN = 40;

  private Words() {}

  /** The text in quotes, shortened, with characters that would spoil a line made visible. */
  static String quoted(String text) {
    String shown = text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    StringBuilder line = new StringBuilder("\"");
    shown
        .codePoints()
        .forEach(
            c -> {
              if (Character.isISOControl(c) || !Character.isDefined(c) || isSurrogate(c)) {
                line.append(String.format(Locale.ROOT, "\\u%04X", c));
              } else {
                line.appendCodePoint(c);
              }
            });
    return line.append('"').toString();
  }

  private static boolean isSurrogate(int c) {
    return c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
  }

  /**
   * The allowed word with the fewest changes of a letter, if they are at most half of it and at
   * most three.
   */
  static Optional<String> nearest(String word, Collection<String> allowed) {
    if (word.length() > LONGEST_SHOWN) {
      return Optional.empty();
    }
    String plain = word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    Optional<String> best = Optional.empty();
    int fewest = Integer.MAX_VALUE;
    for (String candidate : allowed) {
      int changes = distance(plain, candidate);
      if (changes < fewest && changes <= Math.min(3, candidate.length() / 2)) {
        fewest = changes;
        best = Optional.of(candidate);
      }
    }
    return best;
  }

  /**
   * Least number of letters to insert, delete, replace or swap with a neighbour: the restricted
   * edit distance (optimal string alignment), by dynamic programming.
   */
  static int distance(String a, String b) {
    int[][] d = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          d[i][j] = i + j;
          continue;
        }
        int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        d[i][j] = Math.min(replaced, 1 + Math.min(d[i - 1][j], d[i][j - 1]));
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        if (swapped) {
          d[i][j] = Math.min(d[i][j], 1 + d[i - 2][j - 2]);
        }
      }
    }
    return d[a.length()][b.length()];
  }
}
