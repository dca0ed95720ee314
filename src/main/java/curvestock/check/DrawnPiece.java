package curvestock.check;

import curvestock.piece.Piece;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * An outline of the drawing, read.
 *
 * @param name its id in the file
 * @param piece what it claims to be, if that is known
 * @param shape its finished size
 * @param asDrawn its outside as it stands in the file
 */
record DrawnPiece(
    String name,
    Optional<Piece> piece,
    TraceShape shape,
    TraceLoop asDrawn,
    Bounds bounds,
    Polygon inside) {

  static DrawnPiece of(String name, Optional<Piece> piece, TraceShape shape, TraceLoop asDrawn) {
    return new DrawnPiece(
        name, piece, shape, asDrawn, Bounds.of(shape.edges()), OverlayOpinion.inside(shape));
  }

  /** The name with the piece's id, as messages have it. */
  String called() {
    return name + piece.map(p -> " (" + p.id() + ")").orElse("");
  }
}
