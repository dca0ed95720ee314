package curvestock.packing;

import curvestock.layout.Placement;
import curvestock.piece.Demand;
import java.util.List;

/**
 * Pieces that lie on a sheet, perhaps not yet well, and what else is wanted: from here {@link
 * Packer#continueFrom} goes on.
 *
 * @param pinned pieces that may not move
 * @param free pieces that may; they may lie anywhere, over each other or beside the sheet
 * @param more further pieces, at most as many of each as given; the first kind has the first choice
 */
public record Arrangement(List<Placement> pinned, List<Placement> free, List<Demand> more) {

  /** Copies the lists. Whether the pieces lie well is for the packer to find out. */
  public Arrangement {
    pinned = List.copyOf(pinned);
    free = List.copyOf(free);
    more = List.copyOf(more);
  }
}
