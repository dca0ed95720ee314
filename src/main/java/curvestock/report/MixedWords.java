package curvestock.report;

import curvestock.compare.SegmentOption;
import curvestock.helix.spec.SegmentRun;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Where which pieces of a mixed plan go, and how to have it planned. */
final class MixedWords {

  private MixedWords() {}

  static List<String> of(SegmentOption option) {
    SegmentRun lower = option.division().lower().orElseThrow();
    double turns = lower.degrees() / 360;
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("Mixed plan " + SegmentName.brief(option.division()));
    lines.add(
        "  From the bottom up "
            + lower.count()
            + " "
            + SegmentName.plural(lower.segment())
            + ", "
            + String.format(Locale.ROOT, "%.2f", turns)
            + " turns; above them "
            + SegmentName.plural(option.division().segment())
            + ".");
    for (int i = 0; i < option.plan().layouts().size(); i++) {
      lines.add("  sheet " + (i + 1) + ": " + content(option, option.plan().layouts().get(i)));
    }
    lines.add(
        "  To plan it write in the job's helix: `segment-angle: "
            + plain(option.division().segment().degrees())
            + "` and `lower-segments: {count: "
            + lower.count()
            + ", angle: "
            + plain(lower.segment().degrees())
            + "}`.");
    return lines;
  }

  private static String content(SegmentOption option, Layout layout) {
    List<String> parts = new ArrayList<>();
    for (Demand demand : option.plan().job().demands()) {
      int count = layout.count(demand.piece());
      if (count > 0) {
        parts.add(count + " x " + demand.piece().name());
      }
    }
    return String.join("; ", parts);
  }

  private static String plain(double degrees) {
    return new java.math.BigDecimal(Double.toString(degrees)).stripTrailingZeros().toPlainString();
  }
}
