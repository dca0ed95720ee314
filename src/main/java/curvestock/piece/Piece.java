package curvestock.piece;

import curvestock.units.Length;
import java.util.Optional;

/**
 * A kind of piece to be cut, as many times as wanted.
 *
 * @param id short and unique within a job, for labels and files, for example {@code A}
 * @param name what it is, in plain words
 * @param grain how the face grain of the sheet may run through it
 * @param thickness of the sheets that it must be cut from, measured or as sold; empty if that is
 *     the job's business
 */
public record Piece(String id, String name, Shape shape, Grain grain, Optional<Length> thickness) {

  /**
   * @throws IllegalArgumentException if the id is blank or the thickness not above zero
   */
  public Piece {
    if (id.isBlank()) {
      throw new IllegalArgumentException("a piece must have an id");
    }
    thickness.ifPresent(value -> value.requirePositive("thickness of a piece"));
  }

  /** A piece of whatever thickness the job's sheets have. */
  public Piece(String id, String name, Shape shape, Grain grain) {
    this(id, name, shape, grain, Optional.empty());
  }

  /** A piece that may lie any way on the sheet. */
  public static Piece of(String id, String name, Shape shape) {
    return new Piece(id, name, shape, Grain.FREE);
  }

  /** The same piece, from sheets of that thickness. */
  public Piece ofThickness(Length given) {
    return new Piece(id, name, shape, grain, Optional.of(given));
  }
}
