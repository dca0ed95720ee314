package curvestock.packing;

import curvestock.geometry.Box;
import curvestock.geometry.FlatOutline;
import curvestock.geometry.Outline;
import java.util.Arrays;

/**
 * Signed distance of any outline: the nearest of its edges, inside or out by parity.
 *
 * <p>The plane round the outline is cut into square cells. A cell knows, from the first time that
 * somebody asks for a point in it, which edges can be nearest to any of its points and which may
 * count for parity: of a piece with ears or an easement that is a few of dozens. Points beyond all
 * cells ask every edge. The values are those of all edges, to the last bit.
 *
 * <p>Threads may share a field: a cell follows from its place alone and is immutable, so it does
 * not matter whose is kept.
 */
final class OutlineField implements DistanceField {

  /** Cells along the longer side of the outline's box; four fifths of that again lie round it. */
  private static final int CELLS_ALONG = 48;

  /** How far beyond the outline's box there are cells, as a share of its longer side. */
  private static final double ROUND = 0.4;

  /** Rounding of a distance, with room to spare, in millimetres. */
  private static final double ROUNDING = 1e-6;

  private static final int[] NONE = {};

  private final FlatOutline edges;
  private final Box box;
  private final int[] allEdges;
  private final int[] allRuns;
  private final double left;
  private final double low;
  private final double size;
  private final double perMillimetre;
  private final int columns;
  private final int rows;
  private final Cell[] cells;

  /** The floors of the cells that are known, rounded down; the others not a number. */
  private final float[] floors;

  /**
   * What holds for all points of a cell.
   *
   * @param edges those that can be nearest
   * @param runs those that can lie to the right
   * @param inside whether an odd number of the other runs lies to the right
   * @param floor no signed distance is less
   */
  @SuppressWarnings("ArrayRecordComponent") // internal, never compared or changed
  private record Cell(int[] edges, int[] runs, boolean inside, double floor) {}

  OutlineField(Outline outline) {
    edges = new FlatOutline(outline);
    box = outline.box();
    allEdges = upTo(edges.count());
    allRuns = upTo(edges.runs());
    double longer = Math.max(box.width(), box.height());
    size = longer / CELLS_ALONG;
    perMillimetre = 1 / size;
    left = box.minX() - ROUND * longer;
    low = box.minY() - ROUND * longer;
    columns = 1 + (int) ((box.width() + 2 * ROUND * longer) * perMillimetre);
    rows = 1 + (int) ((box.height() + 2 * ROUND * longer) * perMillimetre);
    cells = new Cell[columns * rows];
    floors = new float[cells.length];
    Arrays.fill(floors, Float.NaN);
  }

  private static int[] upTo(int count) {
    int[] all = new int[count];
    for (int i = 0; i < count; i++) {
      all[i] = i;
    }
    return all;
  }

  @Override
  public double at(double x, double y) {
    Cell cell = cell(x, y);
    return cell == null ? beyond(x, y) : signed(cell, x, y);
  }

  @Override
  public double at(double x, double y, double[] outward) {
    return within(x, y, Double.POSITIVE_INFINITY, outward);
  }

  @Override
  public double within(double x, double y, double limit, double[] outward) {
    Cell cell = cell(x, y);
    if (cell != null && cell.floor >= limit) {
      return limit;
    }
    double least = Double.POSITIVE_INFINITY;
    int nearest = 0;
    for (int i : cell == null ? allEdges : cell.edges) {
      double distance = edges.distance(i, x, y);
      if (distance < least) {
        least = distance;
        nearest = i;
      }
    }
    double signed =
        cell == null ? turned(allRuns, x, y, least) : signed(cell, x, y, nearest, least);
    if (signed < limit) {
      edges.outward(nearest, x, y, signed, outward);
    }
    return signed;
  }

  @Override
  public double floor(double x, double y, double enough) {
    double dx = Math.max(0, Math.max(box.minX() - x, x - box.maxX()));
    double dy = Math.max(0, Math.max(box.minY() - y, y - box.maxY()));
    double square = dx * dx + dy * dy;
    double sure = enough + ROUNDING;
    if (square >= sure * sure) {
      return Math.sqrt(square) - ROUNDING;
    }
    int at = index(x, y);
    if (at < 0) {
      return beyond(x, y);
    }
    // Of most points that is all that need be known.
    if (floors[at] >= enough) {
      return floors[at];
    }
    Cell cell = cell(at);
    return cell.floor >= enough ? cell.floor : signed(cell, x, y);
  }

  private double least(int[] of, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int i : of) {
      double distance = edges.distance(i, x, y);
      least = distance < least ? distance : least;
    }
    return least;
  }

  private double signed(Cell cell, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    int nearest = 0;
    for (int i : cell.edges) {
      double distance = edges.distance(i, x, y);
      if (distance < least) {
        least = distance;
        nearest = i;
      }
    }
    return signed(cell, x, y, nearest, least);
  }

  /** By the side of the nearest edge, where that can tell; else by parity. */
  private double signed(Cell cell, double x, double y, int nearest, double least) {
    if (cell.runs.length > 0) {
      int side = edges.side(nearest, x, y, least);
      if (side != 0) {
        return side * least;
      }
    }
    return odd(cell.runs, x, y) != cell.inside ? -least : least;
  }

  private boolean odd(int[] of, double x, double y) {
    boolean odd = false;
    for (int run : of) {
      odd ^= edges.crosses(run, x, y);
    }
    return odd;
  }

  /** The distance of a point that no cell holds. */
  private double beyond(double x, double y) {
    return turned(allRuns, x, y, least(allEdges, x, y));
  }

  private double turned(int[] runs, double x, double y, double least) {
    return odd(runs, x, y) ? -least : least;
  }

  /** The cell that holds the point; null beyond all cells. */
  private Cell cell(double x, double y) {
    int at = index(x, y);
    return at < 0 ? null : cell(at);
  }

  /** The number of the cell that holds the point; below zero beyond all cells. */
  private int index(double x, double y) {
    double column = (x - left) * perMillimetre;
    double row = (y - low) * perMillimetre;
    return column >= 0 && row >= 0 && column < columns && row < rows
        ? columns * (int) row + (int) column
        : -1;
  }

  private Cell cell(int at) {
    Cell known = cells[at];
    if (known == null) {
      known = cellAt(at % columns, at / columns);
      cells[at] = known;
      floors[at] = Math.nextDown((float) known.floor);
    }
    return known;
  }

  private Cell cellAt(int column, int row) {
    double x = left + (column + 0.5) * size;
    double y = low + (row + 0.5) * size;
    double half = size / 2 + ROUNDING;
    double reach = half * Math.sqrt(2);
    double least = least(allEdges, x, y);
    int[] near = new int[allEdges.length];
    int count = 0;
    for (int i : allEdges) {
      if (edges.distance(i, x, y) <= least + 2 * reach) {
        near[count++] = i;
      }
    }
    boolean odd = odd(allRuns, x, y);
    double floor = (odd ? -least : least) - reach;
    int[] edgesNear = Arrays.copyOf(near, count);
    if (least > reach) {
      // No edge comes in, so all points lie on the same side.
      return new Cell(edgesNear, NONE, odd, floor);
    }
    int[] right = new int[allRuns.length];
    int runs = 0;
    for (int run : allRuns) {
      if (edges.mayCross(run, x - half, y - half, y + half)) {
        right[runs++] = run;
      }
    }
    return new Cell(edgesNear, Arrays.copyOf(right, runs), false, floor);
  }
}
