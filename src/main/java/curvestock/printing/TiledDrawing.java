package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Legible;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PaperSize;
import curvestock.drawing.TextWidth;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import curvestock.printing.TileGrid.Tile;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing at full size over several pages: first a map of the pages with how to put them
 * together, then the pages, each with its name, registration crosses, the lines to trim by, and
 * bars to check the printer's scale by in both directions.
 */
final class TiledDrawing {

  /** Arms of a cross reach beyond what the neighbour covers, and stay 6 mm inside the page. */
  static final double ARM = TileGrid.OVERLAP * 0.65;

  /** From a window's corner to where no arm of a cross reaches. */
  private static final double CLEAR = TileGrid.OVERLAP / 2 + ARM + 3;

  private static final double TEXT = 3.6;
  private static final double NUMBER = 3;
  private static final double CROSS_NUMBER = 2.6;

  /** What a number of a cross takes, such as 10/12. */
  private static final double CROSS_WIDE = 7;

  /** How far from its cross a number is moved, in steps. */
  private static final int NUMBER_PLACES = 7;

  /** No place of a number reaches further from its cross, along or across. */
  private static final double NUMBERS_WITHIN =
      TileGrid.OVERLAP / 2 + 3 + 3 * NUMBER_PLACES + CROSS_WIDE;

  private static final double LEADING = 1.45;
  private static final double MARGIN = 12;

  /** Widths are guessed on the wide side; running text of small letters takes that much less. */
  private static final double PROSE = 1.14;

  private static final Pen THIN = Pen.of(Ink.CUT, 0.15);
  private static final Pen BAR = Pen.of(Ink.CUT, 0.3);
  private static final Pen TRIM = new Pen(Ink.SHEET, 0.25, "3 1.5");

  private final String title;
  private final List<String> notes;
  private final Paper drawing;
  private final TileGrid grid;
  private final List<Box> obstacles;

  /**
   * A drawing to tile.
   *
   * @param title on every page
   * @param notes a paragraph each, on the map page
   */
  TiledDrawing(String title, List<String> notes, Paper drawing, PaperSize size) {
    this.title = title;
    this.notes = List.copyOf(notes);
    this.grid = TileGrid.of(drawing, size);
    this.drawing = Lettering.clear(drawing, grid);
    this.obstacles = Lettering.covered(this.drawing);
  }

  TileGrid grid() {
    return grid;
  }

  void addTo(PdfBook book) {
    PdfBook.Figure figure = book.figure(drawing);
    boolean alone = notesFitBelow();
    if (!alone) {
      book.page(mapWidth(), mapHeight(), map());
    }
    for (int i = 0; i < grid.tiles().size(); i++) {
      Tile tile = grid.tiles().get(i);
      book.page(
          grid.pageWidth(),
          grid.pageHeight(),
          figure,
          grid.windowOnPage(),
          grid.origin(tile),
          alone ? withNotes(tile) : furniture(tile, pageNumber(i + 2)));
    }
  }

  private String pageNumber(int number) {
    return number + " of " + (grid.tiles().size() + 1);
  }

  /** Whether a drawing of one page leaves room for the notes, so that no map is needed. */
  private boolean notesFitBelow() {
    if (grid.tiles().size() > 1 || grid.isOnRoll()) {
      return false;
    }
    double below = grid.origin(grid.tiles().get(0)).y() + drawing.minY() - TileGrid.FOOT;
    double high = words().stream().mapToDouble(this::high).sum() + TEXT * 4;
    return below > high + 8;
  }

  private double high(String text) {
    return TextWidth.wrap(text, noteEms(TEXT, false)).size() * TEXT * LEADING + TEXT * 0.4;
  }

  private double noteEms(double size, boolean bold) {
    return (mapWidth() - 2 * TileGrid.SIDE) / size * (bold ? 1 / 1.12 : PROSE);
  }

  private Paper withNotes(Tile tile) {
    Paper page = furniture(tile, "");
    double y = grid.origin(tile).y() + drawing.minY() - 8;
    for (String text : words()) {
      y = paragraph(page, text, y - TEXT * 0.4, TEXT, false, TileGrid.SIDE + 6);
    }
    return page;
  }

  /** The map is printed on the same paper, upright; of a roll only a short piece is needed. */
  private double mapWidth() {
    return Math.min(grid.pageWidth(), grid.pageHeight());
  }

  private double mapHeight() {
    return Math.min(Math.max(grid.pageWidth(), grid.pageHeight()), mapWidth() * Math.sqrt(2));
  }

  // The map.

  private Paper map() {
    Paper page = new Paper();
    double y = mapHeight() - MARGIN - TEXT;
    y = paragraph(page, title, y, TEXT * 1.4, true, MARGIN);
    for (String text : words()) {
      y = paragraph(page, text, y - TEXT * 0.4, TEXT, false, MARGIN);
    }
    drawMap(
        page, new Box(MARGIN, MARGIN + 6, mapWidth() - MARGIN, Math.max(MARGIN + 40, y - TEXT)));
    String number = "Page " + pageNumber(1);
    page.text(number, new Point(MARGIN, MARGIN), NUMBER, Anchor.START, false);
    return page;
  }

