package curvestock.job;

import curvestock.piece.Demand;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;

/**
 * Pieces cut beyond those wanted, because some cuts go wrong.
 *
 * @param byPiece by the piece's id or name, or {@code all}; what is closest to the piece holds
 */
public record Spares(Map<String, Spare> byPiece) {

  /** The key that stands for every piece not named. */
  static final String ALL = "all";

  public static final Spares NONE = new Spares(Map.of());

  /**
   * How many.
   *
   * @param count pieces
   * @param percent of the pieces wanted; a part of a piece counts as one
   */
  public record Spare(int count, BigDecimal percent) {

    int of(int wanted) {
      BigDecimal share =
          percent
              .multiply(BigDecimal.valueOf(wanted))
              .movePointLeft(2)
              .setScale(0, RoundingMode.UP);
      return count + share.intValueExact();
    }
  }

  public Spares {
    byPiece = Map.copyOf(byPiece);
  }

  /** Spares of a piece. */
  public int of(Demand wanted) {
    for (String key : new String[] {wanted.piece().id(), wanted.piece().name(), ALL}) {
      if (byPiece.containsKey(key)) {
        return byPiece.get(key).of(wanted.count());
      }
    }
    return 0;
  }

  /** The demand with its spares. */
  Demand with(Demand wanted) {
    return new Demand(wanted.piece(), Math.addExact(wanted.count(), of(wanted)));
  }
}
