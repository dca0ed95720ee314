package curvestock.printing;

import curvestock.printing.TileGrid.Tile;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How many of a drawing's {@link InkPoints} each cell of a grid shows. Many grids are tried, so the
 * points are only counted, by the one or two rows and the one or two columns that show them.
 */
final class InkSpread {

  private static final short NOWHERE = -1;

  private final int rows;
  private final int columns;

  /** By the code of the rows, then by that of the columns. */
  private final int[][] counts;

  /**
   * @param byRow of each point the {@link #code} of the rows that show it
   * @param byColumn the same of the columns
   */
  InkSpread(int rows, short[] byRow, int columns, short[] byColumn) {
    this.rows = rows;
    this.columns = columns;
    this.counts = new int[2 * rows][2 * columns];
    for (int i = 0; i < byRow.length; i++) {
      if (byRow[i] != NOWHERE && byColumn[i] != NOWHERE) {
        counts[byRow[i]][byColumn[i]]++;
      }
    }
  }

  /**
   * The rows (or columns) from the first to the last as one number: twice the first, and one more
   * if the next shows the point too. Windows overlap by far less than a cell, so no third does.
   */
  static short code(int first, int last) {
    return first > last ? NOWHERE : (short) (2 * first + (last - first));
  }

  private static int first(int code) {
    return code / 2;
  }

  private static int last(int code) {
    return code / 2 + code % 2;
  }

  /** The cells that show something, row by row. */
  List<Tile> shown() {
    List<Tile> tiles = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        if (shows(row, column)) {
          tiles.add(new Tile(row, column));
        }
      }
    }
    return tiles;
  }

  private boolean shows(int row, int column) {
    for (int r = Math.max(0, 2 * row - 1); r <= 2 * row + 1; r++) {
      for (int c = Math.max(0, 2 * column - 1); c <= 2 * column + 1; c++) {
        if (counts[r][c] > 0) {
          return true;
        }
      }
    }
    return false;
  }

  /** For each of the tiles how much of the lines, in millimetres, no other of them shows. */
  Map<Tile, Double> alone(List<Tile> tiles) {
    boolean[][] printed = new boolean[rows][columns];
    tiles.forEach(tile -> printed[tile.row()][tile.column()] = true);
    int[][] alone = new int[rows][columns];
    for (int r = 0; r < counts.length; r++) {
      for (int c = 0; c < counts[r].length; c++) {
        if (counts[r][c] > 0) {
          count(r, c, printed, alone);
        }
      }
    }
    Map<Tile, Double> lengths = new HashMap<>();
    tiles.forEach(t -> lengths.put(t, InkPoints.STEP * alone[t.row()][t.column()]));
    return lengths;
  }

  private void count(int r, int c, boolean[][] printed, int[][] alone) {
    int seen = 0;
    int inRow = 0;
    int inColumn = 0;
    for (int row = first(r); row <= last(r); row++) {
      for (int column = first(c); column <= last(c); column++) {
        if (printed[row][column]) {
          seen++;
          inRow = row;
          inColumn = column;
        }
      }
    }
    if (seen == 1) {
      alone[inRow][inColumn] += counts[r][c];
    }
  }
}
