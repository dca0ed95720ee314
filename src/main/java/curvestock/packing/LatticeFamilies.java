package curvestock.packing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All lattice families for one shape: columns of like pieces (upright or leaning), columns turned
 * half round every other time, head-to-tail pairs in a column, columns whose pieces tilt to and
 * fro, and columns of fans.
 *
 * <p>Every step is a {@link Contact} and so the least that keeps the gap. Those with two pieces a
 * cell are double lattices (Kuperberg 1990; Mount and Silverman 1990; cited from memory). Made in a
 * few milliseconds.
 */
final class LatticeFamilies {

  private static final int OFFSETS = 16;
  private static final int FEW_OFFSETS = 4;

  /** Outlines with more edges than this take long to measure: fewer lattices are tried. */
  private static final int MANY_EDGES = 8;

  /** Far above the rounding of a sum of lengths in millimetres, and far below what matters. */
  private static final double SLACK = 1e-6;

  private static final int KEPT_PER_FAMILY = 3;

  private static final int FAN_PIECES = 4;

  /** Degrees from piece to piece of a fan. */
  private static final int[] FAN_TURNS = {5, 10, 20, 35};

  /** Slivers laid closer than this are left to the level lattice, which needs no such test. */
  private static final int MOST_COLUMNS_IN_REACH = 12;

  private final Body body;
  private final double gap;
  private final boolean intricate;
  private final int offsets;

  /** Angle at which the shape's +x axis points up. */
  private static final double UP = Math.PI / 2;

  private static final double DOWN = -Math.PI / 2;

  LatticeFamilies(Body body, double gap) {
    this.body = body;
    this.gap = gap;
    this.intricate = body.cornerX.length > MANY_EDGES;
    this.offsets = intricate ? FEW_OFFSETS : OFFSETS;
  }

  List<PeriodicLattice> all() {
    List<PeriodicLattice> lattices = new ArrayList<>();
    stacks(lattices);
    if (!intricate) {
      best(lattices, pairs(), KEPT_PER_FAMILY);
      best(lattices, zigzags(), KEPT_PER_FAMILY);
      best(lattices, fans(), KEPT_PER_FAMILY);
    }
    return lattices;
  }

  private static void best(List<PeriodicLattice> to, List<PeriodicLattice> from, int most) {
    from.sort(Comparator.comparingDouble(PeriodicLattice::areaPerPiece));
    to.addAll(from.subList(0, Math.min(most, from.size())));
  }

  /** Least height of b over a at sideways offset dx. */
  private double above(double turnA, double turnB, double dx) {
    return Contact.leastShift(body, turnA, body, turnB, dx, 0, 0, 1, gap, Double.NEGATIVE_INFINITY);
  }

  /** Least distance of b to the right of a at height dy; anything below the floor if less. */
  private double beside(double turnA, double turnB, double dy, double floor) {
    return Contact.leastShift(body, turnA, body, turnB, 0, dy, 1, 0, gap, floor);
  }

  /** One piece a cell: upright or leaning columns, next columns level or at the closest height. */
  private void stacks(List<PeriodicLattice> lattices) {
    double upright = above(UP, UP, 0);
    if (!(upright > 0)) {
      return;
    }
    List<double[]> one = List.of(new double[] {0, 0, UP});
    List<PeriodicLattice> found = new ArrayList<>();
    addColumns(found, "stack", one, 0, upright);
    for (int lean = 1; lean <= 6; lean++) {
      double dx = lean * body.radius / 24;
      for (double side : new double[] {dx, -dx}) {
        double height = leaning(side);
        if (height > 0) {
          addColumns(found, "leaning stack", one, side, height);
        }
      }
    }
    lattices.addAll(found.subList(0, Math.min(2, found.size())));
    best(lattices, found, KEPT_PER_FAMILY);
    alternating(lattices, upright);
  }

  /**
   * Least step of a leaning column in which no two pieces come too near, next to each other or not.
   */
  private double leaning(double dx) {
    double step = 0;
    for (int apart = 1; apart * Math.abs(dx) < 2 * body.radius + gap; apart++) {
      step = Math.max(step, above(UP, UP, apart * dx) / apart);
    }
    return step * 50 < 2 * body.radius ? 0 : step;
  }

