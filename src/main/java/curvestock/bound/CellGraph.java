package curvestock.bound;

import curvestock.packing.Control;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Which cells of placements may hold two pieces of one layout: all pairs that are not proven to
 * clash. A cell may stand beside itself, where two pieces could lie in it.
 */
final class CellGraph {

  private final List<ThickArc> cells;
  private final long[][] beside;
  private final double gap;
  private final Control control;
  private long tests;

  /**
   * All pairs of the cells are tested.
   *
   * @param control once it stops, pairs are kept untested, which is safe
   */
  CellGraph(List<ThickArc> cells, double gap, Control control) {
    this(cells, gap, control, null, null);
  }

  private CellGraph(
      List<ThickArc> cells, double gap, Control control, CellGraph parents, int[] parentOf) {
    this.cells = cells;
    this.gap = gap;
    this.control = control;
    int words = (cells.size() + 63) / 64;
    beside = new long[cells.size()][words];
    for (int a = 0; a < cells.size(); a++) {
      boolean stopped = control.stopped();
      for (int b = a; b < cells.size(); b++) {
        if (parents == null || parents.has(parentOf[a], parentOf[b])) {
          tests++;
          if (stopped || !cells.get(a).clashesWith(cells.get(b), gap)) {
            set(a, b);
            set(b, a);
          }
        }
      }
    }
  }

  int size() {
    return cells.size();
  }

  List<ThickArc> cells() {
    return cells;
  }

  /** Pairs of cells tested to make this graph. */
  long tests() {
    return tests;
  }

  /** The graph of smaller cells; only pairs whose parents may stand side by side are tested. */
  CellGraph refined(List<ThickArc> children, int[] parentOf) {
    return new CellGraph(children, gap, control, this, parentOf);
  }

  private void set(int a, int b) {
    beside[a][b >> 6] |= 1L << (b & 63);
  }

  private void clear(int a, int b) {
    beside[a][b >> 6] &= ~(1L << (b & 63));
  }

  private boolean has(int a, int b) {
    return (beside[a][b >> 6] >> (b & 63) & 1) != 0;
  }

  /**
   * The cells that take part in a layout of {@code count} pieces as far as this graph knows, in
   * their order; nothing if no such layout exists. Pairs that have no {@code count} − 2 partners in
   * common are forgotten.
   *
   * @param mostSteps after so many steps cells are kept unseen, which is safe
   */
  List<Integer> partakers(int count, long mostSteps) {
    if (count > 2) {
      forgetLonelyPairs();
    }
    boolean[] partakes = new boolean[size()];
    long[] steps = {mostSteps};
    int[] members = new int[count];
    List<Integer> list = new ArrayList<>();
    for (int v = 0; v < size(); v++) {
      if (!partakes[v]) {
        members[0] = v;
        if (steps[0] <= 0 || control.stopped()) {
          partakes[v] = true;
        } else if (extend(members, 1, beside[v], steps)) {
          for (int member : members) {
            partakes[member] = true;
          }
        } else {
          remove(v);
        }
      }
      if (partakes[v]) {
        list.add(v);
      }
    }
    return list;
  }

  private void remove(int v) {
    for (int b = 0; b < size(); b++) {
      if (has(v, b)) {
        clear(b, v);
      }
    }
    Arrays.fill(beside[v], 0);
  }

  private void forgetLonelyPairs() {
    for (int a = 0; a < size() && !control.stopped(); a++) {
      for (int b = a; b < size(); b++) {
        if (has(a, b) && !haveCommon(a, b)) {
          clear(a, b);
          clear(b, a);
        }
      }
    }
  }

  private boolean haveCommon(int a, int b) {
    long[] first = beside[a];
    long[] second = beside[b];
    for (int w = 0; w < first.length; w++) {
      if ((first[w] & second[w]) != 0) {
        return true;
      }
    }
    return false;
  }

  /** Whether the first {@code known} members can be completed from the candidates. */
  private boolean extend(int[] members, int known, long[] candidates, long[] steps) {
    if (known == members.length) {
      return true;
    }
    boolean last = known + 1 == members.length;
    for (int w = 0; w < candidates.length; w++) {
      for (long bits = candidates[w]; bits != 0; bits &= bits - 1) {
        int next = (w << 6) + Long.numberOfTrailingZeros(bits);
        members[known] = next;
        if (last || steps[0]-- <= 0) {
          Arrays.fill(members, known, members.length, next);
          return true;
        }
        long[] left = candidates.clone();
        for (int k = 0; k < left.length; k++) {
          left[k] &= beside[next][k];
        }
        if (extend(members, known + 1, left, steps)) {
          return true;
        }
      }
    }
    return false;
  }
}
