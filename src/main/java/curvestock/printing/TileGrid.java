package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.drawing.PaperSize;
import curvestock.geometry.Arc;
import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;

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

  private static final int SAMPLES_AN_ARC = 24;

  /** How many places of the grid are tried each way, for the one that needs fewest pages. */
  private static final int SHIFTS = 8;

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
    if (size.isRoll()) {
      return onRoll(drawing, w, h);
    }
    TileGrid upright = of(drawing, w, h);
    TileGrid lying = of(drawing, h, w);
    return lying.tiles().size() < upright.tiles().size() ? lying : upright;
  }

  /** Pages as wide as the roll, or as high, and only as long as needed. */
  private static TileGrid onRoll(Paper drawing, double width, double longest) {
    double high = drawing.maxY() - drawing.minY() + 2 * BORDER + HEAD + FOOT;
    double wide = drawing.maxX() - drawing.minX() + 2 * BORDER + SIDE + RIGHT;
    // Never too short for the check bars.
    TileGrid along = of(drawing, Math.max(200, Math.min(longest, wide)), width);
    TileGrid across = of(drawing, width, Math.max(200, Math.min(longest, high)));
    return across.tiles().size() < along.tiles().size() ? across : along;
  }

  private static TileGrid of(Paper drawing, double pageWidth, double pageHeight) {
    double cellWidth = pageWidth - SIDE - RIGHT - OVERLAP;
    double cellHeight = pageHeight - HEAD - FOOT - OVERLAP;
    double wide = drawing.maxX() - drawing.minX() + 2 * BORDER - OVERLAP;
    double high = drawing.maxY() - drawing.minY() + 2 * BORDER - OVERLAP;
    int columns = Math.max(1, (int) Math.ceil(wide / cellWidth - 1e-9));
    int rows = Math.max(1, (int) Math.ceil(high / cellHeight - 1e-9));
    TileGrid best = null;
    double slackX = columns * cellWidth - wide;
    double slackY = rows * cellHeight - high;
    for (int i = 0; i <= SHIFTS; i++) {
      for (int j = 0; j <= SHIFTS; j++) {
        double left = drawing.minX() - BORDER + OVERLAP / 2 - slackX * shift(i);
        double top = drawing.maxY() + BORDER - OVERLAP / 2 + slackY * shift(j);
        TileGrid grid =
            new TileGrid(columns, rows, pageWidth, pageHeight, left, top, List.of())
                .filled(drawing);
        if (best == null || grid.tiles().size() < best.tiles().size()) {
          best = grid;
        }
      }
    }
    return best;
  }

  /** The middle first, then ever further to both sides. */
  private static double shift(int i) {
    int steps = i % 2 == 0 ? i / 2 : -(i + 1) / 2;
    return 0.5 + (double) steps / SHIFTS;
  }

  private TileGrid filled(Paper drawing) {
    List<Tile> filled = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Tile tile = new Tile(row, column);
        if (shows(drawing, window(tile))) {
          filled.add(tile);
        }
      }
    }
    return new TileGrid(columns, rows, pageWidth, pageHeight, left, top, filled);
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

  boolean has(int row, int column) {
    return tiles.contains(new Tile(row, column));
  }

  /** Whether a line of the drawing runs through the window; text alone does not make a page. */
  private static boolean shows(Paper drawing, Box window) {
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Paper.Shape shape) {
        for (Edge edge : shape.edges()) {
          if (crosses(edge, window)) {
            return true;
          }
        }
      }
    }
    return false;
  }

  private static boolean crosses(Edge edge, Box window) {
    if (!(edge instanceof Arc arc)) {
      return crosses(edge.start(), edge.end(), window);
    }
    for (int i = 0; i < SAMPLES_AN_ARC; i++) {
      double from = arc.startAngle() + arc.sweep() * i / SAMPLES_AN_ARC;
      double to = arc.startAngle() + arc.sweep() * (i + 1) / SAMPLES_AN_ARC;
      if (crosses(arc.pointAt(from), arc.pointAt(to), window)) {
        return true;
      }
    }
    return false;
  }

  /** Liang and Barsky's clipping of a line by a rectangle (from memory). */
  private static boolean crosses(Point a, Point b, Box window) {
    double[] p = {a.x() - b.x(), b.x() - a.x(), a.y() - b.y(), b.y() - a.y()};
    double[] q = {
      a.x() - window.minX(), window.maxX() - a.x(), a.y() - window.minY(), window.maxY() - a.y()
    };
    double first = 0;
    double last = 1;
    for (int i = 0; i < 4; i++) {
      if (p[i] == 0 && q[i] < 0) {
        return false;
      }
      if (p[i] < 0) {
        first = Math.max(first, q[i] / p[i]);
      } else if (p[i] > 0) {
        last = Math.min(last, q[i] / p[i]);
      }
    }
    return first <= last;
  }
}
