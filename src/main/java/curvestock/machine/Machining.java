package curvestock.machine;

import curvestock.geometry.Box;
import java.util.List;
import java.util.Optional;

/**
 * What is done on a sheet besides its outlines, marks and numbers, and what its files say of it.
 *
 * @param pockets of both sides, as seen from above
 * @param drillings small round holes of the pieces
 * @param words engraved beside laps: from which side they are cut, and which face is up
 * @param levelNumbers the pieces' numbers along x, for SVG, whose text is not turned; only where
 *     numbers are text
 * @param turning how the sheet is turned over; empty if nothing is done from below
 * @param remnant what is kept of the sheet
 * @param caption what the files say of themselves
 */
public record Machining(
    List<Pocket> pockets,
    List<Drilling> drillings,
    List<Engraving> words,
    List<Engraving> levelNumbers,
    Optional<Turning> turning,
    Optional<Box> remnant,
    Caption caption) {

  /** Copies the lists. */
  public Machining {
    pockets = List.copyOf(pockets);
    drillings = List.copyOf(drillings);
    words = List.copyOf(words);
    levelNumbers = List.copyOf(levelNumbers);
  }

  /** The pockets of one side. */
  public List<Pocket> pockets(Operation operation) {
    return pockets.stream().filter(pocket -> pocket.operation() == operation).toList();
  }
}