  private List<String> words() {
    List<String> words = new ArrayList<>();
    if (grid.tiles().size() > 1) {
      words.add(
          "Full size on %s pages, as on the map below; where it names none there is no page. Print at 100 %% (not 'fit to page'). On each page measure the bars with a ruler: if they are off, fix the printer settings first."
              .formatted(grid.tiles().size()));
      words.add(
          "Trim each page along the dashed line on its right and at its bottom, where it has one. Lay the"
              + " trimmed edge on the page next to it so that crosses and lines meet, and tape. Crosses"
              + " are numbered by column and row: crosses of one number belong on top of each other.");
    } else {
      words.add(
          "Full size on one page. Print at 100 % (not 'fit to page') and measure the bars with a"
              + " ruler: if they are off, fix the printer settings first.");
    }
    words.addAll(notes);
    return words;
  }

  private double paragraph(
      Paper page, String text, double from, double size, boolean bold, double left) {
    double y = from;
    for (String line : TextWidth.wrap(text, noteEms(size, bold))) {
      page.text(line, new Point(left, y), size, Anchor.START, bold);
      y -= size * LEADING;
    }
    return y;
  }

  /** The drawing made small, with the grid over it. */
  private void drawMap(Paper page, Box room) {
    double wide = grid.columns() * grid.cellWidth();
    double high = grid.rows() * grid.cellHeight();
    double factor = Math.min(room.width() / wide, room.height() / high);
    Point shift =
        new Point(
            (room.minX() + room.maxX()) / 2 - factor * (grid.left() + wide / 2),
            room.maxY() - factor * grid.top());
    Miniature.draw(drawing, factor, shift, page);
    for (int row = 0; row < grid.rows(); row++) {
      for (int column = 0; column < grid.columns(); column++) {
        Tile tile = new Tile(row, column);
        Box cell = grid.cell(tile);
        Point low = new Point(cell.minX(), cell.minY()).times(factor).plus(shift);
        Point high2 = new Point(cell.maxX(), cell.maxY()).times(factor).plus(shift);
        boolean printed = grid.has(row, column);
        rectangle(page, new Box(low.x(), low.y(), high2.x(), high2.y()), printed ? THIN : TRIM);
        if (printed) {
          double small = Math.min(6, Math.min(high2.x() - low.x(), high2.y() - low.y()) / 4);
          double size = Math.max(Legible.SMALLEST, small);
          Point at = clearest(cell, tile.name(), size / factor).times(factor).plus(shift);
          page.text(tile.name(), at, size, Anchor.MIDDLE, true);
        }
      }
    }
  }

  /** Where in its cell a page's name meets the fewest lines; in the middle if that is as good. */
  private Point clearest(Box cell, String name, double size) {
    double wide = size * TextWidth.boldEms(name) / 2;
    Point middle = new Point((cell.minX() + cell.maxX()) / 2, (cell.minY() + cell.maxY()) / 2);
    Point reach =
        new Point(
            Math.max(0, cell.width() / 2 - wide - size / 4), Math.max(0, cell.height() / 2 - size));
    List<Box> near = Lettering.near(obstacles, cell, Math.max(wide, size));
    Point best = middle;
    long least = Long.MAX_VALUE;
    for (int x : new int[] {0, -1, 1}) {
      for (int y : new int[] {0, 1, -1}) {
        Point at = middle.plus(new Point(x * reach.x(), y * reach.y()));
        Box box = new Box(at.x() - wide, at.y() - size * 0.6, at.x() + wide, at.y() + size * 0.6);
        long met = met(box, near);
        if (met < least) {
          least = met;
          best = at;
        }
      }
    }
    return best;
  }

  private static void rectangle(Paper page, Box box, Pen pen) {
    page.polygon(
        List.of(
            new Point(box.minX(), box.minY()),
            new Point(box.maxX(), box.minY()),
            new Point(box.maxX(), box.maxY()),
            new Point(box.minX(), box.maxY()),
            new Point(box.minX(), box.minY())),
        "none",
        pen);
  }

  // A page.

