package curvestock.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Answer;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.ScheduleRow;
import curvestock.helix.build.SupportRow;
import curvestock.helix.course.Waypoint;
import curvestock.helix.spec.Riser;
import curvestock.report.AnswerJson;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A whole helix as the page shows it: its part of the answer, and every piece of roadbed as cross
 * sections along the line (left and right edge in plan, height of the underside), in millimetres.
 */
final class HelixView {

  /** A cross section at least every so many degrees of a turn. */
  private static final double STEP_DEGREES = 3;

  private static final double LONGEST_STEP = 60;

  private final Answer answer;
  private final HelixPlan plan;
  private final double foot;

  private HelixView(Answer answer) {
    this.answer = answer;
    this.plan = answer.building().orElseThrow().plan();
    this.foot = plan.spec().supports().footHeight().millimetres();
  }

  static ObjectNode of(Answer answer) {
    return new HelixView(answer).root();
  }

  private ObjectNode root() {
    ObjectNode root = AnswerJson.building(answer);
    root.put("run", decimal(plan.climb().runPerTurn().millimetres()));
    root.put("plywood", decimal(plan.spec().plywood().millimetres()));
    root.put("rail", decimal(plan.spec().railAboveUnderside().millimetres()));
    ArrayNode pieces = root.putArray("pieces");
    plan.schedule().rows().forEach(row -> piece(pieces.addObject(), row));
    ArrayNode supports = root.putArray("supports");
    plan.supports().rows().forEach(row -> support(supports.addObject(), row));
    return root;
  }

  private double runPerTurn() {
    return plan.climb().runPerTurn().millimetres();
  }

  private void piece(ObjectNode node, ScheduleRow row) {
    BedPiece piece = row.piece();
    node.put("number", piece.number());
    node.put("kind", piece.kindId());
    node.put("layer", piece.layer());
    node.put("turn", row.turn());
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

  private static BigDecimal decimal(double value) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded;
  }
}
