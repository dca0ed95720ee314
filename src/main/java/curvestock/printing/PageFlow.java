package curvestock.printing;

import curvestock.answer.Column;
import curvestock.answer.Figures;
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
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * Fills pages from top to bottom with headings, paragraphs, tables and figures. What ends in a page
 * with a few lines is set anew with less air, until it does not.
 */
final class PageFlow {

  static final double MARGIN = 14;
  static final double TEXT = 3.5;

  private static final double FOOT_TEXT = 2.6;

  /** Less of a page than this is not worth the paper. */
  static final double SLIVER = 0.2;

  /** How much of the usual air between lines is left, from try to try. */
  private static final double[] AIR = {1, 0.85, 0.7, 0.55, 0.4};

  /** Less air is taken to save this share of the pages. */
  private static final double SAVED = 0.15;

  private static final double LEADING = 1.4;

  /** A table that takes no more than this of a page is not parted. */
  private static final double KEPT_WHOLE = 0.45;

  /** So much of a page is not left empty to keep a list on one page. */
  private static final double WASTED = 0.2;

  /** A figure is made smaller to this share before it takes a page of its own. */
  private static final double SMALLEST_FIGURE = 0.6;

  /** Kept free on a page for the headings above a picture. */
  private static final double LEADS = 25;

  private static final Pen RULE = Pen.of(Ink.SHEET, 0.15);
  private static final Pen HEAD_RULE = Pen.of(Ink.CUT, 0.3);
  private static final Pen BOX = Pen.of(Ink.CUT, 0.25);
  private static final Pen BAR = Pen.of(Ink.CUT, 1.2);

  /** A chart and where it stands. */
  private record Painted(int width, int height, Consumer<Graphics2D> painter, Box box) {}

  /** A page as it will be written. */
  private record Page(Paper paper, List<Painted> charts, double filled) {}

  /** Text that never stands apart from what follows it. */
  private record Lead(
      String text, double size, boolean bold, double before, double after, boolean bar) {

    Lead(String text, double size, boolean bold, double before, double after) {
      this(text, size, bold, before, after, false);
    }
  }

  private final List<Lead> pending = new ArrayList<>();
  private final List<Page> pages = new ArrayList<>();
  private final Typeface face;
  private final String footer;
  private final double width;
  private final double height;
  private final double air;
  private List<Painted> charts = new ArrayList<>();
  private Paper page = new Paper();
  private boolean blank = true;
  private double y;
  private String heading = "";
  private String section = "";

  private PageFlow(Typeface face, PaperSize size, boolean lying, String footer, double air) {
    this.face = face;
    this.footer = footer;
    this.air = air;
    PaperSize office =
        size == PaperSize.A4 || size == PaperSize.A3 ? PaperSize.A4 : PaperSize.LETTER;
    double a = office.width().millimetres();
    double b = office.height().millimetres();
    width = lying ? b : a;
    height = lying ? a : b;
    y = height - MARGIN;
  }

  /**
   * Writes pages of the given size; a roll or a large sheet gives way to what offices print on.
   *
   * @param lying whether the long side is level
   * @param footer on every page, before its number
   * @param writer fills the pages; called more than once, and must do the same each time
   */
  static void fill(
      PdfBook book, PaperSize size, boolean lying, String footer, Consumer<PageFlow> writer) {
    PageFlow best = null;
    for (double air : AIR) {
      PageFlow flow = new PageFlow(book.typeface(), size, lying, footer, air);
      writer.accept(flow);
      flow.newPage();
      if (best == null || flow.isBetter(best)) {
        best = flow;
      }
    }
    for (int i = 0; i < best.pages.size(); i++) {
      Page done = best.pages.get(i);
      best.foot(done.paper(), "page " + (i + 1) + " of " + best.pages.size());
      book.page(best.width, best.height, done.paper());
      done.charts().forEach(c -> book.paintOnLastPage(c.width(), c.height(), c.painter(), c.box()));
    }
  }

