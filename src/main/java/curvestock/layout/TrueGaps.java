package curvestock.layout;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/**
 * How near the pieces of a layout come to each other, to the sheet's edge and to its defects:
 * exact, for layouts that a person changes by hand. Cost: square in the number of pieces, less
 * where their boxes lie apart.
 */
public final class TrueGaps {

  /** Rounding of coordinates near 3 m leaves a millionth of this, as in the packing engine. */
  private static final double ROUNDING = 1e-6;

  private TrueGaps() {}

  /** What a piece comes near to. */
  public enum Neighbour {
    PIECE,
    EDGE,
    DEFECT
  }

  /**
   * The tightest place of a piece: the one with the least room beyond what must be kept.
   *
   * @param to what it is near to
   * @param number which piece or defect, from 0; 0 for the edge
   * @param gap true gap in millimetres; 0 where they overlap, below 0 where a piece reaches over
   *     the edge, on a rectangular sheet by how far
   * @param least gap that must be kept
   * @param grainHolds whether the piece lies as its grain allows
   */
  public record Tightest(Neighbour to, int number, double gap, double least, boolean grainHolds) {

    /** Whether the piece may lie there. */
    public boolean holds() {
      // Clearances of 0 may hide an overlap; measured against a rectangle's edge, 0 is 0.
      boolean apart = to == Neighbour.EDGE || gap > 0;
      return apart && gap >= least - ROUNDING && grainHolds;
    }

    private double room() {
      return gap - least;
    }
  }

  /** The tightest place of each piece, in the order of the placements. */
  public static List<Tightest> of(Layout layout) {
    List<Outline> outlines = layout.placements().stream().map(Placement::outline).toList();
    List<Tightest> all = new ArrayList<>();
    for (int i = 0; i < outlines.size(); i++) {
      all.add(of(layout, outlines, i));
    }
    return List.copyOf(all);
  }

  private static Tightest of(Layout layout, List<Outline> outlines, int piece) {
    Outline outline = outlines.get(piece);
    Placement placement = layout.placements().get(piece);
    boolean grain =
        placement
            .piece()
            .grain()
            .allows(placement.pose().rotation(), layout.sheet().grain().radians());
    double spacing = layout.cutting().spacing().millimetres();
    double margin = layout.cutting().margin().millimetres();
    double inside = inside(outline, layout.sheet());
    Tightest best = new Tightest(Neighbour.EDGE, 0, inside, margin, grain);
    for (int j = 0; j < outlines.size(); j++) {
      if (j != piece) {
        best = nearer(best, Neighbour.PIECE, j, outline, outlines.get(j), spacing);
      }
    }
    List<Outline> defects = layout.sheet().defects();
    for (int j = 0; j < defects.size(); j++) {
      best = nearer(best, Neighbour.DEFECT, j, outline, defects.get(j), spacing);
    }
    return best;
  }

  /** Below 0 where a piece crosses the edge; on a rectangle by how far it reaches over. */
  private static double inside(Outline outline, SheetStock sheet) {
    double inside = sheet.inside(outline);
    // But on rectangles touching and crossing look alike, and unsure counts as wrong.
    return inside == 0 && !sheet.isRectangle() ? -ROUNDING * 2 : inside;
  }

  private static Tightest nearer(
      Tightest best, Neighbour to, int number, Outline outline, Outline other, double least) {
    if (outline.box().distance(other.box()) - least >= best.room()) {
      return best;
    }
    double gap = Clearance.between(outline, other);
    Tightest found = new Tightest(to, number, gap, least, best.grainHolds());
    return found.room() < best.room() ? found : best;
  }
}
