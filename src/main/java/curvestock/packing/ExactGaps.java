package curvestock.packing;

import curvestock.geometry.Box;
import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import java.util.List;

/**
 * The packing engine's own last word on a layout, by exact clearances of the outlines and not by
 * the fields that the search uses.
 */
final class ExactGaps {

  /** Rounding of coordinates near 3 m leaves a millionth of this. */
  static final double ROUNDING = 1e-6;

  private ExactGaps() {}

  /** Whether every gap, margin and grain direction of the layout holds. */
  static boolean hold(Layout layout) {
    double spacing = layout.cutting().spacing().millimetres() - ROUNDING;
    double margin = layout.cutting().margin().millimetres() - ROUNDING;
    List<Outline> outlines = layout.placements().stream().map(Placement::outline).toList();
    for (int i = 0; i < outlines.size(); i++) {
      Outline outline = outlines.get(i);
      if (Clearance.within(outline, layout.sheet().outline()) < margin
          || !clearOfDefects(outline, layout, spacing)
          || !grainAllows(layout, layout.placements().get(i))) {
        return false;
      }
      Box box = outline.box();
      for (int j = 0; j < i; j++) {
        Outline other = outlines.get(j);
        if (box.distance(other.box()) < spacing + ROUNDING
            && tooNear(Clearance.between(outline, other), spacing)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean clearOfDefects(Outline outline, Layout layout, double spacing) {
    return layout.sheet().defects().stream()
        .noneMatch(defect -> tooNear(Clearance.between(outline, defect), spacing));
  }

  /**
   * With no spacing asked pieces may touch, which {@link Clearance} cannot tell from overlapping:
   * so a clearance of nothing counts as a collision. Layouts that the engine makes keep a billionth
   * of a millimetre.
   */
  static boolean tooNear(double clearance, double spacing) {
    return clearance <= 0 || clearance < spacing;
  }

  static boolean grainAllows(Layout layout, Placement placement) {
    return placement
        .piece()
        .grain()
        .allows(placement.pose().rotation(), layout.sheet().grain().radians());
  }
}