  /** With fewer slivers, or on pages that are fewer by so much that it pays for a sliver more. */
  private boolean isBetter(PageFlow airier) {
    long more = slivers() - airier.slivers();
    int saved = airier.pages.size() - pages.size();
    return (more < 0 && saved >= 0)
        || (saved > 1 && saved > 2 * more && saved >= SAVED * airier.pages.size());
  }

  private long slivers() {
    return pages.size() == 1 ? 0 : pages.stream().filter(p -> p.filled() < SLIVER).count();
  }

  double textWidth() {
    return width - 2 * MARGIN;
  }

  private double textHeight() {
    return height - 2 * MARGIN - TEXT;
  }

  /** Room left on the page. */
  double room() {
    return y - MARGIN - TEXT;
  }

  private double leading(double size) {
    return size * (1 + (LEADING - 1) * air);
  }

  /** A new page, unless what is on this one is so little that the next part may follow it. */
  void newPart() {
    if (filled() > SLIVER) {
      newPage();
    }
  }

  private double filled() {
    return (height - MARGIN - y) / textHeight();
  }

  void newPage() {
    if (blank) {
      return;
    }
    double filled = filled();
    pages.add(new Page(page, charts, filled));
    charts = new ArrayList<>();
    page = new Paper();
    blank = true;
    y = height - MARGIN;
  }

  /** What the paper is and which page of it, so that a stack that fell can be put in order. */
  private void foot(Paper paper, String number) {
    String about = oneLine(footer, (textWidth() - 40) / FOOT_TEXT);
    Point at = new Point(MARGIN, MARGIN - 5);
    paper.text(about + " · " + number, at, FOOT_TEXT, Anchor.START, false);
  }

  /** Cut short if it is too wide. */
  private String oneLine(String text, double ems) {
    String first = TextWidth.wrap(text, ems, t -> face.ems(t, false)).get(0);
    return first.length() < text.trim().length() ? first + " …" : first;
  }

  void title(String text) {
    write(text, TEXT * 1.6, true, 1);
  }

  /** A heading, which never stands apart from what follows it. */
  void heading(String text) {
    pending.add(new Lead(text, TEXT * 1.2, true, TEXT, 0.5 * TEXT));
  }

  void subheading(String text) {
    pending.add(new Lead(text, TEXT, true, TEXT * 0.4, 0.5 * TEXT));
  }

  /** A paragraph that says what the table or figure after it is. */
  void lead(String text) {
    pending.add(new Lead(text, TEXT, false, 0, 0.4 * TEXT));
  }

  /** A paragraph with a thick bar beside it, never apart from the table or figure after it. */
  void caution(String text) {
    pending.add(new Lead(text, TEXT, false, 0, 0.6 * TEXT, true));
  }

  /** A paragraph with a thick bar beside it. */
  void notice(String text) {
    double high = lines(text, TEXT, false).size() * leading(TEXT);
    need(high);
    Point top = new Point(MARGIN - 3, y);
    page.line(top, top.minus(new Point(0, high)), BAR);
    write(text, TEXT, false, 0.6);
  }

  void paragraph(String text) {
    write(text, TEXT, false, 0.6);
  }

  /**
   * Paragraphs that stay on one page if they are no more than half a page, and if the page before
   * would not be left empty by that.
   */
  void paragraphs(List<String> texts) {
    double whole =
        texts.stream()
            .mapToDouble(t -> lines(t, TEXT, false).size() * leading(TEXT) + 0.6 * TEXT * air)
            .sum();
    if (whole <= KEPT_WHOLE * textHeight() && room() < WASTED * textHeight()) {
      need(whole);
    }
    texts.forEach(this::paragraph);
  }

