package curvestock.handwork;

import curvestock.geometry.Box;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.layout.Layout;

/** What lies under the point about which an arc is swung. */
public sealed interface PivotPlace {

  /** Wood that becomes no piece. */
  record OnWaste() implements PivotPlace {}

  /** A piece of the layout. */
  record OnPiece(int index) implements PivotPlace {}

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

  /** Where the point lies. */
  static PivotPlace of(Layout layout, Point pivot) {
    for (int i = 0; i < layout.placements().size(); i++) {
      if (layout.placements().get(i).outline().contains(pivot)) {
        return new OnPiece(i);
      }
    }
    Outline sheet = layout.sheet().outline();
    return sheet.contains(pivot) ? new OnWaste() : off(sheet, pivot);
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
