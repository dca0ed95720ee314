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

  /** Degrees to either side that are tried first; a box repeats after a quarter turn. */
  private static final int QUARTER_TURN = 45;

  /** Each step is so many times finer than the one before. */
  private static final int FINER = 20;

  /** In degrees: a piece of 2 m then moves by less than a hundredth of a millimetre. */
  private static final double FINEST = 1e-4;

  /**
   * Of a sector or strip the one along its axes; of any other piece the least of all that are
   * turned, first by whole degrees, then by ever finer steps about the best: the same for a piece
   * and its mirror image, to a hundredth of a millimetre.
   */
  public static EnclosingRectangle of(Piece piece) {
    Outline outline = piece.shape().blank().outline();
    EnclosingRectangle least = of(outline.box());
    if (isAlongItsAxes(piece)) {
      return least;
    }
    double best = 0;
    for (double step = 1; step > FINEST; step /= FINER) {
      double middle = best;
      int steps = step == 1 ? QUARTER_TURN : FINER;
      for (int i = -steps; i <= steps; i++) {
        double degrees = middle + i * step;
        EnclosingRectangle turned = of(outline.at(new Pose(0, 0, Math.toRadians(degrees))).box());
        if (turned.area() < least.area() - 1e-9) {
          least = turned;
          best = degrees;
        }
      }
    }
    return least;
  }

  private static boolean isAlongItsAxes(Piece piece) {
    return piece.shape().blank() instanceof AnnularSector;
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
