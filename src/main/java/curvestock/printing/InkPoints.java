package curvestock.printing;

import curvestock.drawing.Paper;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Points along all lines of a drawing, one for each {@value #STEP} mm, to count on which pages they
 * show. Text alone does not make a page.
 */
final class InkPoints {

  /** Shorter strokes may be overlooked. */
  static final double STEP = 1;

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

  /** Where the grid's windows show them. */
  InkSpread over(TileGrid grid) {
    return new InkSpread(grid.rows(), rows(grid), grid.columns(), columns(grid));
  }

  /** For each point which of the grid's rows show it, as {@link InkSpread} has it. */
  short[] rows(TileGrid grid) {
    return cells(point -> grid.top() - point.y(), grid.cellHeight(), grid.rows());
  }

  /** For each point which of the grid's columns show it, as {@link InkSpread} has it. */
  short[] columns(TileGrid grid) {
    return cells(point -> point.x() - grid.left(), grid.cellWidth(), grid.columns());
  }

  private short[] cells(ToDoubleFunction<Point> along, double cell, int cells) {
    double more = TileGrid.OVERLAP / 2;
    short[] codes = new short[points.size()];
    for (int i = 0; i < codes.length; i++) {
      double at = along.applyAsDouble(points.get(i));
      int first = Math.max(0, (int) Math.floor((at - more) / cell));
      int last = Math.min(cells - 1, (int) Math.floor((at + more) / cell));
      codes[i] = InkSpread.code(first, last);
    }
    return codes;
  }
}
