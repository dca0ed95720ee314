package curvestock.bench;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Rival (b): columns of like pieces, each shifted along its bisector by the least pitch that keeps
 * the gap.
 *
 * <p>Depth H = R − r·cos(a/2) and pitch √((R+k)² − r²·sin²(a/2)) − r·cos(a/2), at least R − r + k,
 * up to half a turn (derived; see also issue 3). Beyond half a turn the outer corners count as
 * well. Should the exact gap of two neighbours fall short all the same, they are stacked clear of
 * each other.
 */
final class AxisStack {

  private static final double ROUNDING = 1e-6;

  /** One column: how wide it is, how tall its first piece, how much each further one adds. */
  private record Column(double width, double depth, double pitch) {

    int capacity(double height) {
      return height + ROUNDING < depth
          ? 0
          : 1 + (int) Math.floor((height - depth + ROUNDING) / pitch);
    }
  }

  private AxisStack() {}

  /** How many of a single kind are laid, in the better direction of the sheet. */
  static int count(BenchCase c) {
    Column column = column(c.piece(), c.gap());
    return Math.max(
        count(column, c.usableLength(), c.usableWidth(), c.gap()),
        count(column, c.usableWidth(), c.usableLength(), c.gap()));
  }

  private static int count(Column column, double across, double height, double gap) {
    int columns = (int) Math.max(0, Math.floor((across + gap + ROUNDING) / (column.width + gap)));
    return columns * column.capacity(height);
  }

  /** Area laid of several kinds, a column holding one kind, large pieces first. */
  static double area(BenchCase c) {
    return Math.max(
        columns(c, c.usableLength(), c.usableWidth()),
        columns(c, c.usableWidth(), c.usableLength()));
  }

  private static double columns(BenchCase c, double across, double height) {
    List<Demand> order = new ArrayList<>(c.wanted());
    order.sort(Comparator.comparingDouble((Demand demand) -> -demand.piece().shape().area()));
    double used = 0;
    double area = 0;
    for (Demand demand : order) {
      Column column = column(demand.piece(), c.gap());
      int left = demand.count();
      while (left > 0 && column.capacity(height) > 0 && used + column.width <= across + ROUNDING) {
        int laid = Math.min(left, column.capacity(height));
        area += laid * demand.piece().shape().area();
        left -= laid;
        used += column.width + c.gap();
      }
    }
    return area;
  }

  private static Column column(Piece piece, double gap) {
    Shape shape = piece.shape();
    if (shape instanceof AnnularSector sector) {
      return column(sector, gap);
    }
    Strip strip = (Strip) shape;
    double width = strip.width().millimetres();
    return new Column(strip.length().millimetres(), width, width + gap);
  }

  private static Column column(AnnularSector sector, double gap) {
    double outer = sector.outerRadius().millimetres();
    double inner = sector.innerRadius().millimetres();
    double half = sector.sweep().radians() / 2;
    double cos = Math.cos(half);
    double sin = Math.sin(half);
    double width = sector.chord().millimetres();
    double depth = sector.isRing() ? 2 * outer : outer - (cos > 0 ? inner : outer) * cos;
    double pitch = Math.max(outer - inner + gap, corner(outer + gap, inner, sin, cos));
    if (half > Math.PI / 2) {
      pitch = Math.max(pitch, corner(outer + gap, outer, sin, cos));
    }
    Outline first = sector.outline();
    Outline next = first.at(new Pose(pitch, 0, 0));
    boolean holds = Clearance.between(first, next) >= gap - ROUNDING && pitch > 0;
    return new Column(width, depth, sector.isRing() || !holds ? depth + gap : pitch);
  }

  /** Shift along the bisector at which a corner at this radius is {@code reach} from the centre. */
  private static double corner(double reach, double radius, double sin, double cos) {
    return Math.sqrt(Math.max(0, reach * reach - radius * radius * sin * sin)) - radius * cos;
  }
}
