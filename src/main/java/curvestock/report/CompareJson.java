package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.Recommendation;
import curvestock.compare.SegmentOption;
import curvestock.compare.Sensitivity;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;

/**
 * A comparison as data, {@code compare.json}: lengths in millimetres, angles in degrees, money in
 * minor units, weight in kilograms.
 */
public final class CompareJson {

  /** Raised when a field changes its meaning or goes away. */
  public static final int FORMAT = 1;

  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Comparison comparison;

  private CompareJson(Comparison comparison) {
    this.comparison = comparison;
  }

  public static String of(Comparison comparison) {
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter()
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));
    try {
      return MAPPER.writer(printer).writeValueAsString(new CompareJson(comparison).root()) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can always be written", e);
    }
  }

  private ObjectNode root() {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("curvestockComparison", FORMAT);
    root.put("title", comparison.job().title());
    root.put("invented", comparison.job().invented());
    root.put("units", "mm, degrees, money in minor units, kg");
    root.put("currency", comparison.job().currency());
    root.put("seed", comparison.job().search().seed());
    root.put("stoppedEarly", comparison.stopped());
    root.put("sheet", comparison.mainSheet().name());
    ArrayNode options = root.putArray("choices");
    comparison.options().forEach(option -> option(options.addObject(), option));
    ArrayNode refused = root.putArray("refused");
    comparison
        .refused()
        .forEach(
            refusal ->
                refused
                    .addObject()
                    .put("angle", decimal(refusal.angle().degrees()))
                    .put("reason", refusal.reason()));
    comparison
        .recommendation()
        .ifPresent(choice -> recommendation(root.putObject("recommendation"), choice));
    comparison.oneMoreTurn().ifPresent(more -> root.put("oneMoreTurn", more.minorUnits()));
    comparison.sensitivity().ifPresent(found -> sensitivity(root.putObject("sensitivity"), found));
    ArrayNode reach = root.putArray("withSheets");
    comparison
        .reach()
        .forEach(
            found ->
                reach
                    .addObject()
                    .put("angle", decimal(found.angle().degrees()))
                    .put("pieces", found.pieces())
                    .put("turns", decimal(found.turns())));
    comparison.scan().ifPresent(scan -> scan(root.putObject("scan"), scan));
    return root;
  }

  private static void option(ObjectNode node, SegmentOption option) {
    node.put("angle", decimal(option.angle().degrees()));
    node.put("pieces", option.pieces());
    node.put("perSheet", option.perSheet());
    node.put("perSheetBound", option.fill().bound().count());
    node.put("perSheetBoundProof", option.fill().bound().proof());
    node.put("perSheetByPattern", option.fill().byPattern());
    node.put("turnsPerSheet", decimal(option.turnsPerSheet()));
    node.put("sheets", option.sheets());
    node.put("sheetsBound", option.bound().sheets());
    node.put("sheetCost", option.sheetCost().minorUnits());
    node.put("sheetCostBound", option.bound().money().minorUnits());
    node.put("boundProof", option.bound().proof());
    node.put("joints", option.joints());
    node.put("jointsPerTurn", decimal(option.jointsPerTurn()));
    node.put("jointsFall", option.jointLine().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    node.put("splicePlates", option.splicePlates());
    node.put("chord", decimal(option.chord().millimetres()));
    node.put("depth", decimal(option.depth().millimetres()));
    node.put("carried", option.carried());
    node.put("cutLength", decimal(option.cutLength().millimetres()));
    node.put("weight", decimal(option.weight()));
    node.put("weightAssumes", "birch plywood");
    node.put("yield", decimal(option.plan().areaYield()));
    node.put("effort", option.effort().name().toLowerCase(Locale.ROOT));
    option.work().cutMinutes().ifPresent(minutes -> node.put("cutMinutes", decimal(minutes)));
    node.put("cuttingCost", option.work().cutting().minorUnits());
    node.put("eachJointCost", option.work().eachJoint().minorUnits());
    node.put("total", option.total().minorUnits());
  }

  private void recommendation(ObjectNode node, Recommendation choice) {
    node.put("angle", decimal(choice.best().degrees()));
    node.put("reason", choice.reason().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    node.put("sentence", new CompareAdvice(comparison).recommendation());
    node.put("jointTakenAt", choice.joint().each().minorUnits());
    node.put("jointPriceAssumed", choice.joint().assumed());
    swing(node, "ifAJointCostsMoreThan", choice.dearerJoints());
    swing(node, "ifAJointCostsLessThan", choice.cheaperJoints());
  }

  private static void swing(ObjectNode node, String name, Optional<Recommendation.Swing> swing) {
    swing.ifPresent(
        found ->
            node.putObject(name)
                .put("eachJoint", found.eachJoint().minorUnits())
                .put("angle", decimal(found.angle().degrees())));
  }

  private static void sensitivity(ObjectNode node, Sensitivity found) {
    node.put("angle", decimal(found.option().angle().degrees()));
    node.put("byPattern", found.byPattern());
    node.put("spareAlong", decimal(found.option().fill().spareAlong().millimetres()));
    node.put("spareAcross", decimal(found.option().fill().spareAcross().millimetres()));
    ArrayNode steps = node.putArray("steps");
    for (Sensitivity.Step step : found.steps()) {
      steps
          .addObject()
          .put("what", step.dimension().name().toLowerCase(Locale.ROOT).replace('_', ' '))
          .put("change", decimal(step.change().millimetres()))
          .put("perSheet", step.perSheet())
          .put("sheets", step.perSheet() == 0 ? 0 : step.sheets());
    }
  }

  private static void scan(ObjectNode node, AngleScan scan) {
    node.put("how", "regular patterns");
    node.put("bestForSheet", decimal(scan.bestForSheet().angle().degrees()));
    node.put("bestForJob", decimal(scan.bestForJob().sample().angle().degrees()));
    ArrayNode front = node.putArray("fewestPieces");
    for (AngleScan.ForJob choice : scan.front()) {
      front
          .addObject()
          .put("sheets", choice.sheets())
          .put("angle", decimal(choice.sample().angle().degrees()))
          .put("pieces", choice.pieces());
    }
    ArrayNode samples = node.putArray("samples");
    for (AngleScan.Sample sample : scan.samples()) {
      samples
          .addObject()
          .put("angle", decimal(sample.angle().degrees()))
          .put("perSheet", sample.perSheet())
          .put("turnsPerSheet", decimal(sample.turnsPerSheet()));
    }
  }

  /** Six decimals, as in {@code plan.json}. */
  private static BigDecimal decimal(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(6, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.setScale(Math.max(0, rounded.scale()));
  }
}
