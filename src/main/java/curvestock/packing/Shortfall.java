package curvestock.packing;

import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.OptionalInt;

/**
 * A rule that a layout breaks, with the facts.
 *
 * @param rule which one
 * @param piece number of the piece in the layout, from 0
 * @param other for {@link Rule#SPACING} the number of the other piece, for {@link Rule#DEFECT} that
 *     of the defect, from 0; else none
 * @param found the true distance. 0 where two pieces, or a piece and a defect, touch or share wood;
 *     0 or less where a piece crosses the sheet's edge; 0 for {@link Rule#GRAIN}
 * @param needed the least distance allowed; 0 for {@link Rule#GRAIN}
 */
public record Shortfall(Rule rule, int piece, OptionalInt other, Length found, Length needed) {

  /** What can be broken. */
  public enum Rule {
    /** Two pieces lie nearer than kerf and extra spacing. */
    SPACING,
    /** A piece lies nearer to the sheet's edge than the margin. */
    MARGIN,
    /** A piece lies nearer to a defect than the spacing. */
    DEFECT,
    /** A piece is turned further from the sheet's grain than its own grain allows. */
    GRAIN
  }

  /** In plain words, pieces and defects counted from 1. */
  public String words(LengthStyle style) {
    String name = "piece " + (piece + 1);
    return switch (rule) {
      case SPACING ->
          name
              + " and piece "
              + (other.orElseThrow() + 1)
              + (found.millimetres() > 0
                  ? " are " + style.format(found) + " apart"
                  : " touch or overlap")
              + ", and need "
              + style.format(needed);
      case MARGIN ->
          name
              + (found.millimetres() <= 0
                  ? " reaches over the edge of the sheet"
                  : " is " + style.format(found) + " from the edge of the sheet")
              + ", and needs "
              + style.format(needed);
      case DEFECT ->
          name
              + (found.millimetres() > 0
                  ? " is " + style.format(found) + " from defect " + (other.orElseThrow() + 1)
                  : " touches defect " + (other.orElseThrow() + 1))
              + ", and needs "
              + style.format(needed);
      case GRAIN -> name + " is turned too far from the grain of the sheet";
    };
  }
}
