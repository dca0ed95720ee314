package curvestock.bound;

import curvestock.geometry.BoundingCircle;
import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.packing.DistanceField;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.Arrays;

/**
 * Cells of placements and the points that every placement of a cell surely covers; points are
 * counted up to mirroring in the sheet's two axes.
 */
final class PlacementCells {

  /** Points across the width of a band-like piece; more of them cost time and sharpen little. */
  private static final double POINTS_ACROSS = 4;

  private int[] starts = new int[1024];
  private int[] members = new int[1 << 16];
  private int count;
  private final int columns;
  private final int rows;

  private final double spacingX;
  private final double spacingY;
  private final double lowX;
  private final double lowY;
  private final double gap;
  private final double rounding;
  private final double width;
  private final double height;
  private final double margin;
  private final Outline outline;
  private final double radius;
  private final DistanceField field;
  private final double midX;
  private final double midY;

  private PlacementCells(
      Piece piece, SheetStock sheet, Cutting cutting, double pointSpacing, double rounding) {
    BoundingCircle circle = BoundingCircle.of(piece.shape().blank().outline());
    // About its own circle's centre, so that turning moves every point as little as possible.
    outline =
        piece.shape().blank().outline().at(new Pose(-circle.centre().x(), -circle.centre().y(), 0));
    radius = circle.radius();
    field = DistanceField.of(piece.shape().blank());
    midX = circle.centre().x();
    midY = circle.centre().y();
    gap = cutting.spacing().millimetres() / 2;
    margin = cutting.margin().millimetres();
    width = sheet.length().millimetres();
    height = sheet.width().millimetres();
    this.rounding = rounding;
    lowX = margin - gap;
    lowY = margin - gap;
    // Even numbers of points, so that none lies on an axis of the sheet.
    columns = (int) Math.ceil((width - 2 * lowX) / pointSpacing / 2);
    rows = (int) Math.ceil((height - 2 * lowY) / pointSpacing / 2);
    spacingX = (width - 2 * lowX) / (2 * columns);
    spacingY = (height - 2 * lowY) / (2 * rows);
  }

  static PlacementCells of(
      Piece piece, SheetStock sheet, Cutting cutting, int mostCells, double rounding) {
    double band = 2 * piece.shape().blank().area() / piece.shape().blank().outline().perimeter();
    double size = band / 2;
    while (size > band / 64 && estimate(piece, sheet, cutting, size * 0.84) <= mostCells) {
      size *= 0.84;
    }
    PlacementCells cells =
        new PlacementCells(piece, sheet, cutting, band / POINTS_ACROSS, rounding);
    cells.fill(size);
    return cells;
  }

  private static long estimate(Piece piece, SheetStock sheet, Cutting cutting, double size) {
    PlacementCells probe = new PlacementCells(piece, sheet, cutting, 1e9, 0);
    long sum = 0;
    int turns = probe.turns(size);
    for (int k = 0; k < turns; k++) {
      long[] range = probe.range((k + 0.5) * 2 * Math.PI / turns, Math.PI / turns, size);
      sum += range == null ? 0 : range[0] * range[1];
    }
    return sum;
  }

  int count() {
    return count;
  }

  int points() {
    return columns * rows;
  }

  int start(int cell) {
    return starts[cell];
  }

  int point(int k) {
    return members[k];
  }

  /** As many angles as make the rim move by about as much as half a cell's diagonal. */
  private int turns(double size) {
    return (int) Math.ceil(2 * Math.PI * radius / size);
  }

  private void fill(double size) {
    int turns = turns(size);
    for (int k = 0; k < turns; k++) {
      double angle = (k + 0.5) * 2 * Math.PI / turns;
      double half = Math.PI / turns;
      long[] cellsEachWay = range(angle, half, size);
      if (cellsEachWay != null) {
        fill(angle, half, cellsEachWay);
      }
    }
  }

  /** Numbers of cells along x and y at an angle, or null if nothing fits near it. */
  private long[] range(double angle, double half, double size) {
    double[] limits = limits(angle, half);
    if (limits[0] > limits[1] || limits[2] > limits[3]) {
      return null;
    }
    return new long[] {
      (long) Math.max(1, Math.ceil((limits[1] - limits[0]) / size)),
      (long) Math.max(1, Math.ceil((limits[3] - limits[2]) / size))
    };
  }

  /** Where the centre can be in the lower left quarter: x from, to, y from, to. */
  private double[] limits(double angle, double half) {
    Box box = outline.at(new Pose(0, 0, angle)).box();
    double slack = radius * half + rounding;
    return new double[] {
      margin - box.minX() - slack,
      Math.min(width / 2, width - margin - box.maxX() + slack),
      margin - box.minY() - slack,
      Math.min(height / 2, height - margin - box.maxY() + slack)
    };
  }

  private void fill(double angle, double half, long[] each) {
    double[] limits = limits(angle, half);
    if (width - margin - outline.at(new Pose(0, 0, angle)).box().maxX() + radius * half + rounding
            < limits[0]
        || height
                - margin
                - outline.at(new Pose(0, 0, angle)).box().maxY()
                + radius * half
                + rounding
            < limits[2]) {
      return;
    }
    double sizeX = (limits[1] - limits[0]) / each[0];
    double sizeY = (limits[3] - limits[2]) / each[1];
    for (int i = 0; i < each[0]; i++) {
      for (int j = 0; j < each[1]; j++) {
        double x = limits[0] + (i + 0.5) * sizeX;
        double y = limits[2] + (j + 0.5) * sizeY;
        addCell(angle, x, y, Math.sqrt(sizeX * sizeX + sizeY * sizeY) / 2, half);
      }
    }
  }

  private void addCell(double angle, double x, double y, double slide, double half) {
    double cos = StrictMath.cos(angle);
    double sin = StrictMath.sin(angle);
    if (count + 2 >= starts.length) {
      starts = Arrays.copyOf(starts, starts.length * 2);
    }
    int size = starts[count];
    int fromX = (int) Math.floor((x - radius - gap - lowX) / spacingX);
    int toX = (int) Math.ceil((x + radius + gap - lowX) / spacingX);
    int fromY = (int) Math.floor((y - radius - gap - lowY) / spacingY);
    int toY = (int) Math.ceil((y + radius + gap - lowY) / spacingY);
    for (int i = Math.max(0, fromX); i <= Math.min(2 * columns - 1, toX); i++) {
      for (int j = Math.max(0, fromY); j <= Math.min(2 * rows - 1, toY); j++) {
        double dx = lowX + (i + 0.5) * spacingX - x;
        double dy = lowY + (j + 0.5) * spacingY - y;
        double away = Math.sqrt(dx * dx + dy * dy);
        double moves = slide + away * half + rounding;
        if (away < radius + gap
            && moves < gap - field.at(cos * dx + sin * dy + midX, -sin * dx + cos * dy + midY)) {
          if (size == members.length) {
            members = Arrays.copyOf(members, members.length * 2);
          }
          members[size++] = Math.min(i, 2 * columns - 1 - i) * rows + Math.min(j, 2 * rows - 1 - j);
        }
      }
    }
    starts[++count] = size;
  }
}