  /** Adds the level next column and the closest one. */
  private void addColumns(
      List<PeriodicLattice> to, String name, List<double[]> cell, double stepX, double stepY) {
    double level = nextColumn(cell, cell, stepX, stepY, 0);
    if (level > 0) {
      to.add(new PeriodicLattice(name, cell, stepX, stepY, level, 0));
    }
    double bestArea = Double.POSITIVE_INFINITY;
    PeriodicLattice bestLattice = null;
    for (int k = 1; k < offsets; k++) {
      double dy = stepY * k / offsets;
      double next = nextColumns(cell, stepX, stepY, dy);
      double area = Math.abs(stepX * dy - stepY * next);
      if (next > 0 && area < bestArea) {
        bestArea = area;
        bestLattice = new PeriodicLattice(name, cell, stepX, stepY, next, dy);
      }
    }
    if (bestLattice != null) {
      to.add(bestLattice);
    }
  }

  /** Distance from column to column, each raised by dy; minus infinity if they are too dense. */
  private double nextColumns(List<double[]> cell, double stepX, double stepY, double dy) {
    double next = nextColumn(cell, cell, stepX, stepY, dy);
    double reach = 2 * body.radius + gap;
    if (next * MOST_COLUMNS_IN_REACH < reach) {
      return Double.NEGATIVE_INFINITY;
    }
    for (int apart = 2; apart * next < reach; apart++) {
      next = Math.max(next, nextColumn(cell, cell, stepX, stepY, apart * dy) / apart);
    }
    return next;
  }

  /** Distance of the next column, its pieces raised by dy, so that no two pieces come too near. */
  private double nextColumn(
      List<double[]> left, List<double[]> right, double stepX, double stepY, double dy) {
    double need = Double.NEGATIVE_INFINITY;
    double reach = 2 * body.radius + gap;
    for (double[] a : left) {
      for (double[] b : right) {
        // The frame's origin may lie far outside the piece: what counts is where the middles lie.
        double level = b[1] + dy + middleY(b[2]) - a[1] - middleY(a[2]);
        int first = (int) Math.floor((-reach - level) / stepY);
        int last = (int) Math.ceil((reach - level) / stepY);
        int middle = (first + last) / 2;
        // From the middle outwards: the nearest are most in the way, so the others soon give way.
        for (int j = middle; j <= last; j++) {
          need = raised(need, a, b, b[0] + j * stepX - a[0], b[1] + dy + j * stepY - a[1]);
        }
        for (int j = middle - 1; j >= first; j--) {
          need = raised(need, a, b, b[0] + j * stepX - a[0], b[1] + dy + j * stepY - a[1]);
        }
      }
    }
    return need;
  }

  /** The need, raised to what b needs that stands so far aside of a already, at that height. */
  private double raised(double need, double[] a, double[] b, double aside, double height) {
    return Math.max(need, beside(a[2], b[2], height, need + aside - SLACK) - aside);
  }

  private double middleY(double turn) {
    return StrictMath.sin(turn) * body.centreX + StrictMath.cos(turn) * body.centreY;
  }

  /** Columns upright and turned half round by turns, at the height where they interlock best. */
  private void alternating(List<PeriodicLattice> lattices, double height) {
    List<double[]> up = List.of(new double[] {0, 0, UP});
    List<double[]> down = List.of(new double[] {0, 0, DOWN});
    double bestNext = Double.POSITIVE_INFINITY;
    double bestY = 0;
    for (int k = 0; k < 4 * offsets; k++) {
      double dy = height * k / (4 * offsets);
      double next = nextColumn(up, down, 0, height, dy);
      if (next < bestNext) {
        bestNext = next;
        bestY = dy;
      }
    }
    double back = nextColumn(down, up, 0, height, -bestY);
    double both = Math.max(bestNext + back, nextColumn(up, up, 0, height, 0));
    if (bestNext > 0 && back > 0) {
      List<double[]> cell = List.of(new double[] {0, 0, UP}, new double[] {bestNext, bestY, DOWN});
      lattices.add(new PeriodicLattice("alternating columns", cell, 0, height, both, 0));
    }
  }

