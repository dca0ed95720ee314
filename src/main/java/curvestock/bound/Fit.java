package curvestock.bound;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;

/**
 * Whether a single piece can lie on a sheet at all.
 *
 * <p>Proof by intervals: turning by an angle t moves no point of the piece further than t times its
 * distance from the pivot, so the bounding box at one angle bounds those at all angles nearby.
 * Angles are halved until each interval is refuted; if one is not refuted when it has become tiny,
 * nothing is claimed. On sheets that are not rectangles the bounding rectangle is used, which can
 * only fail to refute.
 */
public final class Fit {

  private static final double TINY = 1e-5;

  private final Outline outline;
  private final double reach;
  private final double width;
  private final double height;

  private Fit(Piece piece, SheetStock sheet, Cutting cutting) {
    Box box = piece.shape().blank().outline().box();
    Point middle = new Point((box.minX() + box.maxX()) / 2, (box.minY() + box.maxY()) / 2);
    outline = piece.shape().blank().outline().at(new Pose(-middle.x(), -middle.y(), 0));
    reach = StrictMath.hypot(box.width(), box.height()) / 2;
    double margin = cutting.margin().millimetres();
    width = sheet.length().millimetres() - 2 * margin;
    height = sheet.width().millimetres() - 2 * margin;
  }

  /** Whether it is proven that the piece cannot lie on the sheet. */
  public static boolean isImpossible(Piece piece, SheetStock sheet, Cutting cutting) {
    // The bounding box repeats itself mirrored beyond half a turn.
    return new Fit(piece, sheet, cutting).isRefuted(0, Math.PI);
  }

  private boolean isRefuted(double from, double to) {
    double middle = (from + to) / 2;
    Box box = outline.at(new Pose(0, 0, middle)).box();
    double excess = Math.max(box.width() - width, box.height() - height);
    double slack = 2 * reach * (to - from) / 2;
    if (excess > slack + 1e-9) {
      return true;
    }
    if (excess <= 1e-9 || to - from < TINY) {
      return false;
    }
    return isRefuted(from, middle) && isRefuted(middle, to);
  }
}
