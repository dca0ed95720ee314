package curvestock.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Answer;
import curvestock.answer.Buying;
import curvestock.answer.HandCuts;
import curvestock.check.CutForm;
import curvestock.geometry.Pose;
import curvestock.handwork.CuttingOrder;
import curvestock.job.JobSource;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.plan.BatchPlan;
import curvestock.plan.Plan;
import curvestock.sheet.SheetStock;
import java.util.List;

/**
 * The plan as data, {@code plan.json}: lengths in millimetres, angles in degrees counter-clockwise,
 * money in minor units. Each sheet's frame has its origin at the lower left corner, x to the right,
 * y up.
 */
public final class PlanJson {

  /** Raised when a field changes its meaning or goes away. */
  public static final int FORMAT = 2;

  private final Plan plan;
  private final Answer answer;
  private final List<List<String>> labels;
  private final List<BatchPlan.Share> shares;

  private PlanJson(
      Plan plan, Answer answer, List<List<String>> labels, List<BatchPlan.Share> shares) {
    this.plan = plan;
    this.answer = answer;
    this.labels = labels;
    this.shares = shares;
  }

  public static String of(Plan plan, Answer answer) {
    return new PlanJson(plan, answer, plan.labels(), List.of()).text();
  }

  /** The same for several jobs together, with what falls to each in {@code jobs}. */
  public static String of(BatchPlan batch, Answer answer) {
    return new PlanJson(batch.plan(), answer, batch.labels(), batch.shares()).text();
  }

  private String text() {
    return TableJson.written(root());
  }

  private ObjectNode root() {
    ObjectNode root = TableJson.MAPPER.createObjectNode();
    root.put("curvestockPlan", FORMAT);
    root.put("title", plan.job().title());
    root.put("invented", plan.job().invented());
    root.put("units", TableJson.UNITS);
    root.put("currency", plan.job().currency());
    root.put("seed", plan.job().search().seed());
    root.put("effort", plan.job().search().effort().name().toLowerCase(java.util.Locale.ROOT));
    root.put("stoppedEarly", plan.stopped());
    cutting(root.putObject("cutting"));
    if (!shares.isEmpty()) {
      ArrayNode jobs = root.putArray("jobs");
      shares.forEach(share -> share(jobs.addObject(), share));
    }
    machine(root.putObject("machine"));
    ArrayNode pieces = root.putArray("pieces");
    plan.job().demands().forEach(demand -> piece(pieces.addObject(), demand));
    Buying buying = answer.bought();
    AnswerJson.cost(root.putObject("cost"), buying.cost());
    buying
        .carriedWhole()
        .ifPresent(
            whole -> {
              ObjectNode other = root.putObject("carriedWhole");
              other.put("sheets", whole.sheets());
              AnswerJson.cost(other.putObject("cost"), whole.cost());
            });
    TableJson.add(root, buying.purchase());
    TableJson.add(root, buying.perSheet());
    TableJson.add(root, buying.obstacles());
    TableJson.add(root, buying.remnants());
    TableJson.add(root, answer.shopping());
    ArrayNode sheets = root.putArray("sheets");
    for (int i = 0; i < plan.layouts().size(); i++) {
      ObjectNode node = sheets.addObject();
      sheet(node, i + 1, plan.layouts().get(i), labels.get(i));
      byHand(node.putArray("straightCutsByHand"), buying.byHand().list().get(i), labels.get(i));
      node.put("cutFile", SheetFiles.clean(i + 1, plan.job().machine()));
      node.put("dxfFile", SheetFiles.dxf(i + 1, plan.job().machine()));
    }
    sources(root);
    return root;
  }

  /** The straight cuts in their order, from the sheet's lower left corner. */
  private static void byHand(ArrayNode cuts, HandCuts hand, List<String> labels) {
    for (CuttingOrder.Rip rip : hand.order().rips()) {
      ObjectNode cut = cuts.addObject();
      cut.put("along", rip.upright() ? "y" : "x");
      cut.put("at", TableJson.decimal(rip.at()));
      cut.put("from", TableJson.decimal(rip.from()));
      cut.put("to", TableJson.decimal(rip.to()));
      cut.put("freesRemnant", rip.freesKept());
      ArrayNode before = cut.putArray("before");
      rip.before().forEach(piece -> before.add(labels.get(piece)));
      ArrayNode after = cut.putArray("after");
      rip.after().forEach(piece -> after.add(labels.get(piece)));
    }
  }

