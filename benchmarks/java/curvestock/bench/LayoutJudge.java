package curvestock.bench;

import curvestock.geometry.Clearance;
import curvestock.geometry.Flattening;
import curvestock.geometry.Outline;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;

/**
 * Whether a layout that is counted here is valid: gaps and margin by exact clearance, and overlap a
 * second time by JTS on polygons that lie inside the pieces, which also judges layouts whose pieces
 * may touch; grain by the engine's own {@link TrueGaps}.
 */
final class LayoutJudge {

  private static final double ROUNDING = 1e-5;
  private static final double FLATTENING = 0.01;

  /** Of two pieces that touch, in square millimetres. */
  private static final double SHARED_AREA = 1;

  private LayoutJudge() {}

  static boolean accepts(Layout layout) {
    return fault(layout).isEmpty();
  }

  /** The first rule that the layout breaks, and by how much; nothing if it is valid. */
  static Optional<String> fault(Layout layout) {
    double gap = layout.cutting().spacing().millimetres();
    double margin = layout.cutting().margin().millimetres();
    List<Outline> outlines = layout.placements().stream().map(Placement::outline).toList();
    Flattening flattening = new Flattening(FLATTENING);
    List<Polygon> polygons = outlines.stream().map(flattening::inside).toList();
    for (int i = 0; i < outlines.size(); i++) {
      double within = Clearance.within(outlines.get(i), layout.sheet().outline());
      if (within < margin - ROUNDING) {
        return fault("piece %d: %.6f mm to the edge", i, within);
      }
      for (int j = 0; j < i; j++) {
        double between = Clearance.between(outlines.get(i), outlines.get(j));
        if (between < gap - ROUNDING) {
          return fault("pieces %d and %d: %.6f mm apart", j, i, between);
        }
        double shared = polygons.get(i).intersection(polygons.get(j)).getArea();
        if (shared > SHARED_AREA) {
          return fault("pieces %d and %d: %.3f mm² in common", j, i, shared);
        }
      }
    }
    return TrueGaps.hold(layout)
        ? Optional.empty()
        : Optional.of("broken by the engine's own rule");
  }

  private static Optional<String> fault(String form, Object... values) {
    return Optional.of(String.format(Locale.ROOT, form, values));
  }
}
