package curvestock.purchase;

import curvestock.layout.Layout;
import java.util.ArrayList;
import java.util.List;

/**
 * The proven limits of every panel, in the order of {@link CuttingStockInstance#panels}. A lower
 * bound on the money is only as true as these.
 */
public record PackingLimits(List<SheetLimit> sheets) {

  /**
   * Slack for rounding in the areas that are passed in, as a share: areas are used this much in
   * favour of the sheet. Areas of shapes with some hundred edges err by less than 1e-12.
   */
  static final double AREA_SLACK = 1e-9;

  public PackingLimits {
    sheets = List.copyOf(sheets);
  }

  /** The same with another count of one kind on one panel. */
  PackingLimits with(int panel, int kind, int count) {
    SheetLimit limit = sheets.get(panel);
    List<Integer> counts = new ArrayList<>(limit.counts());
    counts.set(kind, count);
    List<SheetLimit> changed = new ArrayList<>(sheets);
    changed.set(panel, new SheetLimit(limit.capacity(), limit.areas(), counts, limit.proof()));
    return new PackingLimits(changed);
  }

  /**
   * Refuses limits that do not belong to the instance or that one of its layouts disproves.
   *
   * @throws IllegalArgumentException saying which limit is wrong
   */
  void requireFits(CuttingStockInstance instance) {
    if (sheets.size() != instance.panels().size()) {
      throw new IllegalArgumentException(
          "limits must be given for each of %s sheets, but were given for %s"
              .formatted(instance.panels().size(), sheets.size()));
    }
    for (SheetLimit limit : sheets) {
      if (limit.areas().size() != instance.demands().size()) {
        throw new IllegalArgumentException(
            "limits must be given for each of %s pieces, but were given for %s"
                .formatted(instance.demands().size(), limit.areas().size()));
      }
    }
    for (Layout layout : instance.layouts()) {
      requireAllows(sheets.get(instance.panelOf(layout)), instance, layout);
    }
  }

  private static void requireAllows(
      SheetLimit limit, CuttingStockInstance instance, Layout layout) {
    int[] counts = instance.counts(layout);
    double area = 0;
    for (int i = 0; i < counts.length; i++) {
      area += counts[i] * limit.areas().get(i);
      if (counts[i] > limit.counts().get(i)) {
        throw new IllegalArgumentException(
            "proven limit of %s for piece %s on %s is wrong: a layout holds %s"
                .formatted(
                    limit.counts().get(i),
                    instance.demands().get(i).piece().id(),
                    layout.sheet().name(),
                    counts[i]));
      }
    }
    if (area > limit.capacity() * (1 + AREA_SLACK)) {
      throw new IllegalArgumentException(
          "proven area of %s mm² on %s is wrong: a layout takes %s mm²"
              .formatted(limit.capacity(), layout.sheet().name(), area));
    }
  }
}
