package curvestock.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.Division;
import curvestock.compare.Recommendation;
import curvestock.compare.SegmentOption;
import curvestock.compare.Sensitivity;
import curvestock.compare.SheetFill;
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
  public static final int FORMAT = 2;

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
    comparison
        .oneMoreTurn()
        .ifPresent(
            more ->
                root.putObject("oneMoreTurn")
                    .put("sheets", more.sheets())
                    .put("sheetCost", more.sheetCost().minorUnits())
                    .put("joints", more.joints())
                    .put("all", more.all().minorUnits()));
    comparison
        .ears()
        .ifPresent(
            ears ->
                root.putObject("ears")
                    .put("inJob", ears.inJob())
                    .put("sheetsWith", ears.sheetsWith())
                    .put("sheetsWithout", ears.sheetsWithout())
                    .put("extraCost", ears.extra().minorUnits()));
    comparison.sensitivity().ifPresent(found -> sensitivity(root.putObject("sensitivity"), found));
    ArrayNode reach = root.putArray("withSheets");
    comparison
        .reach()
        .forEach(
            found ->
                reach
                    .addObject()
                    .put("angle", decimal(found.division().largest().degrees()))
                    .put("pieces", found.pieces())
                    .put("onRemnants", found.onRemnants())
                    .put("turns", decimal(found.turns())));
    comparison.scan().ifPresent(scan -> scan(root.putObject("scan"), scan));
    return root;
  }

  private static void option(ObjectNode node, SegmentOption option) {
    division(node, option.division());
    node.put("pieces", option.pieces());
    option.fill().ifPresent(fill -> fill(node, option, fill));
    node.put("sheets", option.sheets());
    node.put("sheetsBound", option.cost().leastSheets());
    node.put("sheetCost", option.sheetCost().minorUnits());
    node.put("sheetCostBound", option.cost().leastPaid().minorUnits());
    node.put("boundProof", option.cost().proof());
    node.put("joints", option.joints());
    node.put("jointsPerTurn", decimal(option.jointsPerTurn()));
    node.put("jointsFall", words(option.fall().line()));
    node.put("jointsLeastApart", decimal(option.fall().leastDegrees()));
    node.put("plates", option.parts().plates());
    node.put("platesAssumed", option.parts().assumed());
    node.put("screws", option.parts().screws());
    node.put("glueGrams", decimal(option.parts().glueGrams()));
    node.put("smallParts", option.small().wanted());
    node.put("smallPartsInLeftovers", option.small().nested());
    node.put("sheetsMoreForSmallParts", option.small().extraSheets());
    node.put("smallPartsComplete", option.small().complete());
    node.put("largestLength", decimal(option.largest().length().millimetres()));
    node.put("largestWidth", decimal(option.largest().width().millimetres()));
    node.put("carried", option.carried());
    ArrayNode tooLarge = node.putArray("tooLargeFor");
    option.tooLargeFor().forEach(opening -> tooLarge.add(opening.name()));
    node.put("cutLength", decimal(option.cutLength().millimetres()));
    node.put("weight", decimal(option.weight()));
    node.put("yield", decimal(option.areaYield()));
    node.put("effort", option.effort().name().toLowerCase(Locale.ROOT));
    option.work().cutMinutes().ifPresent(minutes -> node.put("cutMinutes", decimal(minutes)));
    node.put("cuttingCost", option.work().cutting().minorUnits());
    node.put("eachJointCost", option.work().eachJoint().minorUnits());
    node.put("partsBought", option.work().parts().minorUnits());
    node.put("total", option.total().minorUnits());
  }

  /** The angle, of a mixed plan the larger one; and its runs from the bottom up. */
  private static void division(ObjectNode node, Division division) {
    node.put("angle", decimal(division.largest().degrees()));
    division
        .lower()
        .ifPresent(
            run ->
                node.putObject("mixed")
                    .put("lowerCount", run.count())
                    .put("lowerAngle", decimal(run.segment().degrees()))
                    .put("upperAngle", decimal(division.segment().degrees())));
  }

  private static void fill(ObjectNode node, SegmentOption option, SheetFill fill) {
    node.put("perSheet", fill.count());
    node.put("perSheetBound", fill.bound().count());
    node.put("perSheetBoundProof", fill.bound().proof());
    node.put("perSheetByPattern", fill.byPattern());
    node.put("turnsPerSheet", decimal(option.turnsPerSheet()));
  }

  private static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private void recommendation(ObjectNode node, Recommendation choice) {
    division(node, choice.best());
    node.put("reason", words(choice.reason()));
    node.put("sentence", new CompareAdvice(comparison).recommendation());
    node.put("jointTakenAt", choice.joint().each().minorUnits());
    node.put("jointPriceAssumed", choice.joint().assumed());
    swing(node, "ifAJointCostsMoreThan", choice.dearerJoints());
    swing(node, "ifAJointCostsLessThan", choice.cheaperJoints());
    priceSwing(node, "ifSheetsCostMoreBy", choice.dearerSheets());
    priceSwing(node, "ifSheetsCostLessBy", choice.cheaperSheets());
  }

  private static void swing(ObjectNode node, String name, Optional<Recommendation.Swing> swing) {
    swing.ifPresent(
        found -> {
          ObjectNode entry = node.putObject(name);
          entry.put("eachJoint", found.eachJoint().minorUnits());
          division(entry, found.division());
        });
  }

  private static void priceSwing(
      ObjectNode node, String name, Optional<Recommendation.PriceSwing> swing) {
    swing.ifPresent(
        found -> {
          ObjectNode entry = node.putObject(name);
          entry.put("factor", decimal(found.factor()));
          division(entry, found.division());
        });
  }

  private static void sensitivity(ObjectNode node, Sensitivity found) {
    node.put("angle", decimal(found.option().angle().degrees()));
    node.put("byPattern", found.byPattern());
    node.put("sheets", found.baseSheets());
    node.put("spareAlong", decimal(found.option().fill().orElseThrow().spareAlong().millimetres()));
    node.put(
        "spareAcross", decimal(found.option().fill().orElseThrow().spareAcross().millimetres()));
    ArrayNode steps = node.putArray("steps");
    for (Sensitivity.Step step : found.steps()) {
      steps
          .addObject()
          .put("what", words(step.dimension()))
          .put("change", decimal(step.change().millimetres()))
          .put("perSheet", step.perSheet())
          .put("sheets", step.sheets() == Sensitivity.Step.NONE ? 0 : step.sheets());
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
