package curvestock.layout;

import curvestock.geometry.Box;
import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.layout.TrueGap.Neighbour;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The one rule by which a layout is right: how near its pieces come to each other, to the sheet's
 * edge and to its defects, and whether they lie as their grain allows. Exact clearances of the
 * outlines; the packing engine's last word on what its search found, and what a person sees who
 * lays pieces by hand. The last word on a written drawing has {@code check}, which shares no code
 * with this.
 *
 * <p>Cost: square in the number of pieces, and cheap where their boxes lie apart.
 */
public final class TrueGaps {

  private final Layout layout;
  private final List<Outline> outlines;
  private final List<Box> boxes;
  private final double spacing;
  private final double margin;

  private TrueGaps(Layout layout) {
    this.layout = layout;
    this.outlines = layout.placements().stream().map(Placement::outline).toList();
    this.boxes = outlines.stream().map(Outline::box).toList();
    this.spacing = layout.cutting().spacing().millimetres();
    this.margin = layout.cutting().margin().millimetres();
  }

  /** Whether every gap, margin and grain direction of the layout holds. */
  public static boolean hold(Layout layout) {
    return holdFrom(0, layout);
  }

  /**
   * Whether every one holds that the pieces from number {@code first} on have a part in: all of
   * them, if those before are known to be right among themselves.
   *
   * @param first number of a placement, from 0
   */
  public static boolean holdFrom(int first, Layout layout) {
    TrueGaps gaps = new TrueGaps(layout);
    for (int i = first; i < gaps.outlines.size(); i++) {
      List<TrueGap> alone = gaps.alone(i);
      if (!alone.stream().allMatch(TrueGap::holds) || !gaps.holdsToThoseBefore(i)) {
        return false;
      }
    }
    return true;
  }

  private boolean holdsToThoseBefore(int piece) {
    for (int j = 0; j < piece; j++) {
      if (!isFar(piece, j) && !between(piece, j).holds()) {
        return false;
      }
    }
    return true;
  }

  /** Every broken rule: pairs by first and second piece, then the pieces one by one. */
  public static List<TrueGap> broken(Layout layout) {
    TrueGaps gaps = new TrueGaps(layout);
    List<TrueGap> all = new ArrayList<>();
    for (int i = 0; i < gaps.outlines.size(); i++) {
      for (int j = i + 1; j < gaps.outlines.size(); j++) {
        if (!gaps.isFar(i, j)) {
          all.add(gaps.between(i, j));
        }
      }
    }
    for (int i = 0; i < gaps.outlines.size(); i++) {
      all.addAll(gaps.alone(i));
    }
    return all.stream().filter(gap -> !gap.holds()).toList();
  }

  /**
   * For each piece, in the order of the placements, the place with the least room beyond what must
   * be kept; its grain if that does not hold.
   */
  public static List<TrueGap> tightest(Layout layout) {
    TrueGaps gaps = new TrueGaps(layout);
    List<TrueGap> all = new ArrayList<>();
    for (int i = 0; i < gaps.outlines.size(); i++) {
      all.add(gaps.tightest(i));
    }
    return List.copyOf(all);
  }

  private TrueGap tightest(int piece) {
    List<TrueGap> alone = alone(piece);
    TrueGap best = alone.stream().min(Comparator.comparingDouble(TrueGap::room)).orElseThrow();
    for (int j = 0; j < outlines.size(); j++) {
      if (j != piece && boxes.get(piece).distance(boxes.get(j)) - spacing < best.room()) {
        TrueGap found = between(piece, j);
        best = found.room() < best.room() ? found : best;
      }
    }
    return best;
  }

  /** Those of one piece to the sheet: edge, defects, and its grain if that does not hold. */
  private List<TrueGap> alone(int piece) {
    List<TrueGap> all = new ArrayList<>();
    Outline outline = outlines.get(piece);
    all.add(new TrueGap(piece, Neighbour.EDGE, 0, layout.sheet().inside(outline), margin));
    List<Outline> defects = layout.sheet().defects();
    for (int d = 0; d < defects.size(); d++) {
      double gap = Clearance.between(outline, defects.get(d));
      all.add(new TrueGap(piece, Neighbour.DEFECT, d, gap, spacing));
    }
    Placement placement = layout.placements().get(piece);
    double grain = layout.sheet().grain().radians();
    if (!placement.piece().grain().allows(placement.pose().rotation(), grain)) {
      all.add(TrueGap.acrossTheGrain(piece));
    }
    return all;
  }

  private boolean isFar(int piece, int other) {
    return boxes.get(piece).distance(boxes.get(other)) > spacing;
  }

  private TrueGap between(int piece, int other) {
    double gap = Clearance.between(outlines.get(piece), outlines.get(other));
    return new TrueGap(piece, Neighbour.PIECE, other, gap, spacing);
  }
}
