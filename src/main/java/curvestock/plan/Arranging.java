package curvestock.plan;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Arranges the sheets that are not full for the most useful remnants: the largest rectangle, then
 * the next. Pieces of the emptiest sheet go to others that have room, and what stays on a sheet is
 * moved together. As many sheets as before, with the same pieces in all.
 */
final class Arranging {

  /** A fuller sheet has no remnant to gain. */
  private static final double FULL = 0.6;

  /** So many sheets of a thickness, the emptiest first, are moved together. */
  private static final int MOST_SHEETS = 2;

  private final Job job;
  private final PlanListener listener;
  private final Packers packers;
  private final Map<Layout, Layout> compacted = new HashMap<>();

  Arranging(Job job, PlanListener listener, Packers packers) {
    this.job = job;
    this.listener = listener;
    this.packers = packers;
  }

  /** The layouts in their order; sheets that were emptied are left out. */
  List<Layout> arranged(List<Layout> layouts) {
    if (listener.stopped()) {
      return layouts;
    }
    List<Layout> together = together(layouts);
    List<Layout> moved = moved(layouts);
    if (moved.equals(layouts) || listener.stopped()) {
      return together;
    }
    List<Layout> other = together(moved);
    return BY_REMNANTS.compare(other, together) > 0 ? other : together;
  }

  /** The largest remnant decides, then the next largest, and so on; square millimetres. */
  private static final Comparator<List<Layout>> BY_REMNANTS =
      (some, others) -> {
        List<Double> a = remnants(some);
        List<Double> b = remnants(others);
        for (int i = 0; i < Math.min(a.size(), b.size()); i++) {
          if (Math.abs(a.get(i) - b.get(i)) > 1) {
            return Double.compare(a.get(i), b.get(i));
          }
        }
        return Integer.compare(a.size(), b.size());
      };

  private static List<Double> remnants(List<Layout> layouts) {
    return layouts.stream()
        .flatMap(layout -> Remnant.of(layout).stream())
        .map(Remnant::area)
        .sorted(Comparator.reverseOrder())
        .toList();
  }

  /** Of each thickness, the sheets with most room to spare, moved together. */
  private List<Layout> together(List<Layout> layouts) {
    List<Layout> result = new ArrayList<>(layouts);
    Map<Object, Integer> done = new HashMap<>();
    Compaction compaction = new Compaction(job, listener, packers);
    for (int i : emptiestFirst(layouts)) {
      Layout layout = layouts.get(i);
      int before = done.getOrDefault(layout.sheet().thickness(), 0);
      boolean roomy = before == 0 || layout.areaYield() < FULL;
      if (before < MOST_SHEETS && roomy && !listener.stopped()) {
        done.put(layout.sheet().thickness(), before + 1);
        listener.step("moving the pieces of sheet " + (i + 1) + " closer together");
        result.set(i, compacted.computeIfAbsent(layout, compaction::compacted));
      }
    }
    return result;
  }

  private static List<Integer> emptiestFirst(List<Layout> layouts) {
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < layouts.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingDouble(i -> -room(layouts.get(i))));
    return order;
  }

  private static double room(Layout layout) {
    return layout.sheet().area() - layout.pieceArea();
  }

  /** Pieces of the emptiest sheet put where others of its thickness have room, fullest first. */
  private List<Layout> moved(List<Layout> layouts) {
    List<Layout> result = new ArrayList<>(layouts);
    int from = emptiestFirst(layouts).get(0);
    List<Integer> others = emptiestFirst(layouts);
    for (int k = others.size() - 1; k > 0 && !listener.stopped(); k--) {
      int to = others.get(k);
      Layout source = result.get(from);
      if (source.placements().size() > 1 && suits(source, result.get(to))) {
        Layout target = result.get(to);
        Layout filled =
            packers
                .of(target.sheet(), target.cutting(), job.search())
                .fillUp(target, Demand.counted(source.pieces()), listener)
                .layout();
        List<Piece> gone = new ArrayList<>(filled.pieces());
        target.pieces().forEach(gone::remove);
        if (gone.size() < source.placements().size()) {
          result.set(to, filled);
          result.set(from, without(source, gone));
        }
      }
    }
    return result;
  }

  private static boolean suits(Layout source, Layout target) {
    return source.sheet().isAsThickAs(target.sheet().thickness());
  }

  private static Layout without(Layout layout, List<Piece> gone) {
    List<Piece> left = new ArrayList<>(gone);
    return new Layout(
        layout.sheet(),
        layout.cutting(),
        layout.placements().stream().filter(placement -> !left.remove(placement.piece())).toList());
  }
}
