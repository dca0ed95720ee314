package curvestock.piece;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import java.util.ArrayList;
import java.util.List;

/**
 * A blank with holes through it, in the blank's frame. The holes are cut and checked, but no other
 * piece is ever laid into them: to packing and to its bounds the piece is its blank.
 *
 * @param blank the shape without the holes
 * @param drilled rims of the holes, clockwise
 */
public record Drilled(Shape blank, List<Loop> drilled) implements Shape {

  /**
   * Checks the holes.
   *
   * @throws IllegalArgumentException if there are none, one does not run clockwise, or the blank is
   *     drilled itself
   */
  public Drilled {
    drilled = List.copyOf(drilled);
    if (drilled.isEmpty()) {
      throw new IllegalArgumentException("a drilled piece must have a hole");
    }
    if (blank instanceof Drilled) {
      throw new IllegalArgumentException("a blank must not be drilled itself");
    }
    // Fails here rather than later if a hole runs the wrong way round.
    new Outline(blank.outline().outer(), drilled);
  }

  @Override
  public Outline outline() {
    Outline plain = blank.outline();
    List<Loop> holes = new ArrayList<>(plain.holes());
    holes.addAll(drilled);
    return new Outline(plain.outer(), holes);
  }
}
