package curvestock.check;

import curvestock.piece.Piece;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds what piece an outline is that bears no name: one of its shape that is still due. */
final class Alike {

  private final Expectation expectation;
  private final Map<String, Integer> counts;

  /**
   * A search.
   *
   * @param counts what was found so far, by piece id
   */
  Alike(Expectation expectation, Map<String, Integer> counts) {
    this.expectation = expectation;
    this.counts = counts;
  }

  /**
   * The piece of that shape: one that may lie that way on the grain rather than not, the strictest
   * first, and one that is still due rather than not; empty if none has the shape.
   */
  Optional<Piece> of(TraceShape shape) {
    return expectation.pieces().stream()
        .filter(piece -> !fits(piece, shape).isEmpty())
        .min(
            Comparator.comparing((Piece piece) -> !isDue(piece))
                .thenComparing(piece -> !mayLieSo(piece, shape))
                .thenComparing(piece -> piece.grain().within().degrees()));
  }

  /** Whether two pieces have one shape, so that an outline may be either. */
  static boolean areAlike(Piece a, Piece b) {
    return a.equals(b) || !fits(a, TraceShape.of(b.shape().outline())).isEmpty();
  }

  private static List<Congruence.Fit> fits(Piece piece, TraceShape shape) {
    return Congruence.fits(TraceShape.of(piece.shape().outline()), shape).stream()
        .filter(fit -> fit.error() <= LayoutCheck.SHAPE_TOLERANCE)
        .toList();
  }

  private boolean isDue(Piece piece) {
    return expectation
        .counts()
        .map(wanted -> counts.getOrDefault(piece.id(), 0) < wanted.getOrDefault(piece.id(), 0))
        .orElse(true);
  }

  private boolean mayLieSo(Piece piece, TraceShape shape) {
    double grain = expectation.sheet().grain().radians();
    return fits(piece, shape).stream()
        .anyMatch(
            fit ->
                fit.rotation().isEmpty()
                    || piece.grain().allows(fit.rotation().getAsDouble(), grain));
  }
}
