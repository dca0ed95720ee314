package curvestock.report;

import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Heading;
import curvestock.answer.Table;
import curvestock.drawing.TextWidth;
import curvestock.units.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** A paper as plain text: sentences wrapped, tables in columns, pictures left out. */
public final class TextPaper {

  private static final int WIDTH = 96;

  /** Longer cells are broken, so that a table of many kinds of pieces stays on the screen. */
  private static final int WIDEST_CELL = 60;

  private static final String INSET = "  ";
  private static final String GAP = "  ";

  private final Figures figures;
  private final List<String> lines = new ArrayList<>();

  private TextPaper(Figures figures) {
    this.figures = figures;
  }

  /** The paper under the job's title. */
  public static List<String> of(Heading heading, List<ReportPart> parts) {
    TextPaper paper = new TextPaper(heading.figures());
    paper.lines.add(heading.title() + (heading.invented() ? "  [invented data]" : ""));
    parts.forEach(paper::add);
    return List.copyOf(paper.lines);
  }

  /** One table. */
  public static List<String> of(Table table, Figures figures) {
    TextPaper paper = new TextPaper(figures);
    paper.table(table, "");
    return List.copyOf(paper.lines);
  }

  private void add(ReportPart part) {
    if (part instanceof ReportPart.Chapter chapter) {
      lines.addAll(List.of("", chapter.text()));
    } else if (part instanceof ReportPart.Section section) {
      lines.addAll(List.of("", section.text()));
    } else if (part instanceof ReportPart.Paragraph paragraph) {
      lines.addAll(wrapped("", paragraph.text()));
    } else if (part instanceof ReportPart.Notice notice) {
      lines.addAll(wrapped("", notice.text()));
    } else if (part instanceof ReportPart.Bullets bullets) {
      bullets.items().forEach(this::item);
    } else if (part instanceof ReportPart.Figures shown) {
      lines.addAll(List.of("", shown.table().caption()));
      table(shown.table(), INSET);
    }
  }

  /** Set in; one that begins with a column of its own hangs on what follows it. */
  private void item(String text) {
    int column = text.startsWith(" ") ? 0 : text.indexOf("  ");
    int from = Math.max(0, column);
    while (column >= 0 && text.charAt(from) == ' ') {
      from++;
    }
    lines.addAll(wrapped(INSET + text.substring(0, from), text.substring(from)));
  }

  /** Lines of at most 96 characters, the first after a mark, the others set in as far. */
  static List<String> wrapped(String mark, String words) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder(mark);
    String inset = " ".repeat(mark.length());
    for (String word : TextWidth.words(words)) {
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

  private void table(Table table, String inset) {
    List<Column> columns = table.columns();
    List<List<String>> cells =
        table.rows().stream().flatMap(row -> lines(cells(columns, row))).toList();
    int[] widths = new int[columns.size()];
    List<List<String>> heads = new ArrayList<>();
    for (int c = 0; c < widths.length; c++) {
      int column = c;
      widths[c] =
          Math.max(
              cells.stream().mapToInt(row -> row.get(column).length()).max().orElse(0),
              longestWord(columns.get(c).title()));
      heads.add(broken(columns.get(c).title(), widths[c]));
    }
    int high = heads.stream().mapToInt(List::size).max().orElse(0);
    for (int i = 0; i < high; i++) {
      int from = i - high;
      lines.add(
          inset
              + row(
                  columns,
                  heads.stream()
                      .map(head -> head.size() + from < 0 ? "" : head.get(head.size() + from))
                      .toList(),
                  widths));
    }
    cells.forEach(row -> lines.add(inset + row(columns, row, widths)));
  }

  private List<String> cells(List<Column> columns, List<Quantity> row) {
    List<String> cells = new ArrayList<>();
    for (int c = 0; c < columns.size(); c++) {
      cells.add(figures.of(row.get(c), columns.get(c).measure()));
    }
    return cells;
  }

  /** A row, in as many lines as its longest cell needs. */
  private static Stream<List<String>> lines(List<String> row) {
    List<List<String>> cells = row.stream().map(cell -> broken(cell, WIDEST_CELL)).toList();
    int high = cells.stream().mapToInt(List::size).max().orElse(1);
    return IntStream.range(0, high)
        .mapToObj(
            line -> cells.stream().map(cell -> line < cell.size() ? cell.get(line) : "").toList());
  }

  private static int longestWord(String title) {
    return Arrays.stream(title.split(" ", -1)).mapToInt(String::length).max().orElse(0);
  }

  /** A heading or a cell broken into lines as narrow as that. */
  private static List<String> broken(String title, int width) {
    List<String> broken = new ArrayList<>();
    String line = "";
    for (String word : title.split(" ", -1)) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > width) {
        broken.add(line);
        line = word;
      } else {
        line = line.isEmpty() ? word : line + " " + word;
      }
    }
    broken.add(line);
    return broken;
  }

  private static String row(List<Column> columns, List<String> cells, int[] widths) {
    StringBuilder line = new StringBuilder();
    for (int c = 0; c < cells.size(); c++) {
      String pad = " ".repeat(widths[c] - cells.get(c).length());
      boolean right = columns.get(c).measure().isNumber();
      line.append(c == 0 ? "" : GAP).append(right ? pad + cells.get(c) : cells.get(c) + pad);
    }
    return line.toString().stripTrailing();
  }
}
