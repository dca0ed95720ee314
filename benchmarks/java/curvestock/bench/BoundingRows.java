package curvestock.bench;

import curvestock.piece.Demand;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Rival (a): each piece booked as its least bounding rectangle, rectangles laid in rows.
 *
 * <p>A single kind: rows of rectangles one way round, the rest of the sheet in rows of rectangles
 * the other way round, the best split taken. Several kinds: shelves, the tallest kind first, each
 * piece in the first shelf with room, rectangles lying lengthwise; both directions of the sheet.
 */
final class BoundingRows {

  private static final double ROUNDING = 1e-6;

  private BoundingRows() {}

  /** How many of a single kind are laid. */
  static int count(BenchCase c) {
    LeastRectangle r = LeastRectangle.around(c.piece().shape().outline());
    double length = c.usableLength();
    double width = c.usableWidth();
    double gap = c.gap();
    int lying = split(length, width, r.length(), r.width(), gap);
    int standing = split(length, width, r.width(), r.length(), gap);
    int across = split(width, length, r.length(), r.width(), gap);
    int upright = split(width, length, r.width(), r.length(), gap);
    return Math.max(Math.max(lying, standing), Math.max(across, upright));
  }

  /** Rows of a × b rectangles, then rows of b × a ones in what is left; the best of all splits. */
  private static int split(double x, double y, double a, double b, double gap) {
    int best = 0;
    for (int rows = 0; rows <= fit(y, b, gap); rows++) {
      double rest = y - rows * (b + gap);
      best = Math.max(best, rows * fit(x, a, gap) + fit(x, b, gap) * fit(rest, a, gap));
    }
    return best;
  }

  private static int fit(double space, double size, double gap) {
    return (int) Math.max(0, Math.floor((space + gap + ROUNDING) / (size + gap)));
  }

  /** Area laid of several kinds, in square millimetres. */
  static double area(BenchCase c) {
    return Math.max(
        shelves(c, c.usableLength(), c.usableWidth()),
        shelves(c, c.usableWidth(), c.usableLength()));
  }

  private record Item(double length, double width, double area) {}

  private static double shelves(BenchCase c, double length, double width) {
    List<Item> items = new ArrayList<>();
    for (Demand demand : c.wanted()) {
      LeastRectangle r = LeastRectangle.around(demand.piece().shape().outline());
      for (int k = 0; k < demand.count(); k++) {
        items.add(new Item(r.length(), r.width(), demand.piece().shape().area()));
      }
    }
    items.sort(Comparator.comparingDouble((Item item) -> -item.width));
    List<double[]> shelves = new ArrayList<>();
    double used = 0;
    double area = 0;
    for (Item item : items) {
      double[] room = null;
      for (double[] shelf : shelves) {
        if (room == null && shelf[0] + item.length <= length + ROUNDING && item.width <= shelf[1]) {
          room = shelf;
        }
      }
      if (room == null
          && used + item.width <= width + ROUNDING
          && item.length <= length + ROUNDING) {
        room = new double[] {0, item.width};
        shelves.add(room);
        used += item.width + c.gap();
      }
      if (room != null) {
        room[0] += item.length + c.gap();
        area += item.area;
      }
    }
    return area;
  }
}
