package curvestock.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.answer.Choices;
import curvestock.answer.CompareWords;
import curvestock.answer.Heading;
import curvestock.compare.AngleScan;
import curvestock.compare.Comparison;
import curvestock.compare.Recommendation;
import java.util.Locale;

/** A comparison as data, {@code compare.json}; units as {@link TableJson} has them. */
public final class CompareJson {

  /** Raised when a field changes its meaning or goes away. */
  public static final int FORMAT = 3;

  private CompareJson() {}

  public static String of(Choices choices) {
    Comparison comparison = choices.comparison();
    Heading heading = choices.heading();
    ObjectNode root = TableJson.MAPPER.createObjectNode();
    root.put("curvestockComparison", FORMAT);
    root.put("title", heading.title());
    root.put("invented", heading.invented());
    root.put("units", TableJson.UNITS);
    root.put("currency", heading.figures().currency());
    root.put("seed", choices.job().search().seed());
    root.put("stoppedEarly", comparison.stopped());
    root.put("sheet", comparison.mainSheet().name());
    TableJson.add(root, choices.options());
    TableJson.add(root, choices.refused());
    comparison
        .recommendation()
        .ifPresent(choice -> recommendation(root.putObject("recommendation"), choices, choice));
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
    TableJson.add(root, choices.steps());
    TableJson.add(root, choices.reach());
    comparison.scan().ifPresent(scan -> scan(root.putObject("scan"), choices, scan));
    return TableJson.written(root);
  }

  private static void recommendation(ObjectNode node, Choices choices, Recommendation choice) {
    node.put("angle", TableJson.decimal(choice.best().largest().degrees()));
    node.put("reason", choice.reason().name().toLowerCase(Locale.ROOT).replace('_', ' '));
    new CompareWords(choices).decision().ifPresent(words -> node.put("sentence", words));
    node.put("eachJoint", choice.joint().each().minorUnits());
    node.put("eachJointAssumed", choice.joint().assumed());
    choice.dearerJoints().ifPresent(s -> swing(node.putObject("ifAJointCostsMoreThan"), s));
    choice.cheaperJoints().ifPresent(s -> swing(node.putObject("ifAJointCostsLessThan"), s));
    choice.dearerSheets().ifPresent(s -> swing(node.putObject("ifSheetsCostMoreBy"), s));
    choice.cheaperSheets().ifPresent(s -> swing(node.putObject("ifSheetsCostLessBy"), s));
  }

  private static void swing(ObjectNode node, Recommendation.Swing swing) {
    node.put("eachJoint", swing.eachJoint().minorUnits());
    node.put("angle", TableJson.decimal(swing.division().largest().degrees()));
  }

  private static void swing(ObjectNode node, Recommendation.PriceSwing swing) {
    node.put("factor", TableJson.decimal(swing.factor()));
    node.put("angle", TableJson.decimal(swing.division().largest().degrees()));
  }

  private static void scan(ObjectNode node, Choices choices, AngleScan scan) {
    node.put("how", "quick count");
    node.put("bestForSheet", TableJson.decimal(scan.bestForSheet().angle().degrees()));
    node.put("bestForJob", TableJson.decimal(scan.bestForJob().sample().angle().degrees()));
    TableJson.add(node, choices.fewestPieces());
    ArrayNode samples = node.putArray("samples");
    for (AngleScan.Sample sample : scan.samples()) {
      samples
          .addObject()
          .put("angle", TableJson.decimal(sample.angle().degrees()))
          .put("perSheet", sample.perSheet())
          .put("turnsPerSheet", TableJson.decimal(sample.turnsPerSheet()));
    }
  }
}