  /** In one column a piece, then one turned half round, interlocked head to tail. */
  private List<PeriodicLattice> pairs() {
    List<Cell> cells = new ArrayList<>();
    for (int k = -offsets; k <= offsets; k++) {
      double dx = k * 2 * body.radius / offsets;
      addCell(cells, UP, DOWN, dx);
      addCell(cells, DOWN, UP, dx);
    }
    return columns("head-to-tail pairs", cells);
  }

  private List<PeriodicLattice> zigzags() {
    List<Cell> cells = new ArrayList<>();
    for (int tilt = 1; tilt <= 6; tilt++) {
      double delta = Math.toRadians(4 * tilt);
      for (int k = -4; k <= 4; k++) {
        addCell(cells, UP + delta / 2, UP - delta / 2, k * body.radius / 12);
      }
    }
    return columns("zigzag", cells);
  }

  /**
   * In one column a few pieces, each turned further than the one below about a centre that shifts
   * up just as far as the gap asks; then the next fan.
   */
  private List<PeriodicLattice> fans() {
    List<Cell> cells = new ArrayList<>();
    for (int degrees : FAN_TURNS) {
      double turn = StrictMath.toRadians(degrees);
      for (int lever = -1; lever <= 1; lever++) {
        fan(turn, lever * body.radius / 2).ifPresent(cells::add);
      }
    }
    cells.sort(Comparator.comparingDouble(cell -> cell.step * width(cell)));
    List<PeriodicLattice> found = new ArrayList<>();
    for (Cell cell : cells.subList(0, Math.min(KEPT_PER_FAMILY, cells.size()))) {
      double next = nextColumn(cell.poses, cell.poses, 0, cell.step, 0);
      if (next > 0) {
        found.add(new PeriodicLattice("fan", cell.poses, 0, cell.step, next, 0));
      }
    }
    return found;
  }

  /**
   * A fan about the vertical.
   *
   * @param lever from the frame's origin along the piece's axis to the point about which it turns
   */
  private Optional<Cell> fan(double turn, double lever) {
    List<double[]> poses = new ArrayList<>();
    for (int k = 0; k < FAN_PIECES; k++) {
      double angle = UP + (k - (FAN_PIECES - 1) / 2.0) * turn;
      double x = -lever * StrictMath.cos(angle);
      double y = poses.isEmpty() ? 0 : Double.NEGATIVE_INFINITY;
      for (double[] below : poses) {
        y = Math.max(y, below[1] + above(below[2], angle, x - below[0]));
      }
      poses.add(new double[] {x, y, angle});
    }
    double step = 0;
    for (double[] a : poses) {
      for (double[] b : poses) {
        step = Math.max(step, above(a[2], b[2], b[0] - a[0]) - (b[1] - a[1]));
      }
    }
    boolean sound = step > 0 && poses.stream().allMatch(pose -> Double.isFinite(pose[1]));
    return sound ? Optional.of(new Cell(List.copyOf(poses), step)) : Optional.empty();
  }

  /** Two or more pieces of a column and the height after which they repeat. */
  private record Cell(List<double[]> poses, double step) {}

  private void addCell(List<Cell> to, double first, double second, double dx) {
    double up = above(first, second, dx);
    double again = above(second, first, -dx);
    double step = Math.max(up + again, Math.max(above(first, first, 0), above(second, second, 0)));
    if (Double.isFinite(up) && Double.isFinite(again) && step > 0) {
      to.add(new Cell(List.of(new double[] {0, 0, first}, new double[] {dx, up, second}), step));
    }
  }

  /**
   * Columns of the cells that repeat soonest for the width they take; the rest is not worth the
   * time.
   */
  private List<PeriodicLattice> columns(String name, List<Cell> cells) {
    cells.sort(Comparator.comparingDouble(cell -> cell.step * width(cell)));
    List<PeriodicLattice> found = new ArrayList<>();
    for (Cell cell : cells.subList(0, Math.min(KEPT_PER_FAMILY, cells.size()))) {
      addColumns(found, name, cell.poses, 0, cell.step);
    }
    return found;
  }

  private double width(Cell cell) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (double[] pose : cell.poses) {
      TurnedBox box = TurnedBox.of(body, pose[2]);
      low = Math.min(low, pose[0] + box.minX());
      high = Math.max(high, pose[0] + box.maxX());
    }
    return high - low;
  }
}
