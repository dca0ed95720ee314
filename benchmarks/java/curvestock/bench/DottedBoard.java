package curvestock.bench;

import curvestock.geometry.Box;
import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Shape;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * All placements of a case on a board of dots, and which of them exclude each other: the model of
 * Toledo, Carravilla, Ribeiro, Oliveira and Gomes, 'The Dotted-Board Model', International Journal
 * of Production Economics 2013 (cited from memory), with pieces turned in steps of 45° besides.
 *
 * <p>The dots are {@code step} apart, from the lower left of the usable sheet; a placement puts the
 * lower left of the turned piece's bounding box on a dot. The step is the least, to 1 %, with at
 * most the given number of placements. Conflicts are judged by exact clearance, once per pair of
 * turned pieces and difference of dots.
 */
final class DottedBoard {

  private static final int EIGHTHS = 8;
  private static final double TOLERANCE = 1e-6;

  /** Touching cannot be told from overlapping, so without spacing this little is kept. */
  private static final double LEAST_GAP = 1e-3;

  /** A piece at one angle, the lower left of its bounding box at the origin. */
  private record Turned(int kind, Outline outline) {

    int across(double length, double step) {
      return dots(length - outline.box().maxX(), step);
    }

    int up(double width, double step) {
      return dots(width - outline.box().maxY(), step);
    }

    private static int dots(double room, double step) {
      return room < -TOLERANCE ? 0 : 1 + (int) Math.floor((room + TOLERANCE) / step);
    }
  }

  /** A turned piece on a dot. */
  private record Dot(int turned, int column, int row) {}

  private final List<Turned> turned = new ArrayList<>();
  private final List<Dot> dots = new ArrayList<>();
  private final BitSet[] conflicts;
  private final double step;
  private final double gap;

  DottedBoard(BenchCase c, int mostPlacements) {
    gap = Math.max(LEAST_GAP, c.gap());
    for (int kind = 0; kind < c.wanted().size(); kind++) {
      turn(c.wanted().get(kind), kind);
    }
    step = leastStep(c.usableLength(), c.usableWidth(), mostPlacements);
    for (int t = 0; t < turned.size(); t++) {
      for (int column = 0; column < turned.get(t).across(c.usableLength(), step); column++) {
        for (int row = 0; row < turned.get(t).up(c.usableWidth(), step); row++) {
          dots.add(new Dot(t, column, row));
        }
      }
    }
    conflicts = new BitSet[dots.size()];
    findConflicts();
  }

  private void turn(Demand demand, int kind) {
    Shape shape = demand.piece().shape();
    int angles = EIGHTHS / 2;
    if (shape instanceof AnnularSector sector) {
      angles = sector.isRing() ? 1 : EIGHTHS;
    }
    for (int k = 0; k < angles; k++) {
      Outline outline = shape.outline().at(new Pose(0, 0, k * 2 * Math.PI / EIGHTHS));
      Box box = outline.box();
      turned.add(new Turned(kind, outline.at(new Pose(-box.minX(), -box.minY(), 0))));
    }
  }

  private double leastStep(double length, double width, int most) {
    double fine = 0.1;
    double coarse = Math.max(length, width);
    while (coarse / fine > 1.01) {
      double middle = Math.sqrt(fine * coarse);
      long count = 0;
      for (Turned t : turned) {
        count += (long) t.across(length, middle) * t.up(width, middle);
      }
      if (count > most) {
        fine = middle;
      } else {
        coarse = middle;
      }
    }
    return coarse;
  }

  private void findConflicts() {
    for (int i = 0; i < conflicts.length; i++) {
      conflicts[i] = new BitSet(conflicts.length);
    }
    int reach = 1 + dots.stream().mapToInt(d -> Math.max(d.column, d.row)).max().orElse(0);
    int side = 2 * reach + 1;
    for (int s = 0; s < turned.size(); s++) {
      List<Integer> ofS = numbers(s);
      for (int t = s; t < turned.size(); t++) {
        // 0 unknown, 1 apart, 2 in conflict
        byte[] known = new byte[side * side];
        for (int i : ofS) {
          for (int j : numbers(t)) {
            int dx = dots.get(j).column - dots.get(i).column;
            int dy = dots.get(j).row - dots.get(i).row;
            int key = (dx + reach) * side + dy + reach;
            if (known[key] == 0) {
              known[key] = (byte) (tooNear(turned.get(s), turned.get(t), dx, dy) ? 2 : 1);
            }
            if (known[key] == 2 && i != j) {
              conflicts[i].set(j);
              conflicts[j].set(i);
            }
          }
        }
      }
    }
  }

  private List<Integer> numbers(int t) {
    List<Integer> numbers = new ArrayList<>();
    for (int i = 0; i < dots.size(); i++) {
      if (dots.get(i).turned == t) {
        numbers.add(i);
      }
    }
    return numbers;
  }

  private boolean tooNear(Turned a, Turned b, int dx, int dy) {
    Box box = b.outline.box();
    double x = dx * step;
    double y = dy * step;
    Box moved = new Box(box.minX() + x, box.minY() + y, box.maxX() + x, box.maxY() + y);
    return a.outline.box().distance(moved) < gap
        && Clearance.between(a.outline, b.outline.at(new Pose(x, y, 0))) < gap - TOLERANCE;
  }

  /** Distance between dots, in millimetres. */
  double step() {
    return step;
  }

  int placements() {
    return dots.size();
  }

  /** The kind of piece, counted from 0 in the case's order. */
  int kind(int placement) {
    return turned.get(dots.get(placement).turned).kind;
  }

  /** The placements that cannot be used together with this one. */
  BitSet conflicts(int placement) {
    return conflicts[placement];
  }
}
