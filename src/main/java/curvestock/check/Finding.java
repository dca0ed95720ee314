package curvestock.check;

import java.util.List;

/**
 * One fault of a drawing.
 *
 * @param kind what sort of fault
 * @param message what is wrong, by how much and where, with units
 * @param paths ids of the paths concerned; empty if the drawing as a whole is
 */
public record Finding(Kind kind, String message, List<String> paths) {

  /** Copies the ids of the paths. */
  public Finding {
    paths = List.copyOf(paths);
  }

  static Finding of(Kind kind, String message, String... paths) {
    return new Finding(kind, Shown.line(message), List.of(paths));
  }

  /** Sorts of faults. */
  public enum Kind {
    /** Width, height and viewBox do not say one millimetre per user unit. */
    SCALE,
    /** The drawing holds something that makes its geometry uncertain, such as a transform. */
    STRUCTURE,
    /** The sheet's edge is missing or not that of the sheet expected. */
    SHEET,
    /** A path's {@code data-piece} names no piece of the job. */
    UNKNOWN_PIECE,
    /** An outline is not congruent to the nominal shape. */
    SHAPE,
    /** More or fewer of a piece than expected. */
    COUNT,
    /** Two pieces are closer than the spacing. */
    GAP,
    /** Two pieces share wood. */
    OVERLAP,
    /** A piece is closer to the sheet's edge than the margin, or over it. */
    MARGIN,
    /** A piece is on a defect or closer to it than the spacing. */
    DEFECT,
    /** The face grain runs through a piece in a direction it does not allow. */
    GRAIN,
    /** A piece that tabs should hold comes loose when the rest is cut. */
    LOOSE,
    /** A mark or number is missing, or lies where it does not belong. */
    MARK,
    /** An area to be cleared misses its lap, is of the wrong depth, or takes other wood. */
    POCKET,
    /** So many faults that the rest is not listed. */
    MORE
  }
}
