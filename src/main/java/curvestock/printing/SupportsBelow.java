package curvestock.printing;

import curvestock.drawing.Ink;
import curvestock.drawing.Paper;
import curvestock.drawing.Paper.Anchor;
import curvestock.drawing.Paper.Pen;
import curvestock.drawing.PlanFigure;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.BedPiece.StationPlace;
import curvestock.helix.build.SupportRow.Edges;
import curvestock.helix.spec.Riser;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The supports under the pieces of one kind, on their template: only such as will stand there. */
final class SupportsBelow {

  private static final Pen SUPPORT = new Pen(Ink.SHEET, 0.25, "1.5 1.5");

  /** Stations of two pieces closer than this are the same. */
  private static final double ALIKE = 0.01;

  private static final double LETTERS = 3.2;

  /** More stations than these are not named beside one support. */
  private static final int MOST_NAMES = 5;

  private final HelixPlan plan;
  private final List<BedPiece> pieces;
  private final BedPiece piece;
  private final PlanFigure figure;
  private final Pose view;
  private final double half;
  private final Paper paper;
  private final List<String> notes;
  private final Map<String, Map<String, Set<String>>> missing = new LinkedHashMap<>();
  private final Map<String, Set<String>> middles = new LinkedHashMap<>();

  /**
   * For a template.
   *
   * @param pieces all of its kind; the first is the one that is drawn
   * @param view turns the plan as the template lies
   * @param notes takes what a person must know of them
   */
  SupportsBelow(HelixPlan plan, List<BedPiece> pieces, Pose view, Paper paper, List<String> notes) {
    this.plan = plan;
    this.pieces = pieces;
    this.piece = pieces.get(0);
    this.view = view;
    this.paper = paper;
    this.notes = notes;
    figure = new PlanFigure(plan, 1, Point.ORIGIN);
    half = plan.spec().ground().width().millimetres() / 2;
  }

  /** Draws where blocks stand and names the stations, if they stand alike under every piece. */
  void draw() {
    List<Double> places = places(piece);
    boolean alike = pieces.stream().allMatch(other -> alike(places, places(other)));
    if (!alike) {
      notes.add(
          "Supports stand in different places under each of these pieces: see the footprint, or the"
              + " sheet layouts, which show them for every piece.");
      return;
    }
    if (plan.spec().supports().riser() instanceof Riser.WoodBlocks blocks) {
      for (int i = 0; i < places.size(); i++) {
        blocks(i, piece.cutFrom() + places.get(i), blocks);
      }
      missing.forEach(
          (edge, stations) ->
              notes.add(
                  "No block stands at the %s edge at %s: skip it there."
                      .formatted(edge, named(stations))));
      if (!middles.isEmpty()) {
        notes.add("A block under the middle stands only at %s.".formatted(named(middles)));
      }
    }
    for (int i = 0; i < places.size(); i++) {
      int index = i;
      List<String> names =
          pieces.stream()
              .map(each -> each.stations().get(index).station().name())
              .distinct()
              .toList();
      if (names.size() <= MOST_NAMES) {
        double lap = BedTemplate.lapLength(plan);
        double past = lap > 0 ? lap + 16 : 0;
        double at =
            Math.max(
                piece.cutFrom() + (piece.lower().isPresent() ? past : 0),
                Math.min(
                    piece.cutTo() - (piece.upper().isPresent() ? past : 0),
                    piece.cutFrom() + places.get(i)));
        Point stand = beside(at, -half * 0.42);
        paper.text(String.join(" ", names), stand, LETTERS, Anchor.MIDDLE, false);
      }
    }
  }

  private static List<Double> places(BedPiece piece) {
    return piece.stations().stream().map(StationPlace::at).map(at -> at - piece.cutFrom()).toList();
  }

  private static boolean alike(List<Double> a, List<Double> b) {
    if (a.size() != b.size()) {
      return false;
    }
    for (int i = 0; i < a.size(); i++) {
      if (Math.abs(a.get(i) - b.get(i)) > ALIKE) {
        return false;
      }
    }
    return true;
  }

  /** Those of one place, each drawn if it stands under any piece of the kind. */
  private void blocks(int index, double at, Riser.WoodBlocks blocks) {
    double out = half - blocks.width().millimetres() / 2;
    held(index, at, out, Edges::atOuter, "outer", blocks);
    held(index, at, -out, Edges::atInner, "inner", blocks);
    List<BedPiece> single =
        pieces.stream().filter(each -> edges(each, index) == Edges.MIDDLE).toList();
    if (!single.isEmpty()) {
      block(at, 0, blocks);
    }
    if (single.size() < pieces.size()) {
      note(middles, single, index);
    }
  }

  private static void note(Map<String, Set<String>> at, List<BedPiece> those, int index) {
    for (BedPiece each : those) {
      at.computeIfAbsent(each.stations().get(index).station().name(), any -> new LinkedHashSet<>())
          .add(each.number());
    }
  }

  /** Stations with the pieces that rest there: the name says at which end of a piece. */
  private static String named(Map<String, Set<String>> stations) {
    return stations.entrySet().stream()
        .map(
            each ->
                "%s (%s %s)"
                    .formatted(
                        each.getKey(),
                        each.getValue().size() == 1 ? "piece" : "pieces",
                        String.join(", ", each.getValue())))
        .collect(Collectors.joining(", "));
  }

  private void held(
      int index,
      double at,
      double outwards,
      Predicate<Edges> stands,
      String edge,
      Riser.WoodBlocks blocks) {
    List<BedPiece> without =
        pieces.stream().filter(each -> !stands.test(edges(each, index))).toList();
    if (without.size() == pieces.size()) {
      return;
    }
    block(at, outwards, blocks);
    if (!without.isEmpty()) {
      String names = names(without, each -> each.stations().get(index).station().name());
      paper.text("not at " + names, beside(at, outwards * 0.72), LETTERS, Anchor.MIDDLE, false);
      note(missing.computeIfAbsent(edge, any -> new LinkedHashMap<>()), without, index);
    }
  }

  private static String names(List<BedPiece> pieces, Function<BedPiece, String> name) {
    return pieces.stream().map(name).distinct().collect(Collectors.joining(", "));
  }

  private Edges edges(BedPiece each, int index) {
    return plan.supports().edgesAt(each.stations().get(index));
  }

  private void block(double at, double outwards, Riser.WoodBlocks blocks) {
    List<Point> corners = figure.block(at, outwards, blocks);
    paper.polygon(corners.stream().map(view::apply).toList(), "none", SUPPORT);
  }

  private Point beside(double at, double outwards) {
    return view.apply(figure.beside(at, outwards));
  }
}
