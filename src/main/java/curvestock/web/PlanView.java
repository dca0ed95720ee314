package curvestock.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Answer;
import curvestock.answer.Figures;
import curvestock.drawing.PieceFigure;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.plan.Plan;
import curvestock.report.AnswerJson;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Share;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A plan as the page draws it: figures of the pieces, poses on the sheets, and plain words. */
final class PlanView {

  private final Job job;
  private final ObjectNode root = Json.object();

  private PlanView(Job job) {
    this.job = job;
  }

  /**
   * The plan as JSON.
   *
   * @param stage how it was found: the word of its effort, or "hand"
   * @param gained what it gained over the one before, in plain words; may be empty
   */
  static ObjectNode of(Plan plan, String stage, String gained) {
    PlanView view = new PlanView(plan.job());
    view.root.put("stage", stage);
    view.root.put("gained", gained);
    view.root.set("answer", AnswerJson.buying(Answer.of(plan)));
    List<List<String>> labels = plan.labels();
    view.kinds(plan.layouts(), labels);
    ArrayNode sheets = view.root.putArray("sheets");
    for (int i = 0; i < plan.layouts().size(); i++) {
      view.sheet(sheets.addObject(), plan.layouts().get(i), labels.get(i));
    }
    return view.root;
  }

  private void kinds(List<Layout> layouts, List<List<String>> labels) {
    Map<Piece, List<String>> written = new LinkedHashMap<>();
    for (int i = 0; i < layouts.size(); i++) {
      List<Placement> placements = layouts.get(i).placements();
      for (int k = 0; k < placements.size(); k++) {
        written
            .computeIfAbsent(placements.get(k).piece(), piece -> new ArrayList<>())
            .add(labels.get(i).get(k));
      }
    }
    ObjectNode kinds = root.putObject("kinds");
    written.forEach(
        (piece, numbers) -> {
          String widest =
              numbers.stream().max(Comparator.comparingInt(String::length)).orElseThrow();
          kind(kinds.putObject(piece.id()), piece, PieceFigure.of(piece, widest));
        });
    for (Demand demand : job.demands()) {
      if (kinds.get(demand.piece().id()) instanceof ObjectNode kind) {
        kind.put("wanted", demand.count());
      }
    }
  }

  private static void kind(ObjectNode node, Piece piece, PieceFigure figure) {
    node.put("name", piece.name());
    node.put("outline", figure.outline());
    ArrayNode marks = node.putArray("marks");
    figure.marks().forEach(marks::add);
    Point label = figure.label();
    node.put("labelX", label.x()).put("labelY", label.y());
    node.put("letters", figure.letters());
    node.put("level", figure.level());
  }

  private void sheet(ObjectNode node, Layout layout, List<String> labels) {
    SheetStock stock = layout.sheet();
    double top = stock.outline().box().maxY();
    node.put("stock", stock.name());
    node.put("left", stock.outline().box().minX());
    node.put("width", stock.length().millimetres());
    node.put("height", stock.width().millimetres());
    node.put("top", top);
    node.put("size", length(stock.length()) + " x " + length(stock.width()));
    node.put("grain", stock.grain().degrees());
    node.put("yield", Figures.PLAIN.percent(new Share(layout.areaYield())));
    node.put("edge", PieceFigure.onSheet(stock.outline(), top));
    ArrayNode defects = node.putArray("defects");
    for (Outline defect : stock.defects()) {
      defects.add(PieceFigure.onSheet(defect, top));
    }
    ArrayNode placements = node.putArray("placements");
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      placements
          .addObject()
          .put("piece", placement.piece().id())
          .put("label", labels.get(i))
          .put("x", placement.pose().x())
          .put("y", placement.pose().y())
          .put("rotation", placement.pose().rotation());
    }
  }

  private String length(Length length) {
    return job.style().format(length);
  }
}
