package curvestock.report;

import java.util.ArrayList;
import java.util.List;

/** Plain text broken into lines that fit a page or a terminal. */
final class Paragraph {

  private static final int WIDTH = 96;

  private Paragraph() {}

  /** The words in lines of at most 96 characters, the first after a mark, the others set in. */
  static List<String> lines(String mark, String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(mark);
    String inset = " ".repeat(mark.length());
    for (String word : words.split(" ", -1)) {
      boolean begun = line.length() > mark.length();
      if (begun && line.length() + 1 + word.length() > WIDTH) {
        lines.add(line.toString());
        line = new StringBuilder(inset);
        begun = false;
      }
      line.append(begun ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