  private void write(String text, double size, boolean bold, double after) {
    List<String> lines = lines(text, size, bold);
    // Short paragraphs stay whole; of longer ones two lines at least stay together.
    int together = lines.size() <= 4 ? lines.size() : 2;
    need(together * leading(size));
    int number = 0;
    for (String line : lines) {
      boolean lastTwo = number == lines.size() - 2 && together == 2;
      need((lastTwo ? 2 : 1) * leading(size));
      line(line, size, bold);
      number++;
    }
    y -= after * TEXT * air;
    heading = "";
  }

  private List<String> lines(String text, double size, boolean bold) {
    return TextWidth.wrap(text, textWidth() / size, line -> face.ems(line, bold));
  }

  private void line(String text, double size, boolean bold) {
    double high = leading(size);
    page.text(text, new Point(MARGIN, y - high / 2), size, Anchor.START, bold);
    y -= high;
    blank = false;
  }

  private double high(Lead lead) {
    int lines = lines(lead.text(), lead.size(), lead.bold()).size();
    return lines * leading(lead.size()) + (lead.before() + lead.after()) * air;
  }

  private double waiting() {
    return pending.stream().mapToDouble(this::high).sum();
  }

  /** Begins a new page if what comes does not fit, then writes the leads that wait for it. */
  private void need(double high) {
    if (room() < high + waiting() && !blank) {
      newPage();
    }
    List<Lead> due = List.copyOf(pending);
    pending.clear();
    for (Lead lead : due) {
      y -= blank ? 0 : lead.before() * air;
      double top = y;
      lines(lead.text(), lead.size(), lead.bold()).forEach(l -> line(l, lead.size(), lead.bold()));
      if (lead.bar()) {
        page.line(new Point(MARGIN - 3, top), new Point(MARGIN - 3, y), BAR);
      }
      y -= lead.after() * air;
      heading = lead.bold() ? lead.text() : heading;
      section = lead.bold() ? lead.text() : section;
    }
  }

  /** As {@link #need}; a table that begins a page under no heading of its own says whose it is. */
  private void needTable(double high) {
    boolean named = pending.stream().anyMatch(Lead::bold) || section.isEmpty();
    if (room() < high + waiting() && !blank) {
      newPage();
      if (!named) {
        continued(section);
      }
    }
    need(high);
  }

  private void continued(String name) {
    line(oneLine(name, textWidth() / TEXT - 12) + ", continued", TEXT, true);
  }

  /** A figure as wide as the text. */
  void figure(double high, BiConsumer<Paper, Box> draw) {
    need(high);
    draw.accept(page, new Box(MARGIN, y - high, width - MARGIN, y));
    y -= high + TEXT * air;
    blank = false;
    heading = "";
  }

  /**
   * By what a drawing is made smaller.
   *
   * @param onThisPage in the room that is left; zero if that is too little
   */
  double drawingFactor(Paper drawing, String caption, boolean onThisPage) {
    double wide = drawing.maxX() - drawing.minX();
    double high = drawing.maxY() - drawing.minY();
    double below = belowPicture(caption);
    double full = Math.min(textWidth() / wide, (textHeight() - below - LEADS) / high);
    double here = Math.min(full, (room() - below - waiting()) / high);
    return !onThisPage ? full : here >= SMALLEST_FIGURE * full ? here : 0;
  }

  /**
   * A drawing made as wide as the text, with its caption.
   *
   * @param onThisPage whether it is made somewhat smaller if it then fits on this page
   */
  void drawing(Paper drawing, String caption, boolean onThisPage) {
    double here = onThisPage ? drawingFactor(drawing, caption, true) : 0;
    double factor = here > 0 ? here : drawingFactor(drawing, caption, false);
    double wide = factor * (drawing.maxX() - drawing.minX());
    double high = factor * (drawing.maxY() - drawing.minY());
    Box box = pictureBox(wide, high, caption);
    Point low = new Point(drawing.minX(), drawing.minY()).times(factor);
    Miniature.whole(drawing, factor, new Point(box.minX(), box.minY()).minus(low), page);
    afterPicture(box, caption);
  }

