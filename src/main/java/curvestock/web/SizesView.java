package curvestock.web;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.compare.Comparison;
import curvestock.compare.FirstLook;
import curvestock.compare.SegmentOption;
import curvestock.report.CompareAdvice;
import curvestock.units.LengthStyle;
import java.util.List;
import java.util.Locale;

/** A comparison of segment sizes as the page shows it. */
final class SizesView {

  private SizesView() {}

  /** First counts by regular patterns. */
  static ObjectNode of(List<FirstLook> looks) {
    ObjectNode root = Json.object();
    ArrayNode rows = root.putArray("rows");
    for (FirstLook look : looks) {
      rows.addObject()
          .put("angle", look.angle().degrees())
          .put("pieces", look.pieces())
          .put("perSheet", look.perSheet())
          .put("turns", number(look.turnsPerSheet()));
    }
    return root;
  }

  static ObjectNode of(Comparison comparison) {
    String currency = comparison.job().currency();
    LengthStyle style = comparison.job().style();
    ObjectNode root = Json.object();
    root.put("sheet", comparison.mainSheet().name());
    ArrayNode rows = root.putArray("rows");
    for (SegmentOption option : comparison.options()) {
      if (option.fill().isEmpty()) {
        // The page's table is of equal segments; a mixed plan is told of in the advice.
        continue;
      }
      rows.addObject()
          .put("angle", option.angle().degrees())
          .put("pieces", option.pieces())
          .put("perSheet", option.perSheet())
          .put("noMoreThan", option.fill().orElseThrow().bound().count())
          .put("turns", number(option.turnsPerSheet()))
          .put("sheets", option.sheets())
          .put("cost", option.sheetCost().format(currency))
          .put("joints", option.joints())
          .put("largest", style.format(option.chord()) + " x " + style.format(option.depth()));
    }
    ArrayNode refused = root.putArray("refused");
    comparison
        .refused()
        .forEach(
            refusal ->
                refused
                    .addObject()
                    .put("angle", refusal.angle().degrees())
                    .put("reason", refusal.reason()));
    comparison.best().ifPresent(best -> root.put("best", best.angle().degrees()));
    ArrayNode advice = root.putArray("advice");
    new CompareAdvice(comparison)
        .lines().stream().filter(line -> !line.isBlank()).forEach(advice::add);
    return root;
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }
}