  /** The job's own text, by which {@code check} can judge the drawings later. */
  private void sources(ObjectNode root) {
    ArrayNode files = root.putArray("jobFiles");
    for (JobSource source : plan.job().sources()) {
      ObjectNode file = files.addObject().put("text", source.text());
      source.stock().ifPresent(stock -> file.put("stock", stock));
    }
  }

  private static void share(ObjectNode node, BatchPlan.Share share) {
    node.put("letter", share.member().tag());
    node.put("title", share.member().job().title());
    node.put("pieces", share.pieces());
    node.put("areaTaken", TableJson.decimal(share.area()));
    node.put("partOfArea", TableJson.decimal(share.part()));
    node.put("cost", share.cost().minorUnits());
    ArrayNode sheets = node.putArray("sheets");
    share.sheets().forEach(sheets::add);
  }

  private void cutting(ObjectNode node) {
    node.put("kerf", TableJson.decimal(plan.job().cutting().kerf().millimetres()));
    node.put("spacing", TableJson.decimal(plan.job().cutting().spacing().millimetres()));
    node.put("woodBetweenCuts", TableJson.decimal(plan.job().cutting().standing().millimetres()));
    node.put("margin", TableJson.decimal(plan.job().cutting().margin().millimetres()));
  }

  /** How outlines in the files for machines differ from the finished size. */
  private void machine(ObjectNode node) {
    MachineSetup setup = plan.job().machine();
    CutForm form = setup.form(plan.job().cutting());
    node.put("outlines", setup.isOffset() ? "offset" : "finished");
    node.put("grownBy", TableJson.decimal(form.grown()));
    node.put("linesWithin", TableJson.decimal(form.linesWithin()));
    node.put("tabGaps", form.tabs());
    node.put("tabGap", TableJson.decimal(form.tabGap()));
    node.put("dxfUnit", setup.dxfUnit().symbol());
  }

  private static void piece(ObjectNode node, Demand demand) {
    Piece piece = demand.piece();
    node.put("id", piece.id());
    node.put("name", piece.name());
    node.put("wanted", demand.count());
    node.put("area", TableJson.decimal(piece.shape().area()));
    if (piece.shape().blank() instanceof AnnularSector sector) {
      node.put("form", "annular sector");
      node.put("innerRadius", TableJson.decimal(sector.innerRadius().millimetres()));
      node.put("outerRadius", TableJson.decimal(sector.outerRadius().millimetres()));
      node.put("angle", TableJson.decimal(sector.sweep().degrees()));
      node.put("frame", "origin at the centre of the arcs, x along the bisector");
    } else if (piece.shape().blank() instanceof Strip strip) {
      node.put("form", "strip");
      node.put("length", TableJson.decimal(strip.length().millimetres()));
      node.put("width", TableJson.decimal(strip.width().millimetres()));
      node.put("frame", "origin at the middle, x along the length");
    } else {
      node.put("form", "outline");
      node.put("frame", "as given in the job");
    }
  }

  private static void sheet(ObjectNode node, int number, Layout layout, List<String> labels) {
    SheetStock stock = layout.sheet();
    node.put("number", number);
    node.put("file", SheetFiles.annotated(number));
    node.put("sheet", stock.name());
    node.put("length", TableJson.decimal(stock.length().millimetres()));
    node.put("width", TableJson.decimal(stock.width().millimetres()));
    node.put("thickness", TableJson.decimal(stock.thickness().millimetres()));
    node.put("yield", TableJson.decimal(layout.areaYield()));
    ArrayNode placements = node.putArray("placements");
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      Pose pose = placement.pose();
      ObjectNode entry = placements.addObject();
      entry.put("piece", placement.piece().id());
      entry.put("label", labels.get(i));
      entry.put("x", TableJson.decimal(pose.x()));
      entry.put("y", TableJson.decimal(pose.y()));
      entry.put("rotation", TableJson.decimal(Math.toDegrees(pose.rotation())));
    }
  }
}
