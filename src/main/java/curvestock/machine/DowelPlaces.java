package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.MirrorLine;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds two places in the waste for the dowels on which a sheet is turned over, as far apart as the
 * waste allows, on a grid about the middle of the sheet; clear of what is kept of the sheet, if
 * that can be.
 */
final class DowelPlaces {

  private static final double STEP = 6;

  /** Wood to leave between a dowel and a cut: own choice, 1/8 in. */
  private static final double WOOD = 3.175;

  /** Nearer dowels guide badly; our own choice. */
  private static final double LEAST_APART = 150;

  private static final List<Length> INCHES =
      List.of(Length.ofInches(0.25), Length.ofInches(0.1875), Length.ofInches(0.125));
  private static final List<Length> METRIC =
      List.of(Length.ofMillimetres(6), Length.ofMillimetres(5), Length.ofMillimetres(3));

  /** Wood to leave between a dowel and the edge of the sheet: own choice, 3/8 in. */
  private static final double WOOD_AT_EDGE = 9.525;

  private final Layout layout;
  private final Box box;
  private final Optional<Box> kept;
  private final double radius;
  private final int columns;
  private final int rows;
  private final boolean[][] free;
  private final boolean rectangle;

  private DowelPlaces(Layout layout, Optional<Box> kept, Length diameter) {
    this.layout = layout;
    this.kept = kept;
    box = layout.sheet().outline().box();
    rectangle = layout.sheet().isRectangle();
    radius = diameter.millimetres() / 2;
    columns = (int) (box.width() / 2 / STEP);
    rows = (int) (box.height() / 2 / STEP);
    free = new boolean[2 * columns + 1][2 * rows + 1];
    mark();
  }

  /** How to turn the sheet; without dowels if the waste has no room for them. */
  static Turning of(Layout layout, Optional<Box> remnant, boolean inches) {
    List<Length> sizes = inches ? INCHES : METRIC;
    for (Optional<Box> kept :
        remnant.isPresent() ? List.of(remnant, Optional.<Box>empty()) : List.of(remnant)) {
      for (Length size : sizes) {
        DowelPlaces places = new DowelPlaces(layout, kept, size);
        Optional<Turning> found = places.best(size);
        if (found.isPresent()) {
          return found.get();
        }
      }
    }
    Box box = layout.sheet().outline().box();
    return new Turning(upright(box), List.of(), sizes.get(0));
  }

  private static MirrorLine upright(Box box) {
    return new MirrorLine(true, (box.minX() + box.maxX()) / 2);
  }

  private Point at(int column, int row) {
    return new Point(
        (box.minX() + box.maxX()) / 2 + (column - columns) * STEP,
        (box.minY() + box.maxY()) / 2 + (row - rows) * STEP);
  }

  private void mark() {
    for (int i = 0; i < free.length; i++) {
      for (int j = 0; j < free[i].length; j++) {
        free[i][j] = isOnWood(at(i, j));
      }
    }
    double kerf = layout.cutting().kerf().millimetres();
    for (Placement placement : layout.placements()) {
      block(placement.outline(), kerf + WOOD + radius);
    }
    layout.sheet().defects().forEach(defect -> block(defect, WOOD + radius));
  }

  private boolean isOnWood(Point point) {
    double need = WOOD_AT_EDGE + radius;
    boolean inBox =
        Math.min(point.x() - box.minX(), box.maxX() - point.x()) >= need
            && Math.min(point.y() - box.minY(), box.maxY() - point.y()) >= need;
    Outline wood = layout.sheet().outline();
    return inBox
        && kept.filter(rest -> isWithin(rest, point, need)).isEmpty()
        && (rectangle || (wood.contains(point) && isClear(wood, point, need)));
  }

  private static boolean isWithin(Box rest, Point point, double need) {
    return point.x() > rest.minX() - need
        && point.x() < rest.maxX() + need
        && point.y() > rest.minY() - need
        && point.y() < rest.maxY() + need;
  }

  private static boolean isClear(Outline outline, Point point, double need) {
    for (Edge edge : outline.edges()) {
      if (edge.distanceTo(point) < need) {
        return false;
      }
    }
    return true;
  }

  private void block(Outline outline, double need) {
    Box around = outline.box();
    int left = column(around.minX() - need);
    int right = column(around.maxX() + need) + 1;
    int bottom = row(around.minY() - need);
    int top = row(around.maxY() + need) + 1;
    for (int i = Math.max(0, left); i <= Math.min(free.length - 1, right); i++) {
      for (int j = Math.max(0, bottom); j <= Math.min(free[i].length - 1, top); j++) {
        if (free[i][j]) {
          Point point = at(i, j);
          free[i][j] = !outline.contains(point) && isClear(outline, point, need);
        }
      }
    }
  }

  private int column(double x) {
    return (int) Math.floor((x - (box.minX() + box.maxX()) / 2) / STEP) + columns;
  }

  private int row(double y) {
    return (int) Math.floor((y - (box.minY() + box.maxY()) / 2) / STEP) + rows;
  }

  /**
   * Of all pairs that come to lie on each other the one farthest apart; the first of equal ones.
   */
  private Optional<Turning> best(Length diameter) {
    MirrorLine level = new MirrorLine(false, (box.minY() + box.maxY()) / 2);
    List<Turning> pairs = new ArrayList<>();
    for (int i = 0; i < free.length; i++) {
      for (int j = 0; j < free[i].length; j++) {
        if (free[i][j]) {
          addPair(pairs, upright(box), diameter, at(i, j), free[2 * columns - i][j]);
          addPair(pairs, level, diameter, at(i, j), free[i][2 * rows - j]);
        }
      }
    }
    ends(level, diameter, false).ifPresent(pairs::add);
    ends(upright(box), diameter, true).ifPresent(pairs::add);
    return pairs.stream()
        .filter(pair -> apart(pair) >= LEAST_APART)
        .reduce((a, b) -> apart(b) > apart(a) + 1e-6 ? b : a);
  }

  private static void addPair(
      List<Turning> pairs, MirrorLine line, Length diameter, Point first, boolean otherFree) {
    Point second = line.apply(first);
    if (otherFree
        && (pairs.isEmpty() || first.distance(second) > apart(pairs.get(pairs.size() - 1)))) {
      pairs.add(new Turning(line, List.of(first, second), diameter));
    }
  }

  /** The outermost two free places on the line itself. */
  private Optional<Turning> ends(MirrorLine line, Length diameter, boolean upright) {
    List<Point> on = new ArrayList<>();
    int count = upright ? free[0].length : free.length;
    for (int k = 0; k < count; k++) {
      int i = upright ? columns : k;
      int j = upright ? k : rows;
      if (free[i][j]) {
        on.add(at(i, j));
      }
    }
    return on.size() < 2
        ? Optional.empty()
        : Optional.of(new Turning(line, List.of(on.get(0), on.get(on.size() - 1)), diameter));
  }

  private static double apart(Turning turning) {
    return turning.dowels().get(0).distance(turning.dowels().get(1));
  }
}
