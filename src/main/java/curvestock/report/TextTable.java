package curvestock.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A plain text table: the first column flush left, the others flush right; the last flush left too
 * if wanted.
 */
final class TextTable {

  private static final String GAP = "  ";

  private final List<List<String>> rows = new ArrayList<>();

  private boolean lastLeft;

  /** The last column flush left: words. */
  TextTable wordsLast() {
    lastLeft = true;
    return this;
  }

  TextTable row(List<String> cells) {
    rows.add(List.copyOf(cells));
    return this;
  }

  List<String> lines() {
    int columns = rows.stream().mapToInt(List::size).max().orElse(0);
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int c = 0; c < row.size(); c++) {
        widths[c] = Math.max(widths[c], row.get(c).length());
      }
    }
    return rows.stream().map(row -> line(row, widths)).toList();
  }

  private String line(List<String> row, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < row.size(); c++) {
      String pad = " ".repeat(widths[c] - row.get(c).length());
      boolean left = c == 0 || (lastLeft && c == widths.length - 1);
      line.append(c == 0 ? "" : GAP).append(left ? row.get(c) + pad : pad + row.get(c));
    }
    return line.toString().stripTrailing();
  }
}
