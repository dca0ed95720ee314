package curvestock.printing;

import curvestock.answer.Column;
import curvestock.answer.Figures;
import curvestock.answer.Measure;
import curvestock.answer.Table;
import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PaperSize;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.units.Quantity;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;

/** Fills pages from top to bottom with headings, paragraphs, tables and figures. */
final class PageFlow {

  private static final double MARGIN = 14;
  private static final double TEXT = 3.5;
  private static final double LEADING = 1.4;
  private static final double SMALLEST = 2.1;
  private static final double SMALLEST_WRAPPED = 2.7;

  /** A picture is made smaller to this share before it takes a page of its own. */
  private static final double SMALLEST_PICTURE = 0.6;

  private static final double GAP = 3.6;

  /** Widths are guessed on the wide side; running text of small letters takes that much less. */
  static final double PROSE = 1.14;

  /** The same for tables, which hold more capitals and digits. */
  private static final double TABLE = 1.1;

  private static final Pen RULE = Pen.of(Ink.SHEET, 0.15);
  private static final Pen HEAD_RULE = Pen.of(Ink.CUT, 0.3);
  private static final Pen BOX = Pen.of(Ink.CUT, 0.25);

  /** A cell of a table that prints an empty box to tick. */
  static final String TICK_BOX = "\u2610";

  /** Keeps a number with its unit. */
  private static final char NO_BREAK = '\u00A0';

  private static final Pen BAR = Pen.of(Ink.CUT, 1.2);

  private record Placed(PdfBook.Image image, Box box) {}

  private record Heading(String text, double size, double before) {
    /** With the space around it; most are of one line. */
    double high() {
      return size * LEADING + before + 0.5 * TEXT;
    }
  }

  private final List<Heading> pending = new ArrayList<>();

  private final List<Placed> images = new ArrayList<>();
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
    PaperSize office =
        size == PaperSize.A4 || size == PaperSize.A3 ? PaperSize.A4 : PaperSize.LETTER;
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
    images.forEach(placed -> book.drawOnLastPage(placed.image(), placed.box()));
    images.clear();
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

  /** A heading, which never stands apart from what follows it. */
  void heading(String text) {
    pending.add(new Heading(text, TEXT * 1.2, TEXT));
  }

  void subheading(String text) {
    pending.add(new Heading(text, TEXT, TEXT * 0.4));
  }

  /** A paragraph with a thick bar beside it. */
  void notice(String text) {
    int lines = TextWidth.wrap(text, textWidth() / TEXT * PROSE).size();
    double high = lines * TEXT * LEADING;
    need(high);
    Point top = new Point(MARGIN - 3, y);
    page.line(top, top.minus(new Point(0, high)), BAR);
    write(text, TEXT, false, 0.6);
  }

  /** A picture as wide as the text; somewhat smaller if it then fits on the page. */
  void picture(byte[] png) {
    PdfBook.Image image = book.image(png);
    double most = Math.min(textWidth(), (height - 4.5 * MARGIN) / image.aspect());
    double left = room() - 4 * TEXT - pending.stream().mapToDouble(Heading::high).sum();
    boolean fits = left >= SMALLEST_PICTURE * most * image.aspect();
    double wide = fits ? Math.min(most, left / image.aspect()) : most;
    double high = wide * image.aspect();
    need(high + 2 * TEXT);
    double x = MARGIN + (textWidth() - wide) / 2;
    images.add(new Placed(image, new Box(x, y - high, x + wide, y)));
    y -= high + TEXT * 0.6;
    blank = false;
  }

  void paragraph(String text) {
    write(text, TEXT, false, 0.6);
  }

  private void write(String text, double size, boolean bold, double after) {
    List<String> lines = lines(text, size, bold);
    // The first lines stay together, under their heading if there is one.
    need(Math.min(2, lines.size()) * size * LEADING);
    for (String line : lines) {
      need(size * LEADING);
      line(line, size, bold);
    }
    y -= after * TEXT;
  }

  private List<String> lines(String text, double size, boolean bold) {
    return TextWidth.wrap(text, textWidth() / size * (bold ? 1 / 1.12 : PROSE));
  }

  private void line(String text, double size, boolean bold) {
    y -= size * LEADING / 2;
    page.text(text, new Point(MARGIN, y), size, Anchor.START, bold);
    y -= size * LEADING / 2;
    blank = false;
  }

  /** Begins a new page if what comes does not fit, then writes the headings that wait for it. */
  private void need(double high) {
    double heads = pending.stream().mapToDouble(Heading::high).sum();
    if (room() < high + heads && !blank) {
      newPage();
    }
    List<Heading> due = List.copyOf(pending);
    pending.clear();
    for (Heading heading : due) {
      y -= blank ? 0 : heading.before();
      for (String line : lines(heading.text(), heading.size(), true)) {
        line(line, heading.size(), true);
      }
      y -= 0.5 * TEXT;
    }
  }

  /** A figure as wide as the text. */
  void figure(double high, BiConsumer<Paper, Box> draw) {
    need(high);
    draw.accept(page, new Box(MARGIN, y - high, width - MARGIN, y));
    y -= high + TEXT;
    blank = false;
  }

