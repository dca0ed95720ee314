package curvestock.report;

import java.util.List;

/** A part of a report that is to be read on a screen as well as on paper. */
public sealed interface ReportPart {

  /** Begins a chapter. */
  record Chapter(String text) implements ReportPart {}

  /** Begins a section of a chapter. */
  record Section(String text) implements ReportPart {}

  record Paragraph(String text) implements ReportPart {}

  /** Something that must not be missed. */
  record Notice(String text) implements ReportPart {}

  record Bullets(List<String> items) implements ReportPart {
    public Bullets {
      items = List.copyOf(items);
    }
  }

  /**
   * A table whose every row has as many cells as its head.
   *
   * @param caption what it shows
   */
  record Table(String caption, List<String> head, List<List<String>> rows) implements ReportPart {
    public Table {
      head = List.copyOf(head);
      rows = rows.stream().map(List::copyOf).toList();
    }
  }

  /**
   * A picture.
   *
   * @param file path in the result folder, without its ending
   * @param alternative what it shows, for those who cannot see it
   * @param caption printed below
   */
  record Picture(String file, String alternative, String caption) implements ReportPart {}

  /** Whether all cells of a column are numbers, which stand flush right. */
  static boolean isNumeric(List<List<String>> rows, int column) {
    return rows.stream()
        .map(row -> row.get(column))
        .allMatch(cell -> cell.isEmpty() || cell.matches("[^\\p{L}]{0,4}\\d[^,]{0,24}|\\u2610"));
  }
}
