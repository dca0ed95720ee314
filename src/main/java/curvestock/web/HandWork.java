package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.LaidByHand;
import curvestock.geometry.Pose;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGap;
import curvestock.layout.TrueGaps;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.purchase.Panel;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import io.javalin.http.BadRequestResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Layouts that a person laid by hand: read from a request, and judged. */
final class HandWork {

  private static final int MOST_SHEETS = 200;
  private static final int MOST_PIECES = 1000;

  private HandWork() {}

  /** The layouts under {@code sheets}, all on sheets and of pieces of the job. */
  static List<Layout> layouts(JsonNode request, Job job) {
    List<Layout> layouts = new ArrayList<>();
    for (JsonNode sheet : Json.needList(request, "sheets", MOST_SHEETS)) {
      layouts.add(layout(sheet, job));
    }
    return layouts;
  }

  /** The same with the pieces parted that are pinned. */
  static List<LaidByHand> withPins(JsonNode request, Job job) {
    List<LaidByHand> laid = new ArrayList<>();
    for (JsonNode sheet : Json.needList(request, "sheets", MOST_SHEETS)) {
      Layout layout = layout(sheet, job);
      List<Placement> pinned = new ArrayList<>();
      List<Placement> free = new ArrayList<>();
      for (int i = 0; i < layout.placements().size(); i++) {
        boolean isPinned = sheet.path("placements").path(i).path("pinned").asBoolean();
        (isPinned ? pinned : free).add(layout.placements().get(i));
      }
      laid.add(new LaidByHand(layout.sheet(), pinned, free));
    }
    return laid;
  }

  static Layout layout(JsonNode sheet, Job job) {
    String name = Json.needText(sheet, "stock", 100);
    SheetStock stock =
        sheetsAndPanels(job)
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new BadRequestResponse("the job has no sheet called " + name));
    List<Placement> placements = new ArrayList<>();
    for (JsonNode placement : Json.needList(sheet, "placements", MOST_PIECES)) {
      Pose pose =
          new Pose(
              Json.needNumber(placement, "x"),
              Json.needNumber(placement, "y"),
              Json.needNumber(placement, "rotation"));
      placements.add(new Placement(piece(Json.needText(placement, "piece", 40), job), pose));
    }
    return new Layout(stock, job.cutting(), placements);
  }

  /**
   * What layouts of the job may lie on: its sheets, and the panels that they can be ripped into.
   */
  private static Stream<SheetStock> sheetsAndPanels(Job job) {
    Stream<SheetStock> panels =
        job.products().stream()
            .flatMap(product -> product.breakdowns().stream())
            .flatMap(breakdown -> breakdown.panels().stream())
            .map(Panel::stock);
    return Stream.concat(job.sheets().stream(), panels);
  }

  private static Piece piece(String id, Job job) {
    return job.demands().stream()
        .map(Demand::piece)
        .filter(piece -> piece.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new BadRequestResponse("the job has no piece called " + id));
  }

  /** The true gaps of a layout, one for each piece, in words and numbers. */
  static ObjectNode gaps(Layout layout, Job job) {
    ObjectNode root = Json.object();
    List<TrueGap> all = TrueGaps.tightest(layout);
    root.put("holds", all.stream().allMatch(TrueGap::holds));
    ArrayNode gaps = root.putArray("gaps");
    for (TrueGap each : all) {
      gaps.addObject()
          .put("holds", each.holds())
          .put("to", each.to().name().toLowerCase(java.util.Locale.ROOT))
          .put("number", each.number())
          .put("gap", each.gap())
          .put("least", each.least())
          .put("words", words(each, job));
    }
    return root;
  }

  private static String words(TrueGap tightest, Job job) {
    String to =
        switch (tightest.to()) {
          case PIECE -> "the next piece";
          case EDGE -> "the sheet's edge";
          case DEFECT -> "a knot or void";
          case GRAIN -> "the grain";
        };
    if (tightest.to() == TrueGap.Neighbour.GRAIN) {
      return "the grain does not allow it to lie this way";
    }
    if (tightest.gap() < -TrueGap.ROUNDING) {
      boolean far = tightest.gap() < -0.01;
      return tightest.to() == TrueGap.Neighbour.EDGE
          ? "reaches over the sheet's edge" + (far ? " by " + depth(tightest, job) : "")
          : "lies on " + to;
    }
    // Rounded to a printed fraction a gap could look enough that is not.
    String gap =
        job.style().formatGiven(Length.ofMillimetres(rounded(Math.max(0, tightest.gap()))));
    return gap
        + " to "
        + to
        + (tightest.holds() ? "" : ", but it takes ")
        + (tightest.holds() ? "" : job.style().formatGiven(Length.ofMillimetres(tightest.least())));
  }

  private static String depth(TrueGap tightest, Job job) {
    return job.style().format(Length.ofMillimetres(-tightest.gap()));
  }

  /** To a hundredth of a millimetre, downwards but for rounding. */
  private static double rounded(double millimetres) {
    return Math.floor(millimetres * 100 + 1e-3) / 100;
  }
}
