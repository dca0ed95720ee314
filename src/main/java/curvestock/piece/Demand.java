package curvestock.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A piece and how many of it are wanted. */
public record Demand(Piece piece, int count) {

  /**
   * @throws IllegalArgumentException if the count is below 1
   */
  public Demand {
    if (count < 1) {
      throw new IllegalArgumentException("count must be at least 1, but was " + count);
    }
  }

  /** Equal pieces counted, in the order in which each comes first. */
  public static List<Demand> counted(List<Piece> pieces) {
    Map<Piece, Integer> counts = new LinkedHashMap<>();
    pieces.forEach(piece -> counts.merge(piece, 1, Integer::sum));
    List<Demand> demands = new ArrayList<>();
    counts.forEach((piece, count) -> demands.add(new Demand(piece, count)));
    return List.copyOf(demands);
  }
}
