package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PaperSize;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;

/** Fills pages from top to bottom with headings, paragraphs, tables and figures. */
final class PageFlow {

  private static final double MARGIN = 14;
  private static final double TEXT = 3.5;
  private static final double LEADING = 1.4;
  private static final double SMALLEST = 2.1;
  private static final double GAP = 2.4;

  /** Widths are guessed on the wide side; running text of small letters takes that much less. */
  static final double PROSE = 1.14;

  private static final Pen RULE = Pen.of(Ink.SHEET, 0.15);
  private static final Pen HEAD_RULE = Pen.of(Ink.CUT, 0.3);
  private static final Pen BOX = Pen.of(Ink.CUT, 0.25);

  /** A cell of a table that prints an empty box to tick. */
  static final String TICK_BOX = "\u2610";

  private final PdfBook book;
  private final String footer;
  private final double width;
  private final double height;
  private Paper page = new Paper();
  private boolean blank = true;
  private int number = 1;
  private double y;

  /**
   * Pages of the given size; a roll or a large sheet gives way to what offices print on.
   *
   * @param lying whether the long side is level
   * @param footer on every page, before its number
   */
  PageFlow(PdfBook book, PaperSize size, boolean lying, String footer) {
    this.book = book;
    this.footer = footer;
    PaperSize office = size == PaperSize.A4 || size == PaperSize.A3 ? PaperSize.A4 : PaperSize.LETTER;
    double a = office.width().millimetres();
    double b = office.height().millimetres();
    width = lying ? b : a;
    height = lying ? a : b;
    y = height - MARGIN;
  }

  double textWidth() {
    return width - 2 * MARGIN;
  }

  /** Room left on the page. */
  double room() {
    return y - MARGIN - TEXT * 2;
  }

  void newPage() {
    if (blank) {
      return;
    }
    page.text(
        footer + " · page " + number, new Point(MARGIN, MARGIN - 5), 2.6, Anchor.START, false);
    book.page(width, height, page);
    page = new Paper();
    blank = true;
    number++;
    y = height - MARGIN;
  }

  /** Ends the last page. */
  void finish() {
    newPage();
  }

  void title(String text) {
    write(text, TEXT * 1.6, true, 1);
  }

  void heading(String text) {
    need(TEXT * 8);
    y -= blank ? 0 : TEXT;
    write(text, TEXT * 1.2, true, 0.6);
  }

  void paragraph(String text) {
    write(text, TEXT, false, 0.6);
  }

  private void write(String text, double size, boolean bold, double after) {
    for (String line : TextWidth.wrap(text, textWidth() / size * (bold ? 1 / 1.12 : PROSE))) {
      need(size * LEADING);
      y -= size * LEADING / 2;
      page.text(line, new Point(MARGIN, y), size, Anchor.START, bold);
      y -= size * LEADING / 2;
      blank = false;
    }
    y -= after * TEXT;
  }

  private void need(double high) {
    if (room() < high && !blank) {
      newPage();
    }
  }

  /** A figure as wide as the text. */
  void figure(double high, BiConsumer<Paper, Box> draw) {
    need(high);
    draw.accept(page, new Box(MARGIN, y - high, width - MARGIN, y));
    y -= high + TEXT;
    blank = false;
  }

  /** A table; its head is printed again on each page. The first column is flush left. */
  void table(List<String> head, List<List<String>> rows) {
    List<List<String>> all = new ArrayList<>(rows);
    all.add(head);
    double[] ems = new double[head.size()];
    for (List<String> row : all) {
      for (int c = 0; c < head.size(); c++) {
        ems[c] = Math.max(ems[c], TextWidth.ems(row.get(c)) * (row == head ? 1.12 : 1));
      }
    }
    double natural = 0;
    for (double em : ems) {
      natural += em;
    }
    double gaps = GAP * head.size();
    double size = Math.max(SMALLEST, Math.min(TEXT * 0.95, (textWidth() - gaps) / natural));
    need(size * LEADING * 4);
    row(head, ems, size, true);
    for (List<String> row : rows) {
      if (room() < size * LEADING * 1.3) {
        newPage();
        row(head, ems, size, true);
      }
      row(row, ems, size, false);
    }
    y -= TEXT * 0.8;
  }

  private void row(List<String> cells, double[] ems, double size, boolean head) {
    double high = size * LEADING * 1.15;
    double x = MARGIN;
    y -= high / 2;
    for (int c = 0; c < cells.size(); c++) {
      double wide = ems[c] * size + GAP;
      if (cells.get(c).equals(TICK_BOX)) {
        double side = size * 0.9;
        double right = x + wide - GAP / 2;
        page.polygon(
            List.of(
                new Point(right - side, y - side / 2),
                new Point(right, y - side / 2),
                new Point(right, y + side / 2),
                new Point(right - side, y + side / 2),
                new Point(right - side, y - side / 2)),
            "none",
            BOX);
      } else if (c == 0) {
        page.text(cells.get(c), new Point(x, y), size, Anchor.START, head);
      } else {
        page.text(cells.get(c), new Point(x + wide - GAP / 2, y), size, Anchor.END, head);
      }
      x += wide;
    }
    y -= high / 2;
    page.line(new Point(MARGIN, y), new Point(x, y), head ? HEAD_RULE : RULE);
    blank = false;
  }
}
