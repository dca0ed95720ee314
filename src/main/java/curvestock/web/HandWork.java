package curvestock.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.LaidByHand;
import curvestock.geometry.Pose;
import curvestock.job.Job;
import curvestock.layout.LaidSheet;
import curvestock.layout.LaidSheet.LaidPiece;
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
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Layouts that a person laid by hand: read from a request, and judged. */
final class HandWork {

  private static final int MOST_SHEETS = 200;
  private static final int MOST_PIECES = 1000;

  private HandWork() {}

  /** The sheets under {@code sheets}, all of the job, with pieces of the job. */
  static List<LaidSheet> sheets(JsonNode request, Job job) {
    List<LaidSheet> sheets = new ArrayList<>();
    for (JsonNode sheet : Json.needList(request, "sheets", MOST_SHEETS)) {
      Layout layout = layout(sheet, job);
      List<LaidPiece> pieces = new ArrayList<>();
      for (int i = 0; i < layout.placements().size(); i++) {
        JsonNode given = sheet.path("placements").path(i);
        pieces.add(
            new LaidPiece(
                layout.placements().get(i),
                given.path("label").asText(),
                given.path("pinned").asBoolean()));
      }
      sheets.add(new LaidSheet(layout.sheet(), pieces));
    }
    return sheets;
  }

  /** The same with the pieces parted that are pinned. */
  static List<LaidByHand> parted(List<LaidSheet> sheets) {
    return sheets.stream()
        .map(sheet -> new LaidByHand(sheet.sheet(), placed(sheet, true), placed(sheet, false)))
        .toList();
  }

  private static List<Placement> placed(LaidSheet sheet, boolean pinned) {
    return sheet.pieces().stream()
        .filter(piece -> piece.pinned() == pinned)
        .map(LaidPiece::placement)
        .toList();
  }

  /** Sheets laid by hand as the page has them. */
  static ObjectNode json(List<LaidSheet> sheets) {
    ObjectNode root = Json.object();
    ArrayNode list = root.putArray("sheets");
    for (LaidSheet sheet : sheets) {
      ObjectNode node = list.addObject().put("stock", sheet.sheet().name());
      ArrayNode placements = node.putArray("placements");
      int count = 0;
      for (LaidPiece piece : sheet.pieces()) {
        Pose pose = piece.placement().pose();
        count++;
        placements
            .addObject()
            .put("piece", piece.placement().piece().id())
            .put("label", piece.number().isEmpty() ? Integer.toString(count) : piece.number())
            .put("x", pose.x())
            .put("y", pose.y())
            .put("rotation", pose.rotation())
            .put("pinned", piece.pinned());
      }
    }
    return root;
  }

  /** Sheets laid by hand, as the page has them, as they stand in a job file. */
  static List<Map<String, Object>> inJob(JsonNode hand) {
    List<Map<String, Object>> sheets = new ArrayList<>();
    for (JsonNode sheet : Json.needList(hand, "sheets", MOST_SHEETS)) {
      List<Map<String, Object>> pieces = new ArrayList<>();
      for (JsonNode placement : Json.needList(sheet, "placements", MOST_PIECES)) {
        Map<String, Object> piece = new LinkedHashMap<>();
        piece.put("piece", Json.needText(placement, "piece", 40));
        piece.put("number", placement.path("label").asText());
        piece.put("at", List.of(millimetres(placement, "x"), millimetres(placement, "y")));
        double turn = Math.toDegrees(Json.needNumber(placement, "rotation"));
        piece.put("turn", plain(Math.IEEEremainder(turn, 360)));
        if (placement.path("pinned").asBoolean()) {
          piece.put("pinned", "true");
        }
        pieces.add(piece);
      }
      Map<String, Object> laid = new LinkedHashMap<>();
      laid.put("sheet", Json.needText(sheet, "stock", 100));
      laid.put("pieces", pieces);
      sheets.add(laid);
    }
    return sheets;
  }

  private static String millimetres(JsonNode placement, String field) {
    return plain(Json.needNumber(placement, field)) + " mm";
  }

  /** To a billionth, which moves nothing that is checked. */
  private static String plain(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(9, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  static Layout layout(JsonNode sheet, Job job) {
    String name = Json.needText(sheet, "stock", 100);
    SheetStock stock =
        sheetsAndPanels(job)
            .filter(each -> each.name().equals(name))
            .findFirst()
            .orElseThrow(() -> new BadRequestResponse("the job has no sheet " + name));
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
        .orElseThrow(() -> new BadRequestResponse("the job has no piece " + id));
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
