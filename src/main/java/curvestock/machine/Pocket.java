package curvestock.machine;

import curvestock.geometry.Outline;
import curvestock.helix.build.Lap;
import curvestock.helix.build.LapEnd;
import curvestock.units.Length;

/**
 * An area to be cleared to a part of the thickness.
 *
 * @param number of the piece, from 1, in the layout's order
 * @param operation {@link Operation#POCKET_TOP} or {@link Operation#POCKET_BOTTOM}
 * @param lap that it makes, where the piece lies on the sheet
 * @param area that the tool clears without leaving it, on the sheet as seen from above
 * @param depth from the face of the sheet
 */
public record Pocket(int number, Operation operation, Lap lap, Outline area, Length depth) {

  /** The pocket for a half-lap: half the sheet's thickness. */
  static Pocket of(int number, Lap lap, Length thickness, double toolRadius) {
    return new Pocket(
        number,
        lap.end() == LapEnd.UPPER ? Operation.POCKET_TOP : Operation.POCKET_BOTTOM,
        lap,
        lap.cleared(toolRadius),
        thickness.times(0.5));
  }

  /** The path's name in files, such as {@code piece-3-pocket-top}. */
  public String id() {
    return "piece-" + number + "-" + operation.id();
  }
}
