package curvestock.machine;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.helix.build.Lap;
import java.util.List;
import java.util.Optional;

/**
 * What is to be done on a sheet beyond what its layout says.
 *
 * @param marks lines to be drawn, in the sheet's frame
 * @param laps of each piece in the layout's order, in the pieces' own frames; empty for none at all
 * @param remnant what is kept of the sheet
 * @param caption what the files say of themselves
 */
public record SheetWork(
    List<List<Edge>> marks, List<List<Lap>> laps, Optional<Box> remnant, Caption caption) {

  /** Nothing but the outlines, on a sheet without a name. */
  public static final SheetWork NONE =
      new SheetWork(List.of(), List.of(), Optional.empty(), Caption.PLAIN);

  /** Copies the lists. */
  public SheetWork {
    marks = marks.stream().map(List::copyOf).toList();
    laps = laps.stream().map(List::copyOf).toList();
  }

  List<Lap> lapsOf(int piece) {
    return laps.isEmpty() ? List.of() : laps.get(piece);
  }
}
