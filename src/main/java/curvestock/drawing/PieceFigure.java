package curvestock.drawing;

import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.layout.Placement;
import curvestock.machine.Marks;
import curvestock.piece.Bend;
import curvestock.piece.Piece;
import java.util.List;

/**
 * A piece in its own frame as path data of SVG, for screens that move pieces about: y is turned
 * downwards, so a pose (x, y, angle) on a sheet of height H is the transform {@code translate(x, H
 * - y) rotate(-angle)}.
 *
 * @param outline closed sub-paths, the outer one first
 * @param marks lines that are drawn, not cut
 * @param label where the number's middle stands, y downwards
 * @param letters font size at which the number fits
 * @param level whether the number may stand level however the piece is turned
 */
public record PieceFigure(
    String outline, List<String> marks, Point label, double letters, boolean level) {

  public PieceFigure {
    marks = List.copyOf(marks);
  }

  /**
   * The figure of a piece.
   *
   * @param widest the widest number that is written on such a piece
   */
  public static PieceFigure of(Piece piece, String widest) {
    Placement home = new Placement(piece, Pose.HOME);
    PathData paths = new PathData(0);
    boolean sector = Bend.of(piece.shape()).isPresent();
    PieceLabel.Text number =
        sector
            ? PieceLabel.of(home, widest, widest, piece.id(), List.of(), 0).get(0)
            : PieceLabel.numberOnly(home, widest);
    Point middle = number.middle();
    return new PieceFigure(
        paths.closed(piece.shape().outline()),
        Marks.of(home).stream().map(paths::open).toList(),
        new Point(middle.x(), -middle.y()),
        number.size(),
        sector);
  }

  /** A sheet's edge or a defect as path data, y measured downwards from {@code top}. */
  public static String onSheet(Outline outline, double top) {
    return new PathData(top).closed(outline);
  }
}