  /** A table of figures. */
  void table(Table table, Figures figures) {
    List<List<String>> rows = new ArrayList<>();
    for (List<Quantity> row : table.rows()) {
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < row.size(); c++) {
        Measure measure = table.columns().get(c).measure();
        String text = figures.of(row.get(c), measure);
        cells.add(measure.isNumber() ? text.replace(' ', NO_BREAK) : text);
      }
      rows.add(cells);
    }
    table(
        table.columns().stream().map(Column::title).toList(),
        table.columns().stream().map(column -> column.measure().isNumber()).toList(),
        rows);
  }

  /**
   * Marks for the hand, already written; columns whose every cell begins with a digit are numbers.
   */
  void grid(List<String> head, List<List<String>> rows) {
    List<Boolean> numbers = new ArrayList<>();
    for (int c = 0; c < head.size(); c++) {
      int column = c;
      numbers.add(rows.stream().allMatch(row -> row.get(column).matches("-?\\d[^,]{0,24}")));
    }
    table(head, numbers, rows);
  }

  /**
   * A table; its head is printed again on each page. Columns of numbers are flush right; text that
   * is too wide is wrapped.
   */
  private void table(List<String> head, List<Boolean> numbers, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return;
    }
    double[] ems = new double[head.size()];
    boolean[] numeric = new boolean[head.size()];
    double[] heads = new double[head.size()];
    for (int c = 0; c < ems.length; c++) {
      ems[c] = widestWord(head.get(c)) * 1.12;
      for (List<String> row : rows) {
        ems[c] = Math.max(ems[c], TextWidth.ems(row.get(c)) / TABLE);
      }
      heads[c] = Math.max(ems[c], TextWidth.ems(head.get(c)) * 1.12);
      numeric[c] = numbers.get(c);
    }
    double room = textWidth() - GAP * ems.length;
    if (Arrays.stream(heads).sum() * TEXT * 0.95 <= room) {
      ems = heads;
    }
    double natural = Arrays.stream(ems).sum();
    boolean wraps = false;
    for (int c = 1; c < numeric.length; c++) {
      wraps |= !numeric[c];
    }
    double least = wraps ? SMALLEST_WRAPPED : SMALLEST;
    double size = Math.max(least, Math.min(TEXT * 0.95, room / natural));
    double cap = cap(ems, room / size);
    for (int c = 0; c < ems.length; c++) {
      ems[c] = Math.min(ems[c], cap);
    }
    Columns columns = new Columns(ems, numeric, size);
    need(columns.high(head, true) + size * LEADING * 3);
    row(columns, head, true);
    for (List<String> row : rows) {
      if (room() < columns.high(row, false)) {
        newPage();
        row(columns, head, true);
      }
      row(columns, row, false);
    }
    y -= TEXT * 0.8;
  }

  private static double widestWord(String text) {
    return Arrays.stream(text.split(" ", -1)).mapToDouble(TextWidth::ems).max().orElse(0);
  }

  /** The width that no column may exceed, so that all fit in the room. */
  private static double cap(double[] ems, double room) {
    double low = 0;
    double high = room;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (Arrays.stream(ems).map(em -> Math.min(em, middle)).sum() > room) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  /** How a table's cells are set. */
  @SuppressWarnings("ArrayRecordComponent") // internal, never compared or changed
  private record Columns(double[] ems, boolean[] numeric, double size) {
    List<String> lines(String cell, int column, boolean head) {
      return TextWidth.wrap(cell, ems[column] * (head ? 1 / 1.1 : TABLE) + 1e-9);
    }

    double high(List<String> cells, boolean head) {
      int most = 1;
      for (int c = 0; c < cells.size(); c++) {
        most = Math.max(most, lines(cells.get(c), c, head).size());
      }
      return (most * 1.25 + 0.4) * size;
    }
  }

  private void row(Columns columns, List<String> cells, boolean head) {
    double size = columns.size();
    double high = columns.high(cells, head);
    double x = MARGIN;
    for (int c = 0; c < cells.size(); c++) {
      double wide = columns.ems()[c] * size + GAP;
      double right = x + wide - GAP;
      double line = y - 0.825 * size;
      for (String text : columns.lines(cells.get(c), c, head)) {
        if (text.equals(TICK_BOX)) {
          tickBox(right - size * 0.9, line, size * 0.9);
        } else if (columns.numeric()[c]) {
          page.text(text, new Point(right, line), size, Anchor.END, head);
        } else {
          page.text(text, new Point(x, line), size, Anchor.START, head);
        }
        line -= 1.25 * size;
      }
      x += wide;
    }
    y -= high;
    page.line(new Point(MARGIN, y), new Point(x, y), head ? HEAD_RULE : RULE);
    blank = false;
  }

  private void tickBox(double left, double middle, double side) {
    double low = middle - side / 2;
    page.polygon(
        List.of(
            new Point(left, low),
            new Point(left + side, low),
            new Point(left + side, low + side),
            new Point(left, low + side),
            new Point(left, low)),
        "none",
        BOX);
  }
}
