package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.PaperSize;
import curvestock.geometry.Box;
import curvestock.geometry.Point;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a drawing larger than a page is cut into tiles. Neighbours overlap by {@link #OVERLAP}; the
 * middle of the overlap is where one cell of the grid ends and the next begins.
 *
 * @param columns cells from left to right
 * @param rows cells from top to bottom
 * @param pageWidth of the page as it lies, in millimetres
 * @param pageHeight of the page as it lies
 * @param left x of the first cell's left side in the drawing
 * @param top y of the first cell's upper side in the drawing
 * @param tiles the cells that hold something, row by row
 */
record TileGrid(
    int columns,
    int rows,
    double pageWidth,
    double pageHeight,
    double left,
    double top,
    List<Tile> tiles) {

  /** What neighbours show both: more than printers leave blank. */
  static final double OVERLAP = 10;

  /** Room for the page's name at the top. */
  static final double HEAD = 15;

  /** Room for the check bars at the bottom and on the left. */
  static final double FOOT = 20;

  static final double SIDE = 18;
  static final double RIGHT = 8;

  /** Room that a drawing keeps from the outer sides of its grid. */
  private static final double BORDER = 3;

  /** How many places of the grid are tried each way, for the one that needs fewest pages. */
  private static final int SHIFTS = 12;

  /** The same where slivers remain, of grids of few cells. */
  private static final int FINE_SHIFTS = 40;

  private static final int FEW_CELLS = 12;

  /** A page that shows less of the lines than this, in millimetres, is a sliver. */
  static final double SLIVER = 40;

  /** Less than this is a stroke that nobody would tape a page on for. */
  static final double STROKE = 12;

  /** One page of the grid. */
  record Tile(int row, int column) {
    /** As in a chess board's notation, from the top left: A1, A2, ... B1. */
    String name() {
      String letters = "";
      for (int r = row; r >= 0; r = r / 26 - 1) {
        letters = (char) ('A' + r % 26) + letters;
      }
      return letters + (column + 1);
    }
  }

  TileGrid {
    tiles = List.copyOf(tiles);
  }

  /** The grid of fewest pages for the drawing, upright pages or lying ones. */
  static TileGrid of(Paper drawing, PaperSize size) {
    double w = size.width().millimetres();
    double h = size.height().millimetres();
    InkPoints ink = InkPoints.of(drawing);
    if (size.isRoll()) {
      return onRoll(drawing, ink, w, h);
    }
    return of(drawing, ink, w, h).orBetter(of(drawing, ink, h, w)).grid();
  }

  /** A grid, and how many of its pages show next to nothing, or little. */
  private record Tried(TileGrid grid, long strokes, long slivers) {

    static Tried of(TileGrid grid, Map<Tile, Double> alone) {
      return new Tried(grid, below(STROKE, grid, alone), below(SLIVER, grid, alone));
    }

    private static long below(double length, TileGrid grid, Map<Tile, Double> alone) {
      return grid.tiles().stream().filter(tile -> alone.get(tile) < length).count();
    }

    /**
     * This, unless the other takes fewer pages, or as many with fewer slivers. A page with a stroke
     * counts as two: it is a page lost.
     */
    Tried orBetter(Tried other) {
      long more = grid.tiles().size() + strokes - other.grid.tiles().size() - other.strokes;
      return more < 0 || (more == 0 && slivers <= other.slivers) ? this : other;
    }
  }

  /** Pages as wide as the roll, or as high, and only as long as needed. */
  private static TileGrid onRoll(Paper drawing, InkPoints ink, double width, double longest) {
    double high = drawing.maxY() - drawing.minY() + 2 * BORDER + HEAD + FOOT;
    double wide = drawing.maxX() - drawing.minX() + 2 * BORDER + SIDE + RIGHT;
    // Never too short for the check bars.
    TileGrid along = of(drawing, ink, Math.max(200, Math.min(longest, wide)), width).grid();
    TileGrid across = of(drawing, ink, width, Math.max(200, Math.min(longest, high))).grid();
    return across.tiles().size() < along.tiles().size() ? across : along;
  }

  private static Tried of(Paper drawing, InkPoints ink, double pageWidth, double pageHeight) {
    double cellWidth = pageWidth - SIDE - RIGHT - OVERLAP;
    double cellHeight = pageHeight - HEAD - FOOT - OVERLAP;
    double wide = drawing.maxX() - drawing.minX() + 2 * BORDER - OVERLAP;
    double high = drawing.maxY() - drawing.minY() + 2 * BORDER - OVERLAP;
    int columns = Math.max(1, (int) Math.ceil(wide / cellWidth - 1e-9));
    int rows = Math.max(1, (int) Math.ceil(high / cellHeight - 1e-9));
    double slackX = columns * cellWidth - wide;
    double slackY = rows * cellHeight - high;
    if (columns * rows == 1) {
      // At the top, so that notes find room below.
      double left = drawing.minX() - BORDER + OVERLAP / 2 - slackX / 2;
      double top = drawing.maxY() + BORDER - OVERLAP / 2;
      TileGrid single =
          new TileGrid(1, 1, pageWidth, pageHeight, left, top, List.of(new Tile(0, 0)));
      return Tried.of(single, ink.over(single).alone(single.tiles()));
    }
    Tried best = null;
    for (int shifts : new int[] {SHIFTS, FINE_SHIFTS}) {
      short[][] byRow = new short[shifts + 1][];
      for (int i = 0; i <= shifts; i++) {
        short[] byColumn = null;
        for (int j = 0; j <= shifts; j++) {
          double left = drawing.minX() - BORDER + OVERLAP / 2 - slackX * shift(i, shifts);
          double top = drawing.maxY() + BORDER - OVERLAP / 2 + slackY * shift(j, shifts);
          TileGrid empty = new TileGrid(columns, rows, pageWidth, pageHeight, left, top, List.of());
          // The columns depend on the shift to the side alone, the rows on that up or down.
          byColumn = byColumn == null ? ink.columns(empty) : byColumn;
          byRow[j] = byRow[j] == null ? ink.rows(empty) : byRow[j];
          Tried tried = empty.filled(new InkSpread(rows, byRow[j], columns, byColumn));
          best = best == null ? tried : best.orBetter(tried);
        }
      }
      if (best.slivers() == 0 || (columns * rows > FEW_CELLS && best.strokes() == 0)) {
        break;
      }
    }
    return best;
  }

  /** The middle first, then ever further to both sides. */
  private static double shift(int i, int shifts) {
    int steps = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
    return 0.5 + (double) steps / shifts;
  }

  /** With the tiles that show what no other tile does. */
  private Tried filled(InkSpread ink) {
    TileGrid grid = with(ink.shown());
    // What a page given up showed is then others' alone.
    while (true) {
      Map<Tile, Double> alone = ink.alone(grid.tiles());
      Optional<Tile> idle = grid.tiles().stream().filter(t -> alone.get(t) == 0).findFirst();
      if (idle.isEmpty()) {
        return Tried.of(grid, alone);
      }
      grid = grid.with(grid.tiles().stream().filter(t -> !t.equals(idle.get())).toList());
    }
  }

  private TileGrid with(List<Tile> others) {
    return new TileGrid(columns, rows, pageWidth, pageHeight, left, top, others);
  }

  double cellWidth() {
    return pageWidth - SIDE - RIGHT - OVERLAP;
  }

  double cellHeight() {
    return pageHeight - HEAD - FOOT - OVERLAP;
  }

  /** The tile's cell in the drawing. */
  Box cell(Tile tile) {
    double x = left + tile.column() * cellWidth();
    double y = top - tile.row() * cellHeight();
    return new Box(x, y - cellHeight(), x + cellWidth(), y);
  }

  /** What the tile shows of the drawing: its cell and half the overlap around. */
  Box window(Tile tile) {
    Box cell = cell(tile);
    double more = OVERLAP / 2;
    return new Box(cell.minX() - more, cell.minY() - more, cell.maxX() + more, cell.maxY() + more);
  }

  /** The window's place on the page. */
  Box windowOnPage() {
    return new Box(SIDE, FOOT, pageWidth - RIGHT, pageHeight - HEAD);
  }

  /** Where on the tile's page the drawing's origin lies. */
  Point origin(Tile tile) {
    Box window = window(tile);
    return new Point(SIDE - window.minX(), FOOT - window.minY());
  }

  /** Whether the page is wider than any office prints. */
  boolean isOnRoll() {
    return Math.min(pageWidth, pageHeight) > PaperSize.A3.width().millimetres();
  }

  boolean has(int row, int column) {
    return tiles.contains(new Tile(row, column));
  }
}