  /** A chart that Java2D paints, as {@link #flexible}. */
  void chart(int wide, int high, Consumer<Graphics2D> painter, String caption) {
    flexible(
        (double) high / wide,
        caption,
        (paper, box) -> charts.add(new Painted(wide, high, painter, box)));
  }

  /**
   * What is drawn as wide as the text, or somewhat smaller if it then fits on the page.
   *
   * @param aspect height over width
   */
  void flexible(double aspect, String caption, BiConsumer<Paper, Box> draw) {
    double below = belowPicture(caption);
    double most = Math.min(textWidth(), (textHeight() - below - LEADS) / aspect);
    double left = (room() - below - waiting()) / aspect;
    double wide = left >= SMALLEST_FIGURE * most ? Math.min(most, left) : most;
    Box box = pictureBox(wide, wide * aspect, caption);
    draw.accept(page, box);
    afterPicture(box, caption);
  }

  private double belowPicture(String caption) {
    return lines(caption, TEXT, false).size() * leading(TEXT) + TEXT;
  }

  private Box pictureBox(double wide, double high, String caption) {
    need(high + belowPicture(caption));
    double x = MARGIN + (textWidth() - wide) / 2;
    return new Box(x, y - high, x + wide, y);
  }

  private void afterPicture(Box box, String caption) {
    y = box.minY() - TEXT * 0.6;
    blank = false;
    paragraph(caption);
  }

  /** A table of figures. */
  void table(Table table, Figures figures) {
    List<Boolean> numbers = table.columns().stream().map(c -> c.measure().isNumber()).toList();
    List<List<String>> rows = new ArrayList<>();
    for (List<Quantity> row : table.rows()) {
      List<String> cells = new ArrayList<>();
      for (int c = 0; c < row.size(); c++) {
        cells.add(figures.of(row.get(c), table.columns().get(c).measure()));
      }
      rows.add(PageTable.unbroken(cells, numbers));
    }
    table(table.columns().stream().map(Column::title).toList(), numbers, rows);
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

  /** A table; its heading and its head are printed again on each page that it goes on to. */
  private void table(List<String> head, List<Boolean> numbers, List<List<String>> rows) {
    if (rows.isEmpty()) {
      return;
    }
    PageTable table = new PageTable(face, head, numbers, rows, textWidth(), air);
    double whole = table.high();
    double first = table.head().high();
    for (PageTable.Row row : table.rows().subList(0, Math.min(3, rows.size()))) {
      first += row.high();
    }
    needTable(whole <= KEPT_WHOLE * textHeight() ? whole : first);
    String name = heading;
    row(table, table.head());
    for (int i = 0; i < rows.size(); i++) {
      PageTable.Row row = table.rows().get(i);
      // The last two rows go on together.
      double next = i == rows.size() - 2 ? table.rows().get(i + 1).high() : 0;
      if (room() < row.high() + next) {
        newPage();
        if (!name.isEmpty()) {
          continued(name);
        }
        row(table, table.head());
      }
      row(table, row);
    }
    y -= TEXT * 0.8 * air;
  }

  private void row(PageTable table, PageTable.Row row) {
    double size = table.size();
    double x = MARGIN;
    for (int c = 0; c < row.lines().size(); c++) {
      double right = x + table.width(c);
      double line = y - 0.825 * size;
      for (String text : row.lines().get(c)) {
        if (text.equals(PageTable.TICK_BOX)) {
          tickBox(right - size * 0.9, line, size * 0.9);
        } else if (table.isNumber(c)) {
          page.text(text, new Point(right, line), size, Anchor.END, row.bold());
        } else {
          page.text(text, new Point(x, line), size, Anchor.START, row.bold());
        }
        line -= table.leading();
      }
      x = right + PageTable.GAP;
    }
    y -= row.high();
    page.line(new Point(MARGIN, y), new Point(x, y), row.bold() ? HEAD_RULE : RULE);
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
