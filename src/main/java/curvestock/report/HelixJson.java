package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.Hole;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * A whole helix as data, {@code helix.json}: lengths in millimetres, heights above the base,
 * bearings in degrees counter-clockwise, money in minor units. In plan the origin is the middle of
 * the ring (of an oval's first half turn), +x at bearing 0°.
 */
public final class HelixJson {

  /** Raised when a field changes its meaning or goes away. */
  public static final int FORMAT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final HelixReport report;
  private final HelixPlan plan;

  private HelixJson(HelixReport report) {
    this.report = report;
    this.plan = report.plan();
  }

  public static String of(HelixReport report) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(printer).writeValueAsString(new HelixJson(report).root()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  private ObjectNode root() {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("curvestockHelix", FORMAT);
    root.put("title", report.job().title());
    root.put("invented", report.job().invented());
    root.put("units", "mm, degrees counter-clockwise, money in minor units");
    root.put("works", report.works());
    climb(root.putObject("climb"));
    ArrayNode verdicts = root.putArray("verdicts");
    report.verdicts().forEach(verdict -> verdict(verdicts.addObject(), verdict));
    ArrayNode budgets = root.putArray("heightBudgets");
    plan.budgets().forEach(budget -> budget(budgets.addObject(), budget));
    ArrayNode joints = root.putArray("joints");
    plan.joints().all().forEach(joint -> joint(joints.addObject(), joint));
    ArrayNode kinds = root.putArray("kinds");
    plan.roadbed().kinds().forEach(kind -> kind(kinds.addObject(), kind));
    ArrayNode schedule = root.putArray("schedule");
    plan.schedule().rows().forEach(row -> row(schedule.addObject(), row));
    ArrayNode supports = root.putArray("supports");
    plan.supports().rows().forEach(row -> support(supports.addObject(), row));
    ArrayNode shopping = root.putArray("shopping");
    plan.shopping().items().forEach(item -> item(shopping.addObject(), item));
    assumed(root.putArray("assumed"), report);
    return root;
  }

  /** Adds what the job left open and what was taken for it. */
  public static void assumed(ArrayNode assumed, HelixReport report) {
    report
        .order()
        .assumed()
        .forEach(
            each ->
                assumed
                    .addObject()
                    .put("field", each.field())
                    .put("value", each.value())
                    .put("reason", each.reason()));
  }

  private void climb(ObjectNode node) {
    node.put("scale", plan.spec().scale().name());
    node.put("turns", decimal(plan.climb().turns()));
    node.put("climb", mm(plan.climb().climb()));
    node.put("risePerTurn", mm(plan.climb().risePerTurn()));
    node.put("runPerTurn", mm(plan.climb().runPerTurn()));
    node.put("innerEdge", mm(plan.spec().ground().innerEdge()));
    node.put("outerEdge", mm(plan.spec().ground().outerEdge()));
    ArrayNode tracks = node.putArray("tracks");
    for (int i = 0; i < plan.trackGrades().size(); i++) {
      tracks
          .addObject()
          .put("radius", mm(plan.spec().ground().trackRadii().get(i)))
          .put("gradePercent", decimal(plan.trackGrades().get(i).percent()))
          .put("withCurveDragPercent", decimal(plan.equivalentGrades().get(i).percent()))
          .put("length", mm(plan.trackLengths().get(i)));
    }
  }

  private void verdict(ObjectNode node, Verdict verdict) {
    node.put("rule", VerdictWords.title(verdict));
    node.put("result", verdict.state().word());
    node.put("finding", report.words().finding(verdict));
    node.put("fix", report.words().fix(verdict));
  }

  private static void budget(ObjectNode node, HeightBudget budget) {
    node.put("rise", mm(budget.risePerTurn()));
    ObjectNode items = node.putObject("takes");
    budget.items().forEach(item -> items.put(item.name(), mm(item.height())));
    node.put("free", mm(budget.free()));
  }

  private void joint(ObjectNode node, Joint joint) {
    node.put("name", joint.name());
    node.put("layer", joint.layer());
    node.put("turn", plan.line().turnAt(joint.at()));
    node.put("bearing", decimal(plan.line().bearing(joint.at()).degrees()));
    node.put("alongLine", decimal(joint.at()));
  }

  private void kind(ObjectNode node, PieceKind kind) {
    node.put("id", kind.id());
    node.put("name", kind.name());
    node.put("count", kind.count());
    ArrayNode numbers = node.putArray("numbers");
    plan.roadbed().numbersOf(kind).forEach(numbers::add);
    ArrayNode holes = node.putArray("holes");
    for (Hole hole : kind.holes()) {
      Point centre = hole.centre();
      holes
          .addObject()
          .put("x", decimal(centre.x()))
          .put("y", decimal(centre.y()))
          .put("diameter", mm(hole.diameter()));
    }
  }

  private static void row(ObjectNode node, ScheduleRow row) {
    BedPiece piece = row.piece();
    node.put("piece", piece.number());
    node.put("kind", piece.kindId());
    node.put("layer", piece.layer());
    node.put("turn", row.turn());
    node.put("bearingFrom", decimal(row.bearingFrom().degrees()));
    node.put("bearingTo", decimal(row.bearingTo().degrees()));
    node.put("undersideFrom", mm(row.undersideFrom()));
    node.put("undersideTo", mm(row.undersideTo()));
    node.put("railFrom", mm(row.railFrom()));
    node.put("railTo", mm(row.railTo()));
    piece.lower().ifPresent(joint -> node.put("lowerJoint", joint.name()));
    piece.upper().ifPresent(joint -> node.put("upperJoint", joint.name()));
    ArrayNode stations = node.putArray("stations");
    piece.stations().forEach(place -> stations.add(place.station().name()));
  }

  private static void support(ObjectNode node, SupportRow row) {
    node.put("station", row.station().name());
    node.put("part", row.part().name().toLowerCase(Locale.ROOT));
    node.put("turn", row.turn());
    node.put("bearing", decimal(row.bearing().degrees()));
    node.put("supports", row.edges().supports());
    node.put("underside", mm(row.underside()));
    node.put("railTop", mm(row.railTop()));
    node.put("gap", mm(row.gap()));
    node.put("slopePercent", decimal(row.slope() * 100));
  }

  private static void item(ObjectNode node, ShoppingItem item) {
    node.put("item", item.name());
    node.put("quantity", item.quantity());
    node.put("unit", item.unit());
    item.price().ifPresent(price -> node.put("price", price.minorUnits()));
    node.put("note", item.note());
  }

  private static BigDecimal mm(Length length) {
    return decimal(length.millimetres());
  }

  /** Four decimals: a ten-thousandth of a millimetre or degree. */
  private static BigDecimal decimal(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.setScale(Math.max(0, rounded.scale()));
  }
}
