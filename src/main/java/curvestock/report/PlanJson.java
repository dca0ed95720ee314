package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.check.CutForm;
import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.machine.MachineSetup;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.plan.BatchPlan;
import curvestock.plan.Capacity;
import curvestock.plan.Plan;
import curvestock.purchase.PurchaseLine;
import curvestock.sheet.SheetStock;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/**
 * The plan as data, {@code plan.json}: lengths in millimetres, angles in degrees counter-clockwise,
 * money in minor units. Each sheet's frame has its origin at the lower left corner, x to the right,
 * y up.
 */
public final class PlanJson {

  /** Raised when a field changes its meaning or goes away. */
  public static final int FORMAT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Plan plan;
  private final List<List<String>> labels;
  private final List<BatchPlan.Share> shares;

  private PlanJson(Plan plan, List<List<String>> labels, List<BatchPlan.Share> shares) {
    this.plan = plan;
    this.labels = labels;
    this.shares = shares;
  }

  public static String of(Plan plan) {
    return new PlanJson(plan, plan.labels(), List.of()).text();
  }

  /** The same for several jobs together, with what falls to each in {@code jobs}. */
  public static String of(BatchPlan batch) {
    return new PlanJson(batch.plan(), batch.labels(), batch.shares()).text();
  }

  private String text() {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(printer).writeValueAsString(root()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  private ObjectNode root() {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("curvestockPlan", FORMAT);
    root.put("title", plan.job().title());
    root.put("invented", plan.job().invented());
    root.put("units", "mm, degrees counter-clockwise, money in minor units");
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
    purchase(root.putObject("purchase"));
    ArrayNode capacities = root.putArray("piecesPerSheet");
    plan.capacities().forEach(capacity -> capacity(capacities.addObject(), capacity));
    ArrayNode sheets = root.putArray("sheets");
    for (int i = 0; i < plan.layouts().size(); i++) {
      ObjectNode node = sheets.addObject();
      sheet(node, i + 1, plan.layouts().get(i), labels.get(i));
      node.put("cutFile", SheetFiles.clean(i + 1, plan.job().machine()));
      node.put("dxfFile", SheetFiles.dxf(i + 1, plan.job().machine()));
    }
    return root;
  }

  private static void share(ObjectNode node, BatchPlan.Share share) {
    node.put("letter", share.member().tag());
    node.put("title", share.member().job().title());
    node.put("pieces", share.pieces());
    node.put("areaTaken", decimal(share.area()));
    node.put("partOfArea", decimal(share.part()));
    node.put("cost", share.cost().minorUnits());
    ArrayNode sheets = node.putArray("sheets");
    share.sheets().forEach(sheets::add);
  }

  private void cutting(ObjectNode node) {
    node.put("kerf", decimal(plan.job().cutting().kerf().millimetres()));
    node.put("spacing", decimal(plan.job().cutting().spacing().millimetres()));
    node.put("margin", decimal(plan.job().cutting().margin().millimetres()));
  }

  /** How outlines in the files for machines differ from the finished size. */
  private void machine(ObjectNode node) {
    MachineSetup setup = plan.job().machine();
    CutForm form = setup.form(plan.job().cutting());
    node.put("outlines", setup.isOffset() ? "offset" : "finished");
    node.put("grownBy", decimal(form.grown()));
    node.put("linesWithin", decimal(form.linesWithin()));
    node.put("tabGaps", form.tabs());
    node.put("tabGap", decimal(form.tabGap()));
    node.put("dxfUnit", setup.dxfUnit().symbol());
  }

  private static void piece(ObjectNode node, Demand demand) {
    Piece piece = demand.piece();
    node.put("id", piece.id());
    node.put("name", piece.name());
    node.put("wanted", demand.count());
    node.put("area", decimal(piece.shape().area()));
    if (piece.shape().blank() instanceof AnnularSector sector) {
      node.put("form", "annular sector");
      node.put("innerRadius", decimal(sector.innerRadius().millimetres()));
      node.put("outerRadius", decimal(sector.outerRadius().millimetres()));
      node.put("angle", decimal(sector.sweep().degrees()));
      node.put("frame", "origin at the centre of the arcs, x along the bisector");
    } else if (piece.shape().blank() instanceof Strip strip) {
      node.put("form", "strip");
      node.put("length", decimal(strip.length().millimetres()));
      node.put("width", decimal(strip.width().millimetres()));
      node.put("frame", "origin at the middle, x along the length");
    } else {
      node.put("form", "outline");
      node.put("frame", "as given in the job");
    }
  }

  private void purchase(ObjectNode node) {
    ArrayNode lines = node.putArray("lines");
    for (PurchaseLine line : plan.purchase().lines()) {
      ObjectNode entry = lines.addObject();
      entry.put("sheet", line.product().stock().name());
      entry.put("bought", line.bought());
      entry.put("used", line.used());
      entry.put("each", line.each().minorUnits());
      entry.put("storeCuts", line.cuts());
      entry.put("storeCutting", line.cutting().minorUnits());
      entry.put("cost", line.cost().minorUnits());
    }
    node.put("tax", plan.job().terms().tax().on(plan.purchase().sheetCost()).minorUnits());
    plan.carriedWhole()
        .ifPresent(
            whole -> {
              ObjectNode other = node.putObject("carriedWhole");
              other.put("sheets", whole.sheets());
              other.put("cost", whole.sheetCost().minorUnits());
            });
    node.put("cost", plan.purchase().sheetCost().minorUnits());
    node.put("costBound", plan.purchase().bound().money().minorUnits());
    node.put("sheetsBound", plan.purchase().bound().sheets());
    node.put("boundProof", plan.purchase().bound().proof());
  }

  private static void capacity(ObjectNode node, Capacity capacity) {
    node.put("piece", capacity.piece().id());
    node.put("sheet", capacity.sheet().name());
    node.put("found", capacity.found());
    node.put("soughtUpTo", capacity.sought());
    node.put("bound", capacity.bound().count());
    node.put("boundProof", capacity.bound().proof());
    node.put("how", capacity.how());
  }

  private static void sheet(ObjectNode node, int number, Layout layout, List<String> labels) {
    SheetStock stock = layout.sheet();
    node.put("number", number);
    node.put("file", SheetFiles.annotated(number));
    node.put("sheet", stock.name());
    node.put("length", decimal(stock.length().millimetres()));
    node.put("width", decimal(stock.width().millimetres()));
    node.put("thickness", decimal(stock.thickness().millimetres()));
    node.put("yield", decimal(layout.areaYield()));
    ArrayNode placements = node.putArray("placements");
    for (int i = 0; i < layout.placements().size(); i++) {
      Placement placement = layout.placements().get(i);
      Pose pose = placement.pose();
      ObjectNode entry = placements.addObject();
      entry.put("piece", placement.piece().id());
      entry.put("label", labels.get(i));
      entry.put("x", decimal(pose.x()));
      entry.put("y", decimal(pose.y()));
      entry.put("rotation", decimal(Math.toDegrees(pose.rotation())));
    }
  }

  /** Six decimals: a millionth of a millimetre, or of a degree (0.00002 mm at the rim of 1 m). */
  private static BigDecimal decimal(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.setScale(Math.max(0, rounded.scale()));
  }
}
