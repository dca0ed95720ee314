package curvestock.packing;

import curvestock.layout.Layout;
import curvestock.piece.Piece;
import java.util.List;

/**
 * A valid layout reached from an {@link Arrangement}.
 *
 * @param layout the pinned pieces first, to the bit as they were given and in that order; then the
 *     free ones, in their order but for those that found room later; then the added ones
 * @param pinned how many of the layout's first placements are the pinned ones
 * @param leftOut free pieces for which no room was found (yet)
 * @param added how many further pieces were added
 */
public record Continued(Layout layout, int pinned, List<Piece> leftOut, int added) {

  /** Copies the list of what is left out. */
  public Continued {
    leftOut = List.copyOf(leftOut);
  }
}
