package curvestock.web;

import curvestock.layout.LaidSheet;
import curvestock.layout.LaidSheet.LaidPiece;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The numbers on pieces that were moved: a piece that lies where one lay before keeps that one's
 * number; the others share the numbers that are left of their kind, in their order.
 */
final class Renumbering {

  private Renumbering() {}

  /** The numbers for the layouts, in the order of their placements. */
  static List<List<String>> of(List<LaidSheet> before, List<Layout> layouts) {
    Map<Placement, Deque<String>> there = new HashMap<>();
    Map<String, List<String>> left = new HashMap<>();
    for (LaidSheet sheet : before) {
      for (LaidPiece piece : sheet.pieces()) {
        there.computeIfAbsent(piece.placement(), place -> new ArrayDeque<>()).add(piece.number());
        left.computeIfAbsent(piece.placement().piece().id(), id -> new ArrayList<>())
            .add(piece.number());
      }
    }
    List<List<String>> numbers = new ArrayList<>();
    for (Layout layout : layouts) {
      List<String> kept = new ArrayList<>();
      for (Placement placement : layout.placements()) {
        Deque<String> same = there.getOrDefault(placement, new ArrayDeque<>());
        String number = same.isEmpty() ? "" : same.poll();
        left.getOrDefault(placement.piece().id(), List.of()).remove(number);
        kept.add(number);
      }
      numbers.add(kept);
    }
    for (int i = 0; i < layouts.size(); i++) {
      for (int k = 0; k < numbers.get(i).size(); k++) {
        if (numbers.get(i).get(k).isEmpty()) {
          List<String> rest =
              left.getOrDefault(layouts.get(i).placements().get(k).piece().id(), List.of());
          numbers.get(i).set(k, rest.isEmpty() ? "" : rest.remove(0));
        }
      }
    }
    return numbers;
  }
}
