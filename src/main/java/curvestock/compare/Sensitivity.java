package curvestock.compare;

import curvestock.units.Length;
import java.util.List;

/**
 * How far the recommended choice holds when a length changes, on the main sheet alone.
 *
 * @param option the choice that was changed
 * @param baseSheets sheets of the main kind for the whole job without a change
 * @param byPattern whether regular patterns did the counting; else a quick search on top of them
 * @param steps what was found, in the order of {@link Dimension}, less before more
 */
public record Sensitivity(
    SegmentOption option, int baseSheets, boolean byPattern, List<Step> steps) {

  public Sensitivity {
    steps = List.copyOf(steps);
  }

  /**
   * The smallest change tried that alters the pieces on a sheet, or the number of sheets.
   *
   * @param change added to the length; negative makes it less
   * @param perSheet pieces per sheet found then
   * @param sheets sheets of the main kind for the whole job then, planned anew; {@link #NONE} if it
   *     cannot be cut then
   */
  public record Step(Dimension dimension, Length change, int perSheet, int sheets) {

    /** Stands for no number of sheets at all. */
    public static final int NONE = Integer.MAX_VALUE;
  }
}
