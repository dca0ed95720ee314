package curvestock.check;

import curvestock.piece.Piece;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * An outline of the drawing, read.
 *
 * @param name its id in the file
 * @param number that it bears on the wood, if that is known
 * @param piece what it claims to be, if that is known
 * @param shape its finished size
 * @param asDrawn its outside as it stands in the file
 */
record DrawnPiece(
    String name,
    Optional<String> number,
    Optional<Piece> piece,
    TraceShape shape,
    TraceLoop asDrawn,
    Bounds bounds,
    Polygon inside) {

  static DrawnPiece of(
      String name,
      Optional<String> number,
      Optional<Piece> piece,
      TraceShape shape,
      TraceLoop asDrawn) {
    return new DrawnPiece(
        name,
        number,
        piece,
        shape,
        asDrawn,
        Bounds.of(shape.edges()),
        OverlayOpinion.inside(shape));
  }

  /** The number on the wood, the name in the file and the piece's id, as far as they are known. */
  String called() {
    String kind = piece.map(Piece::id).orElse("");
    if (number.isEmpty()) {
      return name + (kind.isEmpty() ? "" : " (" + kind + ")");
    }
    return number.get() + " (" + name + (kind.isEmpty() ? "" : ", " + kind) + ")";
  }
}
