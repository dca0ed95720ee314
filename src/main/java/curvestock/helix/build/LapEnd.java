package curvestock.helix.build;

/**
 * Which half of the thickness a half-lap takes from an end of a piece. Pieces are laid from the
 * bottom up, each on the one before: so the upper end loses its upper half and the lower end its
 * lower one, the same on every piece.
 */
public enum LapEnd {
  LOWER("below"),
  UPPER("above");

  private final String side;

  LapEnd(String side) {
    this.side = side;
  }

  /** The side from which the wood is taken: {@code above} or {@code below}. */
  public String side() {
    return side;
  }
}
