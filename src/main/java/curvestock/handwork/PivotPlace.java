package curvestock.handwork;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import java.util.Optional;

/** What lies under the point about which an arc is swung. */
public sealed interface PivotPlace {

  /** Wood that becomes no piece. */
  record OnWaste() implements PivotPlace {}

  /** A piece of the layout, or so near to it that a pin would split its edge. */
  record OnPiece(int index) implements PivotPlace {}

  /** The offcut that is kept for the next job, or its very edge. */
  record OnKept() implements PivotPlace {}

  /**
   * Nothing.
   *
   * @param side where beyond the sheet
   * @param beyond how far from the edge, in millimetres
   */
  record OffSheet(Side side, double beyond) implements PivotPlace {}

  /** Which edge of the sheet a point lies beyond; ASKEW beyond the edge of a remnant. */
  enum Side {
    LEFT,
    RIGHT,
    BELOW,
    ABOVE,
    ASKEW
  }

  /**
   * Wood that a pin or screw needs about it, in millimetres, so as not to damage what lies beside:
   * about two diameters of a 3 mm pin; common practice, no source.
   */
  double PIN = 6;

  /** Whether a pin there would mark wood that somebody wants. */
  default boolean isOnWoodToKeep() {
    return this instanceof OnPiece || this instanceof OnKept;
  }

  /**
   * Where the point lies.
   *
   * @param kept the offcut promised for the next job, in the sheet's frame
   */
  static PivotPlace of(Layout layout, Optional<Box> kept, Point pivot) {
    Outline sheet = layout.sheet().outline();
    boolean onSheet = sheet.contains(pivot);
    for (int i = 0; i < layout.placements().size(); i++) {
      Outline piece = layout.placements().get(i).outline();
      boolean beside = piece.edges().stream().anyMatch(edge -> edge.distanceTo(pivot) < PIN);
      if (piece.contains(pivot) || (beside && onSheet)) {
        return new OnPiece(i);
      }
    }
    Box point = Box.of(pivot, pivot);
    if (onSheet && kept.isPresent() && kept.get().distance(point) < PIN) {
      return new OnKept();
    }
    return onSheet ? new OnWaste() : off(sheet, pivot);
  }

  private static OffSheet off(Outline sheet, Point pivot) {
    Box box = sheet.box();
    double[] beyond = {
      box.minX() - pivot.x(), pivot.x() - box.maxX(), box.minY() - pivot.y(), pivot.y() - box.maxY()
    };
    int most = 0;
    for (int i = 1; i < beyond.length; i++) {
      most = beyond[i] > beyond[most] ? i : most;
    }
    if (beyond[most] >= 0) {
      return new OffSheet(Side.values()[most], beyond[most]);
    }
    double near = sheet.edges().stream().mapToDouble(e -> e.distanceTo(pivot)).min().orElseThrow();
    return new OffSheet(Side.ASKEW, near);
  }
}
