package curvestock.bench;

import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A question from whose answer the atlas is drawn: an arc, and a sheet twice or once as long as
 * wide. Gap and margin are 1/8 in and 1/4 in; others are asked for by scaling.
 *
 * @param parts of a full turn
 * @param aspect length of the sheet over its width
 * @param radius at mid-width, over the sheet's width
 * @param width over the radius
 */
record AtlasPoint(int parts, int aspect, double radius, double width) {

  /** Width of the sheet that the points are laid on. */
  private static final double SHEET = 1220;

  static final Cutting CUTTING =
      Cutting.leaving(Length.ofInches(0.125), Length.ZERO, Length.ofInches(0.25));

  /** Halves, thirds and quarters first; each with 2:1 sheets before square ones. */
  private static final int[][] ORDER = {
    {4, 2}, {3, 2}, {2, 2}, {6, 2}, {4, 1}, {3, 1}, {2, 1}, {5, 2}, {8, 2}, {6, 1}, {5, 1}, {8, 1},
    {12, 2}, {10, 2}, {9, 2}, {7, 2}, {11, 2}, {12, 1}, {10, 1}, {9, 1}, {7, 1}, {11, 1}
  };

  /** The grid: radii 4 % apart, the largest first, so that what fits one fits the next. */
  static List<AtlasPoint> grid() {
    List<AtlasPoint> points = new ArrayList<>();
    for (int[] form : ORDER) {
      for (double radius = 1.25; radius > 0.16; radius /= 1.04) {
        for (double width = 0.22; width > 0.09; width /= 1.3) {
          points.add(new AtlasPoint(form[0], form[1], radius, width));
        }
      }
    }
    return points;
  }

  Piece piece() {
    return Piece.of(
        "A",
        "segment",
        new AnnularSector(
            Length.ofMillimetres(radius * SHEET),
            Length.ofMillimetres(width * radius * SHEET),
            Angle.ofDegrees(360.0 / parts)));
  }

  SheetStock sheet() {
    return SheetStock.rectangle(
        "sheet",
        Length.ofMillimetres(aspect * SHEET),
        Length.ofMillimetres(SHEET),
        Length.ofMillimetres(12),
        Money.ZERO);
  }

  @Override
  public String toString() {
    return String.format(Locale.ROOT, "1/%d %d:1 %.4f %.3f", parts, aspect, radius, width);
  }
}
