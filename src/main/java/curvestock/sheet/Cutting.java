package curvestock.sheet;

import curvestock.units.Length;

/**
 * How the tool cuts.
 *
 * @param kerf width of the cut: the saw's kerf or the router bit's diameter
 * @param extra wood to leave between two cuts, zero if they may share a kerf
 * @param margin least distance of any piece from the sheet's edge
 */
public record Cutting(Length kerf, Length extra, Length margin) {

  /**
   * @throws IllegalArgumentException if a length is negative
   */
  public Cutting {
    kerf.requireNotNegative("kerf");
    extra.requireNotNegative("extra spacing");
    margin.requireNotNegative("margin");
  }

  /** Least gap between two pieces: kerf + extra. */
  public Length spacing() {
    return kerf.plus(extra);
  }
}
