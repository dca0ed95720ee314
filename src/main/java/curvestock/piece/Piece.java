package curvestock.piece;

/**
 * A kind of piece to be cut, as many times as wanted.
 *
 * @param id short and unique within a job, for labels and files, for example {@code A}
 * @param name what it is, in plain words
 * @param grain how the face grain of the sheet may run through it
 */
public record Piece(String id, String name, Shape shape, Grain grain) {

  /**
   * @throws IllegalArgumentException if the id is blank
   */
  public Piece {
    if (id.isBlank()) {
      throw new IllegalArgumentException("a piece must have an id");
    }
  }

  /** A piece that may lie any way on the sheet. */
  public static Piece of(String id, String name, Shape shape) {
    return new Piece(id, name, shape, Grain.FREE);
  }
}
