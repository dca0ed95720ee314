package curvestock.compare;

import curvestock.units.Money;
import java.util.Comparator;
import java.util.List;

/**
 * Which options deserve a longer search: those that would become the best choice if a few more
 * pieces on a sheet saved one sheet, the nearest to that step first.
 */
final class Deepening {

  /** A search rarely adds more than this share to what a quick one has found. */
  private static final double MOST_GAIN = 0.25;

  private Deepening() {}

  static List<SegmentOption> worthwhile(List<SegmentOption> options, Money eachJoint, int most) {
    Comparator<Standing> order = Recommendation.order(eachJoint);
    if (options.isEmpty()) {
      return List.of();
    }
    Standing best = options.stream().map(SegmentOption::standing).min(order).orElseThrow();
    return options.stream()
        .filter(option -> option.sheets() > option.cost().leastSheets())
        .filter(option -> gain(option) <= MOST_GAIN)
        .filter(option -> order.compare(oneSheetLess(option), best) <= 0)
        .sorted(Comparator.comparingDouble(Deepening::gain))
        .limit(most)
        .toList();
  }

  /** By what share a sheet must hold more pieces to save a sheet. */
  private static double gain(SegmentOption option) {
    int sheets = option.sheets() - 1;
    if (sheets == 0 || option.perSheet() == 0) {
      return Double.POSITIVE_INFINITY;
    }
    // The shorter last piece may find room beside them.
    int needed = (option.wholeSegments() + sheets - 1) / sheets;
    if (needed > option.fill().orElseThrow().bound().count()) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.max(0, (double) needed / option.perSheet() - 1);
  }

  /** What a sheet of the kind bought first costs, tax and all. */
  static Money eachSheet(SegmentOption option) {
    return option.plan().job().terms().tax().gross(option.plan().purchase().lines().get(0).each());
  }

  private static Standing oneSheetLess(SegmentOption option) {
    return oneSheetLess(option, option.joints());
  }

  /** How the option would stand with one sheet less and so many joints. */
  static Standing oneSheetLess(SegmentOption option, int joints) {
    Standing now = option.standing();
    return new Standing(
        now.division(),
        now.carried(),
        now.certain(),
        now.sheetCost().minus(eachSheet(option)),
        now.otherCost(),
        joints,
        now.sheets() - 1,
        now.offcuts());
  }
}
