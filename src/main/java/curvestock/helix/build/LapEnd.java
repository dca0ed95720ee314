package curvestock.helix.build;

/**
 * Which half of the thickness a half-lap takes from an end of a piece. Pieces are laid from the
 * bottom up, each on the one before: so the upper end loses its upper half and the lower end its
 * lower one, the same on every piece.
 */
public enum LapEnd {
  LOWER("below", "underside"),
  UPPER("above", "top");

  private final String side;
  private final String face;

  LapEnd(String side, String face) {
    this.side = side;
    this.face = face;
  }

  /** The side from which the wood is taken: {@code above} or {@code below}. */
  public String side() {
    return side;
  }

  /** The face that loses wood, as papers name it: {@code top} or {@code underside}. */
  public String face() {
    return face;
  }
}
