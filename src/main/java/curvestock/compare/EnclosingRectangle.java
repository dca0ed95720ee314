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

  /**
   * Of a sector or strip the one along its axes, of any other piece the least of all that are
   * turned by whole degrees: at most some thousandths too large.
   */
  public static EnclosingRectangle of(Piece piece) {
    Outline outline = piece.shape().blank().outline();
    EnclosingRectangle least = of(outline.box());
    for (int degrees = 1; degrees < 90 && !isAlongItsAxes(piece); degrees++) {
      EnclosingRectangle turned = of(outline.at(new Pose(0, 0, Math.toRadians(degrees))).box());
      least = turned.area() < least.area() ? turned : least;
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
