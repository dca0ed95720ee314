package curvestock.packing;

import curvestock.piece.Piece;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The bodies of the pieces packed last, shared by all sheets that they are laid on: their distance
 * fields and lattices take long to make, and hang on nothing but the piece and the gap.
 */
final class KnownBodies {

  /** A body with its field takes up to a megabyte. */
  private static final int MOST = 24;

  /** The one used longest ago first. */
  private static final Map<Piece, Body> KNOWN = new LinkedHashMap<>(MOST, 0.75f, true);

  private KnownBodies() {}

  static synchronized Body of(Piece piece) {
    Body body = KNOWN.computeIfAbsent(piece, Body::new);
    if (KNOWN.size() > MOST) {
      KNOWN.remove(KNOWN.keySet().iterator().next());
    }
    return body;
  }
}