  /**
   * All but the drawing.
   *
   * @param number which page of the file it is, or nothing
   */
  private Paper furniture(Tile tile, String number) {
    Paper page = new Paper();
    Box window = grid.windowOnPage();
    double head = grid.pageHeight() - TileGrid.HEAD + 6;
    String name = "Page " + tile.name();
    double left = window.minX() + CLEAR;
    double wide = 5 * TextWidth.boldEms(name) + 3;
    page.text(name, new Point(left, head), 5, Anchor.START, true);
    if (!number.isEmpty()) {
      page.text(number, new Point(left + wide, head), NUMBER, Anchor.START, false);
      wide += NUMBER * TextWidth.ems(number);
    }
    double room = window.width() - 2 * CLEAR - wide - 8;
    String about = "Full size, print at 100 % · " + title;
    double size = Legible.size(about, 3.4, room);
    List<String> lines = TextWidth.wrap(about, Math.max(room / size, 1));
    int shown = Math.min(2, lines.size());
    for (int i = 0; i < shown; i++) {
      String line = lines.get(i) + (i == 1 && lines.size() > 2 ? " …" : "");
      double y = head + (shown == 1 ? 0 : 1.5 - 3 * i);
      page.text(line, new Point(window.maxX() - CLEAR, y), size, Anchor.END, false);
    }
    trims(page, tile, window);
    crosses(page, tile, window);
    bars(page, window);
    return page;
  }

  private void trims(Paper page, Tile tile, Box window) {
    Point lowRight = new Point(window.maxX(), window.minY());
    if (grid.has(tile.row(), tile.column() + 1)) {
      page.line(lowRight, new Point(window.maxX(), window.maxY()), TRIM);
    }
    if (grid.has(tile.row() + 1, tile.column())) {
      page.line(new Point(window.minX(), window.minY()), lowRight, TRIM);
    }
  }

  /** At the corners of the cell, which neighbours show too. */
  private void crosses(Paper page, Tile tile, Box window) {
    double half = TileGrid.OVERLAP / 2;
    List<Box> here = Lettering.near(obstacles, grid.window(tile), NUMBERS_WITHIN);
    for (int down = 0; down <= 1; down++) {
      for (int right = 0; right <= 1; right++) {
        int row = tile.row() + down;
        int column = tile.column() + right;
        if (!isShared(row, column)) {
          continue;
        }
        double x = right == 0 ? window.minX() + half : window.maxX() - half;
        double y = down == 0 ? window.maxY() - half : window.minY() + half;
        page.line(new Point(x - ARM, y), new Point(x + ARM, y), THIN);
        page.line(new Point(x, y - ARM), new Point(x, y + ARM), THIN);
        page.text(
            column + "/" + row,
            beside(tile, here, new Point(x, y), right == 0 ? 1 : -1, down == 0 ? -1 : 1),
            CROSS_NUMBER,
            right == 0 ? Anchor.START : Anchor.END,
            false);
      }
    }
  }

  /**
   * Where a cross's number meets no line and no word of the drawing.
   *
   * @param here what the page shows of them
   * @param right 1 for words to the right of the cross, −1 for words to its left
   * @param up the same for above and below
   */
  private Point beside(Tile tile, List<Box> here, Point cross, int right, int up) {
    Point origin = grid.origin(tile);
    List<Box> near =
        Lettering.near(here, Box.of(cross.minus(origin), cross.minus(origin)), NUMBERS_WITHIN);
    Point best = cross;
    long least = Long.MAX_VALUE;
    for (int out = 0; out < NUMBER_PLACES && least > 0; out++) {
      for (int along = 0; along <= out && least > 0; along++) {
        double aside = TileGrid.OVERLAP / 2 + 3 + 3.0 * along;
        double away = 3 + 3.0 * (out - along);
        Point at = cross.plus(new Point(right * aside, up * away));
        Point low = at.minus(origin).plus(new Point(right > 0 ? 0 : -CROSS_WIDE, -CROSS_NUMBER));
        Point high = low.plus(new Point(CROSS_WIDE, 2 * CROSS_NUMBER));
        long met = met(new Box(low.x(), low.y(), high.x(), high.y()), near);
        if (met < least) {
          least = met;
          best = at;
        }
      }
    }
    return best;
  }

  /** How many of the obstacles a box covers. */
  private static int met(Box box, List<Box> obstacles) {
    int met = 0;
    for (Box obstacle : obstacles) {
      met += obstacle.overlaps(box) ? 1 : 0;
    }
    return met;
  }

  /** Whether more than one printed page shows the corner of cells. */
  private boolean isShared(int row, int column) {
    int pages = 0;
    for (int up = 0; up <= 1; up++) {
      for (int back = 0; back <= 1; back++) {
        pages += grid.has(row - up, column - back) ? 1 : 0;
      }
    }
    return pages > 1;
  }

  private static void bars(Paper page, Box window) {
    double x = window.minX() + CLEAR;
    double y = window.minY() + CLEAR;
    double below = window.minY() - 6;
    double beside = window.minX() - 4;
    ScaleBar.across(page, new Point(x, below), 100, "100 mm", BAR);
    ScaleBar.across(page, new Point(x, below - 6), 4 * 25.4, "4 in", BAR);
    ScaleBar.up(page, new Point(beside, y), 100, "100 mm", BAR);
    ScaleBar.up(page, new Point(beside - 6, y), 4 * 25.4, "4 in", BAR);
  }
}
