package curvestock.packing;

import curvestock.geometry.Box;
import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * The true gaps of a layout, right or wrong, for showing it while pieces are moved about: exact
 * clearances of the outlines, and which of them fall short. The last word on a written drawing has
 * {@code check}, which shares no code with this.
 *
 * @param shortfalls every broken rule: pairs by first and second piece, then the pieces one by one
 * @param toEdge for each piece the true distance from the sheet's edge; where it crosses the edge
 *     0, on a rectangle less than 0 by as much as it sticks out
 */
public record LayoutGaps(List<Shortfall> shortfalls, List<Length> toEdge) {

  public LayoutGaps {
    shortfalls = List.copyOf(shortfalls);
    toEdge = List.copyOf(toEdge);
  }

  /** Whether no rule is broken. */
  public boolean hold() {
    return shortfalls.isEmpty();
  }

  public static LayoutGaps of(Layout layout) {
    List<Outline> outlines = layout.placements().stream().map(Placement::outline).toList();
    List<Shortfall> broken = new ArrayList<>();
    pairs(layout, outlines, broken);
    List<Length> toEdge = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      double inside = layout.sheet().inside(outlines.get(i));
      toEdge.add(Length.ofMillimetres(inside));
      if (inside < layout.cutting().margin().millimetres() - ExactGaps.ROUNDING) {
        broken.add(
            new Shortfall(
                Shortfall.Rule.MARGIN,
                i,
                OptionalInt.empty(),
                Length.ofMillimetres(inside),
                layout.cutting().margin()));
      }
      defects(layout, i, outlines.get(i), broken);
      if (!ExactGaps.grainAllows(layout, layout.placements().get(i))) {
        broken.add(
            new Shortfall(Shortfall.Rule.GRAIN, i, OptionalInt.empty(), Length.ZERO, Length.ZERO));
      }
    }
    return new LayoutGaps(broken, toEdge);
  }

  private static void pairs(Layout layout, List<Outline> outlines, List<Shortfall> broken) {
    Length needed = layout.cutting().spacing();
    double spacing = needed.millimetres() - ExactGaps.ROUNDING;
    List<Box> boxes = outlines.stream().map(Outline::box).toList();
    for (int i = 0; i < outlines.size(); i++) {
      for (int j = i + 1; j < outlines.size(); j++) {
        if (boxes.get(i).distance(boxes.get(j)) <= needed.millimetres()) {
          double gap = Clearance.between(outlines.get(i), outlines.get(j));
          if (ExactGaps.tooNear(gap, spacing)) {
            broken.add(
                new Shortfall(
                    Shortfall.Rule.SPACING,
                    i,
                    OptionalInt.of(j),
                    Length.ofMillimetres(gap),
                    needed));
          }
        }
      }
    }
  }

  private static void defects(Layout layout, int i, Outline outline, List<Shortfall> broken) {
    Length needed = layout.cutting().spacing();
    List<Outline> defects = layout.sheet().defects();
    for (int d = 0; d < defects.size(); d++) {
      double gap = Clearance.between(outline, defects.get(d));
      if (ExactGaps.tooNear(gap, needed.millimetres() - ExactGaps.ROUNDING)) {
        broken.add(
            new Shortfall(
                Shortfall.Rule.DEFECT, i, OptionalInt.of(d), Length.ofMillimetres(gap), needed));
      }
    }
  }
}
