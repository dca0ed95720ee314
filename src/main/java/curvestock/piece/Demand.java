package curvestock.piece;

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
}
