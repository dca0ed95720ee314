package curvestock.bound;

import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.Arrays;
import java.util.Optional;

/**
 * A sharper bound for few large pieces: weights on points of the sheet, such that every placement
 * covers a weight of at least 1. Pieces widened by half the spacing share no point, so a layout
 * cannot hold more pieces than the whole weight.
 *
 * <p>That every placement does is proven by cells: all placements (x, y, angle) that fit are split
 * into boxes. A point is counted for a cell only if the widened piece holds it at the cell's middle
 * by more than any point can move inside the cell, so whatever the placement in the cell, the piece
 * holds it. Equal weights give about the area bound; weights are then shifted to where the worst
 * placements lie (exponentiated gradient on the smoothed least cover). Whatever the weights, the
 * bound is right; how long they were bettered only decides how sharp it is. At the end the weights
 * are rounded to whole numbers, and total over least cover is taken exactly.
 *
 * <p>For rectangles without defects and for pieces that are their own mirror image (sectors,
 * strips), where a quarter of the sheet suffices. The fractional cover is a standard relaxation of
 * packing; the cells are our own.
 */
public final class FractionalCoverBound {

  /** Distances computed in double precision near 3 m are right to a thousandth of this. */
  private static final double ROUNDING = 1e-6;

  private static final long WEIGHT_UNITS = 1L << 40;

  private final PlacementCells cells;

  private FractionalCoverBound(PlacementCells cells) {
    this.cells = cells;
  }

  /**
   * The bound, or nothing where the method does not apply.
   *
   * @param mostCells how fine the cells may be: memory and time grow with it; 50,000 to 500,000 is
   *     sensible
   * @param rounds how often the weights are bettered
   */
  public static Optional<Bound> of(
      Piece piece, SheetStock sheet, Cutting cutting, int mostCells, int rounds) {
    Shape blank = piece.shape().blank();
    boolean mirrored = blank instanceof AnnularSector || blank instanceof Strip;
    if (!mirrored || !sheet.isRectangle() || !sheet.defects().isEmpty()) {
      return Optional.empty();
    }
    PlacementCells cells = PlacementCells.of(piece, sheet, cutting, mostCells, ROUNDING);
    if (cells.count() == 0) {
      return Optional.of(
          new Bound(0, "by fit: no placement of the piece lies in the usable sheet"));
    }
    double[] weights = new FractionalCoverBound(cells).weights(rounds);
    long count = exact(cells, weights);
    return Optional.of(
        new Bound(
            (int) Math.min(Integer.MAX_VALUE, count),
            "by weights on "
                + 4 * cells.points()
                + " points of the sheet, of which each of "
                + cells.count()
                + " cells of placements covers its share"));
  }

  /** Whole-number weights: total over least cover, rounded down. */
  private static long exact(PlacementCells cells, double[] weights) {
    long[] whole = new long[weights.length];
    long total = 0;
    for (int p = 0; p < whole.length; p++) {
      whole[p] = (long) (weights[p] * WEIGHT_UNITS);
      total += 4 * whole[p];
    }
    long least = Long.MAX_VALUE;
    for (int c = 0; c < cells.count(); c++) {
      long sum = 0;
      for (int k = cells.start(c); k < cells.start(c + 1); k++) {
        sum += whole[cells.point(k)];
      }
      least = Math.min(least, sum);
    }
    return least == 0 ? Integer.MAX_VALUE : total / least;
  }

  private double[] weights(int rounds) {
    int points = cells.points();
    double[] weights = new double[points];
    Arrays.fill(weights, 1.0 / (4 * points));
    double[] best = weights.clone();
    double bestLeast = 0;
    double[] cover = new double[cells.count()];
    double[] pull = new double[points];
    double step = 0.3;
    for (int round = 0; round < rounds; round++) {
      double least = cover(weights, cover);
      if (least > bestLeast) {
        bestLeast = least;
        best = weights.clone();
      }
      double sharpness = 15.0 * (1 + 20.0 * round / rounds) / Math.max(least, 1e-4);
      double mean = pull(cover, least, sharpness, pull);
      double largest = 0;
      for (double value : pull) {
        largest = Math.max(largest, Math.abs(value - mean));
      }
      if (largest == 0) {
        break;
      }
      double rate = step * (1 - 0.9 * round / rounds) / largest;
      double sum = 0;
      for (int p = 0; p < points; p++) {
        weights[p] *= StrictMath.exp(rate * (pull[p] - mean));
        sum += 4 * weights[p];
      }
      for (int p = 0; p < points; p++) {
        weights[p] /= sum;
      }
    }
    return best;
  }

  private double cover(double[] weights, double[] cover) {
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < cover.length; c++) {
      double sum = 0;
      for (int k = cells.start(c); k < cells.start(c + 1); k++) {
        sum += weights[cells.point(k)];
      }
      cover[c] = sum;
      least = Math.min(least, sum);
    }
    return least;
  }

  /** How much each point is needed by the cells of little cover; returns the mean by weight. */
  private double pull(double[] cover, double least, double sharpness, double[] pull) {
    Arrays.fill(pull, 0);
    double sum = 0;
    for (int c = 0; c < cover.length; c++) {
      double above = (cover[c] - least) * sharpness;
      if (above < 30) {
        double share = StrictMath.exp(-above);
        sum += share;
        for (int k = cells.start(c); k < cells.start(c + 1); k++) {
          pull[cells.point(k)] += share;
        }
      }
    }
    double mean = 0;
    for (int p = 0; p < pull.length; p++) {
      pull[p] /= sum;
      mean += pull[p] / pull.length;
    }
    return mean;
  }
}
