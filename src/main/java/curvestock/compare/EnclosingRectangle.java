package curvestock.compare;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.units.Length;

/**
 * The rectangle that a piece lies in.
 *
 * @param length of the longer side
 * @param width of the shorter side
 */
public record EnclosingRectangle(Length length, Length width) {

  /** In degrees. */
  private static final int RIGHT_ANGLE = 90;

  /** Each round of turning is so many times as fine as the last, down to this in degrees. */
  private static final int STEPS = 10;

  private static final double FINEST = 5e-4;

  /**
   * Of a sector or strip the one along its axes, of any other piece the least: the best of all
   * whole degrees, then of ever finer steps about it, so that a piece and its mirror image have the
   * same.
   */
  public static EnclosingRectangle of(Piece piece) {
    Outline outline = piece.shape().blank().outline();
    EnclosingRectangle least = of(outline.box());
    if (piece.shape().blank() instanceof AnnularSector) {
      return least;
    }
    double best = 0;
    for (double step = 1; step > FINEST; step /= STEPS) {
      double from = step == 1 ? 0 : best - step * STEPS;
      double to = step == 1 ? RIGHT_ANGLE - 1 : best + step * STEPS;
      for (double degrees = from; degrees <= to; degrees += step) {
        EnclosingRectangle turned = of(outline.at(new Pose(0, 0, Math.toRadians(degrees))).box());
        if (turned.area() < least.area()) {
          least = turned;
          best = degrees;
        }
      }
    }
    return least;
  }

  private static EnclosingRectangle of(Box box) {
    return new EnclosingRectangle(
        Length.ofMillimetres(Math.max(box.width(), box.height())),
        Length.ofMillimetres(Math.min(box.width(), box.height())));
  }

  double area() {
    return length.millimetres() * width.millimetres();
  }
}
