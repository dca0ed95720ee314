package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.layout.Placement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Leaves out the pieces that nobody wants, all from one sheet as far as possible, so that what is
 * left over is one large remnant: first from the sheet that then has most free area, then from the
 * next. Of a kind, the placements listed last go first. A layout that loses pieces stays valid.
 */
final class Trimming {

  private final CuttingStockInstance instance;
  private final List<Layout> layouts;

  Trimming(CuttingStockInstance instance, List<Layout> layouts) {
    this.instance = instance;
    this.layouts = List.copyOf(layouts);
  }

  /** The layouts in the same order, holding together exactly what is wanted. */
  List<Layout> trimmed() {
    int[] surplus = surplus();
    List<Layout> result = new ArrayList<>(layouts);
    Set<Integer> done = new HashSet<>();
    while (done.size() < layouts.size()) {
      int emptiest = -1;
      Layout best = null;
      for (int s = 0; s < layouts.size(); s++) {
        if (!done.contains(s)) {
          Layout candidate = without(layouts.get(s), surplus);
          if (best == null || free(candidate) > free(best)) {
            best = candidate;
            emptiest = s;
          }
        }
      }
      subtract(surplus, layouts.get(emptiest), best);
      result.set(emptiest, best);
      done.add(emptiest);
    }
    return result;
  }

  private int[] surplus() {
    int[] surplus = new int[instance.demands().size()];
    for (int i = 0; i < surplus.length; i++) {
      surplus[i] = -instance.demands().get(i).count();
    }
    for (Layout layout : layouts) {
      int[] counts = instance.counts(layout);
      for (int i = 0; i < surplus.length; i++) {
        surplus[i] += counts[i];
      }
    }
    return surplus;
  }

  private void subtract(int[] surplus, Layout whole, Layout trimmed) {
    int[] before = instance.counts(whole);
    int[] after = instance.counts(trimmed);
    for (int i = 0; i < surplus.length; i++) {
      surplus[i] -= before[i] - after[i];
    }
  }

  private Layout without(Layout layout, int[] surplus) {
    int[] left = surplus.clone();
    List<Placement> kept = new ArrayList<>();
    for (int k = layout.placements().size() - 1; k >= 0; k--) {
      Placement placement = layout.placements().get(k);
      int kind = kindOf(placement);
      if (left[kind] > 0) {
        left[kind]--;
      } else {
        kept.add(placement);
      }
    }
    Collections.reverse(kept);
    return new Layout(layout.sheet(), layout.cutting(), kept);
  }

  private int kindOf(Placement placement) {
    for (int i = 0; i < instance.demands().size(); i++) {
      if (instance.demands().get(i).piece().equals(placement.piece())) {
        return i;
      }
    }
    throw new IllegalStateException("piece " + placement.piece().id() + " is not wanted");
  }

  private static double free(Layout layout) {
    return layout.sheet().area() - layout.pieceArea();
  }
}
