package curvestock.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A lattice laid in one direction, flush with one piece of its cell to the left and with one to the
 * bottom of whatever rectangle it fills.
 */
final class FlushLattice {

  /** Pieces laid in a rectangle whose lower left corner is the origin. */
  record Block(String name, List<double[]> poses) {
    int count() {
      return poses.size();
    }
  }

  /**
   * Pieces that fill a sheet exactly may stand out by this much (mm): the sum of what {@link
   * Contact} adds to each of up to two hundred steps.
   */
  static final double ROUNDING = 2e-7;

  /** Far above the rounding of a lattice point's coordinates (mm), far below any step. */
  private static final double UNSURE = 1e-9;

  private final String name;
  private final List<double[]> cell;
  private final List<TurnedBox> boxes;
  private final double[] step;
  private final double[] next;
  private final double determinant;
  private final double originX;
  private final double originY;

  private FlushLattice(
      String name,
      List<double[]> cell,
      List<TurnedBox> boxes,
      double[] step,
      double[] next,
      int flushLeft,
      int flushLow) {
    this.name = name;
    this.cell = cell;
    this.boxes = boxes;
    this.step = step;
    this.next = next;
    this.determinant = step[0] * next[1] - step[1] * next[0];
    this.originX = -boxes.get(flushLeft).minX() - cell.get(flushLeft)[0];
    this.originY = -boxes.get(flushLow).minY() - cell.get(flushLow)[1];
  }

  /**
   * The lattice turned by quarters, flush left and low with each cell piece; none if the grain
   * forbids it.
   *
   * @param mirrored whether the piece is its own mirror image, so that the lattice may be mirrored
   * @param grain direction of the sheet's grain
   */
  static List<FlushLattice> all(
      Body body, PeriodicLattice lattice, int quarter, boolean mirrored, double grain) {
    List<double[]> cell = new ArrayList<>();
    for (double[] pose : lattice.cell()) {
      double[] at = turned(pose[0], pose[1], quarter);
      cell.add(new double[] {at[0], at[1], pose[2] + quarter * Math.PI / 2});
    }
    if (cell.stream().anyMatch(pose -> !body.grainAllows(pose[2], grain))) {
      return List.of();
    }
    List<TurnedBox> boxes = cell.stream().map(pose -> TurnedBox.of(body, pose[2])).toList();
    List<FlushLattice> all = new ArrayList<>();
    boolean leansBothWays = lattice.nextY() != 0 && lattice.cell().size() == 1 && mirrored;
    for (int mirror = 0; mirror < (leansBothWays ? 2 : 1); mirror++) {
      // One mirror-symmetric piece a cell: the mirrored lattice leans the other way.
      double side = mirror == 0 ? 1 : -1;
      double[] step = turned(side * lattice.stepX(), lattice.stepY(), quarter);
      double[] next = turned(lattice.nextX(), side * lattice.nextY(), quarter);
      for (int x = 0; x < cell.size(); x++) {
        for (int y = 0; y < cell.size(); y++) {
          all.add(new FlushLattice(lattice.name(), cell, boxes, step, next, x, y));
        }
      }
    }
    return all;
  }

  private static double[] turned(double x, double y, int quarter) {
    return switch (quarter % 4) {
      case 0 -> new double[] {x, y};
      case 1 -> new double[] {-y, x};
      case 2 -> new double[] {-x, -y};
      default -> new double[] {y, -x};
    };
  }

  private boolean isFlat() {
    return Math.abs(determinant) < 1;
  }

  /** The pieces that lie in the rectangle, at most so many. */
  Block in(double width, double height, int most) {
    List<double[]> poses = new ArrayList<>();
    if (width <= 0 || height <= 0 || isFlat()) {
      return new Block(name, poses);
    }
    for (int k = 0; k < cell.size(); k++) {
      Window window = new Window(k, width, height);
      if (window.isEmpty()) {
        continue;
      }
      int[] range = window.range();
      for (int j = range[2]; j <= range[3] && poses.size() < most; j++) {
        for (int i = range[0]; i <= range[1] && poses.size() < most; i++) {
          double x = window.baseX + i * step[0] + j * next[0];
          double y = window.baseY + i * step[1] + j * next[1];
          if (x >= window.lowX && x <= window.highX && y >= window.lowY && y <= window.highY) {
            poses.add(new double[] {x, y, cell.get(k)[2]});
          }
        }
      }
    }
    return new Block(name, poses);
  }

  /** No fewer than lie in the rectangle, and hardly ever more; in steps of a column. */
  int atMost(double width, double height) {
    if (width <= 0 || height <= 0 || isFlat()) {
      return 0;
    }
    long count = 0;
    for (int k = 0; k < cell.size(); k++) {
      Window window = new Window(k, width, height);
      if (!window.isEmpty()) {
        count += window.atMost();
      }
    }
    return (int) Math.min(Integer.MAX_VALUE, count);
  }

  /** Where the origin of one cell piece may lie, and which multiples of the steps take it there. */
  private final class Window {

    final double baseX;
    final double baseY;
    final double lowX;
    final double highX;
    final double lowY;
    final double highY;

    Window(int piece, double width, double height) {
      TurnedBox box = boxes.get(piece);
      baseX = originX + cell.get(piece)[0];
      baseY = originY + cell.get(piece)[1];
      lowX = -box.minX() - ROUNDING;
      highX = width - box.maxX() + ROUNDING;
      lowY = -box.minY() - ROUNDING;
      highY = height - box.maxY() + ROUNDING;
    }

    boolean isEmpty() {
      return lowX > highX || lowY > highY;
    }

    /** Least and greatest multiples of step, then of next, that can reach the window. */
    int[] range() {
      double[] is = new double[4];
      double[] js = new double[4];
      int k = 0;
      for (double x : new double[] {lowX, highX}) {
        for (double y : new double[] {lowY, highY}) {
          double dx = x - baseX;
          double dy = y - baseY;
          is[k] = (dx * next[1] - dy * next[0]) / determinant;
          js[k] = (step[0] * dy - step[1] * dx) / determinant;
          k++;
        }
      }
      Arrays.sort(is);
      Arrays.sort(js);
      return new int[] {
        (int) Math.floor(is[0]),
        (int) Math.ceil(is[3]),
        (int) Math.floor(js[0]),
        (int) Math.ceil(js[3])
      };
    }

    long atMost() {
      int[] range = range();
      long count = 0;
      for (int j = range[2]; j <= range[3]; j++) {
        double x = baseX + j * next[0];
        double y = baseY + j * next[1];
        double first =
            Math.max(
                range[0],
                Math.max(least(step[0], lowX - x, highX - x), least(step[1], lowY - y, highY - y)));
        double last =
            Math.min(
                range[1],
                -Math.max(
                    least(-step[0], lowX - x, highX - x), least(-step[1], lowY - y, highY - y)));
        count += Math.max(0, (long) (last - first) + 1);
      }
      return count;
    }

    /** The least whole multiple of the step that may lie from low to high; never too large. */
    private static double least(double step, double low, double high) {
      if (step == 0) {
        boolean never = low > UNSURE || high < -UNSURE;
        return never ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
      }
      return Math.ceil((step > 0 ? low - UNSURE : high + UNSURE) / step);
    }
  }
}
