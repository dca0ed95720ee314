package curvestock.sheet;

import curvestock.units.Length;
import curvestock.units.LengthStyle;

/**
 * How the tool cuts.
 *
 * @param kerf width of the cut: the saw's kerf or the router bit's diameter
 * @param spacing least gap between the finished edges of two pieces: one kerf where neighbours may
 *     share a cut, more than two where wood is to stand between the cut of each
 * @param margin least distance of any piece from the sheet's edge
 */
public record Cutting(Length kerf, Length spacing, Length margin) {

  /**
   * @throws IllegalArgumentException if a length is negative, or the gap less than the kerf
   */
  public Cutting {
    kerf.requireNotNegative("kerf");
    spacing.requireNotNegative("spacing");
    margin.requireNotNegative("margin");
    if (spacing.compareTo(kerf) < 0) {
      throw new IllegalArgumentException(
          "spacing must be at least the kerf of " + kerf + ", but was " + spacing);
    }
  }

  /**
   * Cuts with wood left standing between them. Each of two neighbours is cut by itself, so the gap
   * is two kerfs and that wood; without any they may share one cut.
   *
   * @param extra wood to leave between two cuts, zero if neighbours may share one
   * @throws IllegalArgumentException if a length is negative
   */
  public static Cutting leaving(Length kerf, Length extra, Length margin) {
    extra.requireNotNegative("extra spacing");
    Length gap = extra.equals(Length.ZERO) ? kerf : kerf.times(2).plus(extra);
    return new Cutting(kerf, gap, margin);
  }

  /** Wood that stands between two neighbours' cuts where they come nearest, zero if none. */
  public Length standing() {
    Length left = spacing.minus(kerf.times(2));
    return left.compareTo(Length.ZERO) > 0 ? left : Length.ZERO;
  }

  /** Whether neighbours may lie so near that one cut parts them. */
  public boolean shares() {
    return spacing.equals(kerf);
  }

  /** The same with another kerf: shared cuts stay shared, wood between cuts stays as wide. */
  public Cutting withKerf(Length other) {
    if (shares()) {
      return new Cutting(other, other, margin);
    }
    Length left = standing();
    Length gap =
        left.equals(Length.ZERO) ? spacing.plus(other).minus(kerf) : other.times(2).plus(left);
    return new Cutting(other, gap, margin);
  }

  /** Gap and wood in words: {@code pieces at least 3/8 in apart (1/8 in of wood between cuts)}. */
  public String apart(LengthStyle style) {
    String wood =
        standing().equals(Length.ZERO)
            ? shares() ? "neighbours may share a cut" : "no wood between two cuts"
            : style.formatGiven(standing()) + " of wood between two cuts";
    return "pieces at least " + style.formatGiven(spacing) + " apart (" + wood + ")";
  }
}
