package curvestock.compare;

import curvestock.units.Length;
import curvestock.units.Money;

/**
 * What a choice takes if every sheet comes as small as its tolerance allows.
 *
 * @param shortBy by how much the main sheet is smaller
 * @param source who allows a sheet so much
 * @param sheets that are cut then; never fewer than of full size; {@link #NONE} if it cannot be cut
 * @param cost of them, never less than of full size
 */
public record ShortSheets(Length shortBy, String source, int sheets, Money cost) {

  /** Stands for no number of sheets at all. */
  public static final int NONE = Integer.MAX_VALUE;
}
