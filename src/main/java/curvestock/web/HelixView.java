package curvestock.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.SupportRow;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.report.HelixJson;
import curvestock.report.HelixReport;
import curvestock.units.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * A whole helix as the page shows it: verdicts in words, and every piece of roadbed as cross
 * sections along the line (left and right edge in plan, height of the underside), in millimetres.
 */
final class HelixView {

  /** A cross section at least every so many degrees of a turn. */
  private static final double STEP_DEGREES = 3;

  private static final double LONGEST_STEP = 60;

  private final HelixReport report;
  private final HelixPlan plan;
  private final double foot;

  private HelixView(HelixReport report) {
    this.report = report;
    this.plan = report.plan();
    this.foot = plan.spec().supports().footHeight().millimetres();
  }

  static ObjectNode of(HelixReport report) {
    return new HelixView(report).root();
  }

  private ObjectNode root() {
    ObjectNode root = Json.object();
    root.put("works", report.works());
    root.put("headline", headline());
    facts(root.putArray("facts"));
    ArrayNode verdicts = root.putArray("verdicts");
    for (Verdict verdict : report.verdicts()) {
      verdicts
          .addObject()
          .put("rule", VerdictWords.title(verdict))
          .put("result", verdict.state().word())
          .put("finding", report.words().finding(verdict))
          .put("fix", report.words().fix(verdict));
    }
    HelixJson.assumed(root.putArray("assumed"), report);
    ArrayNode shopping = root.putArray("shopping");
    plan.shopping()
        .items()
        .forEach(
            item -> {
              ObjectNode node = shopping.addObject();
              node.put("item", item.name());
              node.put("quantity", item.quantity() + " " + item.unit());
              item.price()
                  .ifPresent(price -> node.put("price", price.format(report.job().currency())));
              node.put("note", item.note());
            });
    root.put("run", decimal(plan.climb().runPerTurn().millimetres()));
    root.put("plywood", decimal(plan.spec().plywood().millimetres()));
    root.put("rail", decimal(plan.spec().railAboveUnderside().millimetres()));
    ArrayNode pieces = root.putArray("pieces");
    plan.schedule().rows().forEach(row -> piece(pieces.addObject(), row));
    ArrayNode supports = root.putArray("supports");
    plan.supports().rows().forEach(row -> support(supports.addObject(), row));
    return root;
  }

  private String headline() {
    long all = report.verdicts().size();
    long marginal = count(State.MARGINAL);
    long fail = count(State.FAIL);
    if (fail > 0) {
      return "Does not work: "
          + fail
          + " of "
          + all
          + (fail == 1 ? " checks fails" : " checks fail");
    }
    return marginal == 0
        ? "Works: all " + all + " checks pass"
        : "Works: " + (all - marginal) + " of " + all + " checks pass, " + marginal + " marginal";
  }

  private long count(State state) {
    return report.verdicts().stream().filter(verdict -> verdict.state() == state).count();
  }

  private void facts(ArrayNode facts) {
    Length rise = Length.ofMillimetres(plan.climb().grade().ratio() * runPerTurn());
    fact(facts, "Grade", percent(plan.climb().grade()));
    fact(facts, "Turns", decimal(plan.climb().turns(), 3).toPlainString());
    fact(facts, "Climb", format(Length.ofMillimetres(plan.profile().climb())));
    fact(facts, "Rise in a turn", format(rise));
    fact(facts, "Free height", format(plan.budgets().get(0).free()));
    Length across = plan.spec().ground().outerEdge().times(2);
    fact(facts, "Across", format(across));
    fact(facts, "Opening inside", format(plan.spec().ground().innerEdge().times(2)));
    fact(
        facts,
        "Track to lay",
        format(plan.trackLengths().stream().reduce(Length.ZERO, Length::plus)));
  }

  private double runPerTurn() {
    return plan.climb().runPerTurn().millimetres();
  }

  private static void fact(ArrayNode facts, String name, String value) {
    facts.addObject().put("name", name).put("value", value);
  }

  private void piece(ObjectNode node, ScheduleRow row) {
    BedPiece piece = row.piece();
    node.put("number", piece.number());
    node.put("kind", piece.kindId());
    node.put("layer", piece.layer());
    node.put("turn", row.turn());
    node.put("from", row.bearingFrom().toString());
    node.put("to", row.bearingTo().toString());
    node.put("low", format(row.undersideFrom()));
    node.put("high", format(row.undersideTo()));
    piece.lower().ifPresent(joint -> node.put("lowerJoint", joint.name()));
    piece.upper().ifPresent(joint -> node.put("upperJoint", joint.name()));
    node.put("begins", decimal(piece.from()));
    node.put("ends", decimal(piece.to()));
    double step = Math.min(LONGEST_STEP, runPerTurn() * STEP_DEGREES / 360);
    double length = piece.cutTo() - piece.cutFrom();
    int parts = Math.max(1, (int) Math.ceil(length / step));
    ArrayNode sections = node.putArray("sections");
    for (int i = 0; i <= parts; i++) {
      section(sections.addArray(), piece.cutFrom() + length * i / parts, piece.layer());
    }
  }

  /** Distance along the line; left edge x, y; right edge x, y; height of the underside. */
  private void section(ArrayNode section, double at, int layer) {
    Waypoint here = plan.line().at(at);
    double half = plan.spec().ground().width().millimetres() / 2;
    Point left = here.toLeft(half);
    Point right = here.toLeft(-half);
    double layers = plan.joints().layers();
    double above = plan.spec().plywood().millimetres() * (layer - 1) / layers;
    section.add(decimal(at)).add(decimal(left.x())).add(decimal(left.y()));
    section.add(decimal(right.x())).add(decimal(right.y()));
    section.add(decimal(foot + plan.profile().heightAt(at) + above));
  }

  private void support(ObjectNode node, SupportRow row) {
    Riser riser = plan.spec().supports().riser();
    double wide =
        riser instanceof Riser.WoodBlocks blocks
            ? blocks.along().millimetres()
            : ((Riser.ThreadedRods) riser).thread().diameter().millimetres();
    double top = row.underside().millimetres();
    Point at = plan.line().at(row.at()).point();
    node.put("station", row.station().name());
    node.put("at", decimal(row.at()));
    node.put("x", decimal(at.x())).put("y", decimal(at.y()));
    node.put("top", decimal(top));
    node.put("bottom", decimal(top - row.gap().millimetres()));
    node.put("wide", decimal(wide));
  }

  private String format(Length length) {
    return report.job().style().format(length);
  }

  private static String percent(Grade grade) {
    return String.format(Locale.ROOT, "%.2f %%", grade.percent());
  }

  private static BigDecimal decimal(double value) {
    return decimal(value, 2);
  }

  private static BigDecimal decimal(double value, int places) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded;
  }
}
