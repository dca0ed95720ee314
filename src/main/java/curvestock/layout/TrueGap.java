package curvestock.layout;

import curvestock.units.Length;
import curvestock.units.LengthStyle;

/**
 * The true distance of a piece from one thing that it must keep clear of.
 *
 * @param piece number of the piece in the layout, from 0
 * @param to what it is near to
 * @param number which other piece or which defect, from 0; else 0
 * @param gap true distance in millimetres; 0 where they touch, below 0 where they share wood or the
 *     piece reaches over the sheet's edge: by how far, or less
 * @param least distance that must be kept, in millimetres
 */
public record TrueGap(int piece, Neighbour to, int number, double gap, double least) {

  /** Rounding of coordinates near 3 m leaves a millionth of this, in millimetres. */
  public static final double ROUNDING = 1e-6;

  /** What a piece comes near to. */
  public enum Neighbour {
    /** Another piece: kerf and extra spacing between them. */
    PIECE,
    /** The sheet's edge: the margin. */
    EDGE,
    /** A defect of the sheet: kept clear of like a piece. */
    DEFECT,
    /** The sheet's grain: the piece is turned further from it than its own grain allows. */
    GRAIN
  }

  /** A piece that no place is right for, lying so: its gap and what it needs are given as 0. */
  static TrueGap acrossTheGrain(int piece) {
    return new TrueGap(piece, Neighbour.GRAIN, 0, 0, 0);
  }

  /** Whether the distance is enough. */
  public boolean holds() {
    return to != Neighbour.GRAIN && gap >= least - ROUNDING;
  }

  /** Distance beyond what must be kept, in millimetres; below 0 if it is not kept. */
  public double room() {
    return to == Neighbour.GRAIN ? Double.NEGATIVE_INFINITY : gap - least;
  }

  /** A broken rule in plain words, pieces and defects counted from 1. */
  public String words(LengthStyle style) {
    String name = "piece " + (piece + 1);
    String needed = style.format(Length.ofMillimetres(least));
    String found = gap > 0 ? style.format(Length.ofMillimetres(gap)) : "";
    String other = Integer.toString(number + 1);
    return switch (to) {
      case PIECE ->
          name
              + " and piece "
              + other
              + (gap > 0 ? " are " + found + " apart" : touches("", "touch"))
              + ", and need "
              + needed;
      case EDGE ->
          name
              + (gap > 0
                  ? " is " + found + " from the edge of the sheet, and needs " + needed
                  : touches(" the edge of the sheet", "touches") + ", and needs " + needed);
      case DEFECT ->
          name
              + (gap > 0 ? " is " + found + " from defect " + other : " touches defect " + other)
              + ", and needs "
              + needed;
      case GRAIN -> name + " is turned too far from the grain of the sheet";
    };
  }

  private String touches(String what, String verb) {
    if (gap >= -ROUNDING) {
      return " " + verb + what;
    }
    return what.isEmpty() ? " overlap" : " reaches over" + what;
  }
}
