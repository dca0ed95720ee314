package curvestock.answer;

import curvestock.geometry.Box;
import curvestock.handwork.CuttingOrder;
import curvestock.handwork.CuttingOrder.Board;
import curvestock.handwork.CuttingOrder.Rip;
import curvestock.layout.Layout;
import curvestock.plan.Plan;
import curvestock.plan.Remnant;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * In which order one sheet is cut by hand: the one list that every paper prints.
 *
 * @param kept the offcut that remnants.yaml promises, in the sheet's frame
 * @param labels what is written on each piece, in the layout's order
 */
public record HandCuts(CuttingOrder order, Optional<Box> kept, List<String> labels) {

  public HandCuts {
    labels = List.copyOf(labels);
  }

  /** For each sheet or panel of the plan. */
  public static List<HandCuts> of(Plan plan) {
    List<HandCuts> all = new ArrayList<>();
    for (int i = 0; i < plan.layouts().size(); i++) {
      Layout layout = plan.layouts().get(i);
      Optional<Box> kept = Remnant.of(layout).map(Remnant::where);
      all.add(new HandCuts(CuttingOrder.of(layout, kept), kept, plan.labels().get(i)));
    }
    return List.copyOf(all);
  }

  /** A sentence for each straight cut, by the number that the sheet's map shows. */
  public List<String> cuts(Figures figures) {
    List<String> sentences = new ArrayList<>();
    for (Rip rip : order.rips()) {
      sentences.add("Cut " + (sentences.size() + 1) + ". " + cut(rip, figures));
    }
    if (sentences.isEmpty()) {
      sentences.add("No straight cut passes between the pieces: keep the sheet in one.");
    }
    return sentences;
  }

  private String cut(Rip rip, Figures figures) {
    return "Straight "
        + (rip.upright() ? "up the sheet at x = " : "along the sheet at y = ")
        + length(rip.at(), figures)
        + " (middle of the kerf), from "
        + (rip.upright() ? "y = " : "x = ")
        + length(rip.from(), figures)
        + " to "
        + length(rip.to(), figures)
        + ". "
        + effect(rip, figures);
  }

  private String effect(Rip rip, Figures figures) {
    if (rip.freesKept()) {
      Box box = kept.orElseThrow();
      return "This frees the offcut of "
          + figures.offcut(box.width(), box.height())
          + " listed in remnants.yaml: keep it.";
    }
    return rip.after().isEmpty()
        ? "This frees an offcut: keep it."
        : "Parts pieces " + names(rip.before()) + " from " + names(rip.after()) + ".";
  }

  /** A sentence for each board that the straight cuts leave; equal boards of one piece share it. */
  public List<String> boards(Figures figures) {
    Map<String, List<Integer>> single = new LinkedHashMap<>();
    List<String> several = new ArrayList<>();
    for (Board board : order.boards()) {
      String sides =
          length(board.box().width(), figures) + " × " + length(board.box().height(), figures);
      if (board.pieces().size() == 1) {
        single.computeIfAbsent(sides, fresh -> new ArrayList<>()).addAll(board.pieces());
      } else {
        several.add(
            "Board of "
                + sides
                + ": cut its pieces in the order "
                + names(board.pieces())
                + ", so that what is left stays one board to clamp.");
      }
    }
    single.forEach((sides, pieces) -> several.add(cutOut(sides, pieces)));
    return List.copyOf(several);
  }

  private String cutOut(String sides, List<Integer> pieces) {
    return pieces.size() == 1
        ? "Board of " + sides + ": cut out " + names(pieces) + "."
        : "Boards of " + sides + ": cut out " + names(pieces) + ", one from each.";
  }

  private String names(List<Integer> pieces) {
    return pieces.stream().map(labels::get).collect(Collectors.joining(", "));
  }

  private static String length(double millimetres, Figures figures) {
    return figures.marked(Length.ofMillimetres(millimetres));
  }
}
