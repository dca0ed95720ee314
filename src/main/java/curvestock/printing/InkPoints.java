package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.printing.TileGrid.Tile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntConsumer;

/**
 * Points along all lines of a drawing, one for each {@value #STEP} mm, to count on which pages they
 * show. Text alone does not make a page.
 */
final class InkPoints {

  /** Shorter strokes may be overlooked. */
  private static final double STEP = 1;

  private final List<Point> points;

  private InkPoints(List<Point> points) {
    this.points = points;
  }

  static InkPoints of(Paper drawing) {
    List<Point> points = new ArrayList<>();
    for (Paper.Thing thing : drawing.things()) {
      if (thing instanceof Paper.Shape shape) {
        for (Edge edge : shape.edges()) {
          int steps = Math.max(1, (int) Math.ceil(edge.length() / STEP));
          for (int i = 0; i < steps; i++) {
            points.add(edge.part(0, (i + 0.5) / steps).end());
          }
        }
      }
    }
    return new InkPoints(points);
  }

  /** In the order of the drawing. */
  List<Point> all() {
    return points;
  }

  /** The grid's cells whose windows show something, row by row. */
  List<Tile> shown(TileGrid grid) {
    boolean[] any = new boolean[grid.rows() * grid.columns()];
    IntConsumer show = cell -> any[cell] = true;
    points.forEach(point -> cells(grid, point, show));
    List<Tile> tiles = new ArrayList<>();
    for (int cell = 0; cell < any.length; cell++) {
      if (any[cell]) {
        tiles.add(new Tile(cell / grid.columns(), cell % grid.columns()));
      }
    }
    return tiles;
  }

  /** For each tile of the grid how much of the lines, in millimetres, no other tile shows. */
  Map<Tile, Double> alone(TileGrid grid) {
    int columns = grid.columns();
    boolean[] printed = new boolean[grid.rows() * columns];
    grid.tiles().forEach(tile -> printed[tile.row() * columns + tile.column()] = true);
    int[] alone = new int[printed.length];
    int[] seen = new int[2];
    IntConsumer see =
        cell -> {
          if (printed[cell]) {
            seen[0]++;
            seen[1] = cell;
          }
        };
    for (Point point : points) {
      seen[0] = 0;
      cells(grid, point, see);
      if (seen[0] == 1) {
        alone[seen[1]]++;
      }
    }
    Map<Tile, Double> lengths = new HashMap<>();
    grid.tiles().forEach(t -> lengths.put(t, STEP * alone[t.row() * columns + t.column()]));
    return lengths;
  }

  /** Row by row the numbers of the cells whose windows show the point, printed or not. */
  private static void cells(TileGrid grid, Point point, IntConsumer cell) {
    double more = TileGrid.OVERLAP / 2;
    double right = point.x() - grid.left();
    double down = grid.top() - point.y();
    int firstRow = Math.max(0, (int) Math.floor((down - more) / grid.cellHeight()));
    int lastRow = Math.min(grid.rows() - 1, (int) Math.floor((down + more) / grid.cellHeight()));
    int first = Math.max(0, (int) Math.floor((right - more) / grid.cellWidth()));
    int last = Math.min(grid.columns() - 1, (int) Math.floor((right + more) / grid.cellWidth()));
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = first; column <= last; column++) {
        cell.accept(row * grid.columns() + column);
      }
    }
  }
}
