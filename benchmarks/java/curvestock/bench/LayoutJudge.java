package curvestock.bench;

import curvestock.geometry.Clearance;
import curvestock.geometry.Flattening;
import curvestock.geometry.Outline;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import java.util.List;
import org.locationtech.jts.geom.Polygon;

/**
 * Whether a layout that is counted here is valid: gaps and margin by exact clearance, and overlap a
 * second time by JTS on polygons that lie inside the pieces, which also judges layouts whose pieces
 * may touch.
 */
final class LayoutJudge {

  private static final double ROUNDING = 1e-5;
  private static final double FLATTENING = 0.01;

  /** Of two pieces that touch, in square millimetres. */
  private static final double SHARED_AREA = 1;

  private LayoutJudge() {}

  static boolean accepts(Layout layout) {
    double gap = layout.cutting().spacing().millimetres();
    double margin = layout.cutting().margin().millimetres();
    List<Outline> outlines = layout.placements().stream().map(Placement::outline).toList();
    Flattening flattening = new Flattening(FLATTENING);
    List<Polygon> polygons = outlines.stream().map(flattening::inside).toList();
    for (int i = 0; i < outlines.size(); i++) {
      if (Clearance.within(outlines.get(i), layout.sheet().outline()) < margin - ROUNDING) {
        return false;
      }
      for (int j = 0; j < i; j++) {
        if (Clearance.between(outlines.get(i), outlines.get(j)) < gap - ROUNDING
            || polygons.get(i).intersection(polygons.get(j)).getArea() > SHARED_AREA) {
          return false;
        }
      }
    }
    return true;
  }
}
