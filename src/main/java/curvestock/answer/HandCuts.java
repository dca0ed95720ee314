package curvestock.answer;

import curvestock.drawing.ShortName;
import curvestock.geometry.Box;
import curvestock.handwork.CuttingOrder;
import curvestock.handwork.CuttingOrder.Board;
import curvestock.handwork.CuttingOrder.Rip;
import curvestock.handwork.MarkingOut;
import curvestock.handwork.PieceMarks;
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
 * @param marks how each piece is marked out
 * @param laps those of each kind of piece that has half-laps
 */
public record HandCuts(
    CuttingOrder order,
    Optional<Box> kept,
    List<String> labels,
    List<PieceMarks> marks,
    List<HalfLapWords.OfKind> laps) {

  public HandCuts {
    laps = List.copyOf(laps);
    marks = List.copyOf(marks);
    labels = List.copyOf(labels);
  }

  /** For each sheet or panel of the plan. */
  public static List<HandCuts> of(Plan plan) {
    List<HandCuts> all = new ArrayList<>();
    HalfLapWords laps = new HalfLapWords(plan);
    for (int i = 0; i < plan.layouts().size(); i++) {
      Layout layout = plan.layouts().get(i);
      Optional<Box> kept = Remnant.of(layout).map(Remnant::where);
      List<String> labels = plan.labels().get(i);
      all.add(
          new HandCuts(
              CuttingOrder.of(layout, kept),
              kept,
              labels,
              MarkingOut.of(layout, kept),
              laps.ofSheet(i + 1)));
    }
    return List.copyOf(all);
  }

  /** How maps of these sheets are read where names are too long for their pieces; with a space. */
  public static String shortNames(List<HandCuts> sheets) {
    return ShortName.legend(sheets.stream().flatMap(sheet -> sheet.labels.stream()).toList())
        .map(
            " %s The list under the sheet has the whole names, and sheets/ has larger pictures."
                ::formatted)
        .orElse("");
  }

  /** A sentence for each straight cut, by the number that the sheet's map shows. */
  public List<String> cuts(Figures figures) {
    List<String> sentences = new ArrayList<>();
    for (Rip rip : order.rips()) {
      sentences.add("Cut " + (sentences.size() + 1) + ". " + cut(rip, figures));
    }
    if (sentences.isEmpty()) {
      sentences.add("Any straight cut would run into a piece, so keep the sheet whole.");
    }
    return sentences;
  }

  private String cut(Rip rip, Figures figures) {
    return (rip.upright()
            ? "Saw straight up the sheet at x = %s (middle of the kerf), from y = %s to %s. %s"
            : "Saw straight along the sheet at y = %s (middle of the kerf), from x = %s to %s. %s")
        .formatted(
            length(rip.at(), figures),
            length(rip.from(), figures),
            length(rip.to(), figures),
            effect(rip, figures));
  }

  private String effect(Rip rip, Figures figures) {
    if (rip.freesKept()) {
      Box box = kept.orElseThrow();
      return "This frees the %s offcut listed in remnants.yaml: keep it."
          .formatted(figures.offcut(box.width(), box.height()));
    }
    return rip.after().isEmpty()
        ? "This frees scrap, good for test cuts."
        : "This separates pieces %s from %s.".formatted(names(rip.before()), names(rip.after()));
  }

  /** A sentence for each part that the straight cuts leave; equal parts of one piece share it. */
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
            "Cut the pieces%s in this order, which leaves wood to clamp to%s: %s."
                .formatted(
                    order.rips().isEmpty() ? "" : " from the %s part".formatted(sides),
                    loses(board) ? "" : " and keeps every trammel pivot until you have used it",
                    names(board.pieces())));
      }
    }
    single.forEach((sides, pieces) -> several.add(cutOut(sides, pieces)));
    return List.copyOf(several);
  }

  private boolean loses(Board board) {
    return order.lost().stream().anyMatch(lost -> board.pieces().contains(lost.piece()));
  }

  /**
   * Where a trammel must stop, and what to do for pieces whose pivot has lost its wood by then; a
   * sentence each.
   */
  public List<String> pivots(Figures figures) {
    List<String> sentences = new ArrayList<>();
    List<String> stops =
        marks.stream().filter(PieceMarks::hasStops).map(mark -> labels.get(mark.index())).toList();
    if (!stops.isEmpty()) {
      sentences.add(PivotWords.stops(stops));
    }
    sentences.addAll(PivotWords.lost(order.lost(), labels, figures));
    return List.copyOf(sentences);
  }

  private String cutOut(String sides, List<Integer> pieces) {
    if (pieces.size() > 1) {
      return "Cut pieces %s from the %s parts, one from each.".formatted(names(pieces), sides);
    }
    return order.rips().isEmpty()
        ? "Cut piece %s.".formatted(names(pieces))
        : "Cut piece %s from the %s part.".formatted(names(pieces), sides);
  }

  private String names(List<Integer> pieces) {
    return pieces.stream().map(labels::get).collect(Collectors.joining(", "));
  }

  private static String length(double millimetres, Figures figures) {
    return figures.marked(Length.ofMillimetres(millimetres));
  }
}
