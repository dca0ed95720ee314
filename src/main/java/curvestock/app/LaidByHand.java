package curvestock.app;

import curvestock.layout.Placement;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/**
 * A sheet that somebody has laid by hand.
 *
 * @param pinned pieces that shall stay where they are
 * @param free pieces that may be moved
 */
public record LaidByHand(SheetStock sheet, List<Placement> pinned, List<Placement> free) {

  public LaidByHand {
    pinned = List.copyOf(pinned);
    free = List.copyOf(free);
  }

  /** All pieces, the pinned ones first. */
  public List<Placement> all() {
    List<Placement> all = new ArrayList<>(pinned);
    all.addAll(free);
    return all;
  }
}
