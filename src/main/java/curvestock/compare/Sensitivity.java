package curvestock.compare;

import curvestock.units.Length;
import java.util.List;

/**
 * How far the recommended choice holds when a length changes, on the main sheet alone.
 *
 * @param option the choice that was changed
 * @param byPattern whether regular patterns did the counting; else a quick search on top of them
 * @param steps what was found, in the order of {@link Dimension}, less before more
 */
public record Sensitivity(SegmentOption option, boolean byPattern, List<Step> steps) {

  public Sensitivity {
    steps = List.copyOf(steps);
  }

  /**
   * The smallest change tried that alters the pieces on a sheet, or the number of sheets.
   *
   * @param change added to the length; negative makes it less
   * @param perSheet pieces per sheet found then
   * @param sheets sheets that this number of pieces a sheet comes to for all pieces of the helix
   */
  public record Step(Dimension dimension, Length change, int perSheet, int sheets) {}

  /** Sheets that the helix takes at the number of pieces a sheet found without a change. */
  public int baseSheets() {
    return sheets(option, option.perSheet());
  }

  static int sheets(SegmentOption option, int perSheet) {
    return perSheet == 0 ? Integer.MAX_VALUE : (option.pieces() + perSheet - 1) / perSheet;
  }
}
