package curvestock.purchase;

import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Proves what a purchase must cost at least, over all layouts that the {@link PackingLimits} allow,
 * not only those found.
 *
 * <p>Many sets of weights are tried (one kind alone, areas, areas coarsened so that whole pieces
 * count, and the scarcity that a linear programme suggests), each is made a {@link
 * DualFeasibleInequality}, and the cheapest whole numbers of sheets that meet all inequalities are
 * the bound. Every step is in whole numbers and errs to the low side only: price breaks count at
 * their true totals, or at the least price where the search is cut short; a product that may be
 * ripped in several ways counts with the fullest and the cheapest of them at once.
 */
final class LowerBound {

  private static final long FINE = 1_000_000;
  private static final int[] COARSE = {1, 2, 3, 4, 5, 6, 8, 10, 12, 24, 60};

  private final CuttingStockInstance instance;
  private final PackingLimits limits;

  /** Made when first asked for: they take most of the time of a proof. */
  private List<DualFeasibleInequality> made = List.of();

  LowerBound(CuttingStockInstance instance, PackingLimits limits) {
    limits.requireFits(instance);
    this.instance = instance;
    this.limits = limits;
  }

  /**
   * @param knownMoney cost of a purchase that exists: the bound stops there
   * @param knownSheets sheets cut by a purchase that exists
   */
  CostBound prove(Money knownMoney, int knownSheets) {
    if (made.isEmpty()) {
      made = inequalities();
    }
    List<DualFeasibleInequality> inequalities = made;
    long money =
        new FewestCost(inequalities, prices(instance, true)).atLeast(knownMoney.minorUnits());
    long sheets = new FewestCost(inequalities, prices(instance, false)).atLeast(knownSheets);
    String limitsProof =
        limits.sheets().stream()
            .map(SheetLimit::proof)
            .distinct()
            .collect(Collectors.joining("; "));
    return new CostBound(
        new Money(money),
        (int) sheets,
        inequalities,
        "no layout at all can exceed these limits of a sheet: "
            + limitsProof
            + "; whole sheets counted with "
            + inequalities.size()
            + " sets of weights on the pieces, in whole numbers");
  }

  /** Of every product; in place of the money just the number of sheets, if so wanted. */
  static List<FewestCost.Price> prices(CuttingStockInstance instance, boolean money) {
    List<FewestCost.Price> prices = new ArrayList<>();
    for (Product product : instance.products()) {
      prices.add(
          money
              ? new FewestCost.Price(
                  used -> product.cost(used).plus(product.leastCutting().times(used)).minorUnits(),
                  product.leastPrice().plus(product.leastCutting()).minorUnits(),
                  product.available())
              : new FewestCost.Price(used -> used, 1, product.available()));
    }
    return prices;
  }

  /** What every purchase must meet. */
  List<DualFeasibleInequality> inequalities() {
    List<DualFeasibleInequality> inequalities = new ArrayList<>();
    int kinds = instance.demands().size();
    for (int i = 0; i < kinds; i++) {
      long[] alone = new long[kinds];
      alone[i] = 1;
      add(inequalities, "number of " + instance.demands().get(i).piece().id(), alone);
    }
    for (SheetLimit limit : limits.sheets()) {
      double largest = limit.areas().stream().mapToDouble(area -> area).max().orElse(1);
      add(inequalities, "area", areas(limit, FINE / largest));
      for (int parts : COARSE) {
        // A piece that takes more than q/(parts+1) of the sheet weighs q: whole pieces count.
        add(
            inequalities,
            "area in parts of " + parts,
            areas(limit, (parts + 1) / limit.capacity()));
      }
    }
    DualWeights suggestions = new DualWeights(instance, limits);
    for (long largest : new long[] {FINE, 60, 12, 6, 3}) {
      add(
          inequalities,
          "scarcity for the money",
          suggestions.suggest(
              product -> product.leastPrice().plus(product.leastCutting()).minorUnits(), largest));
      add(inequalities, "scarcity for the number", suggestions.suggest(product -> 1, largest));
    }
    return inequalities;
  }

  private void add(List<DualFeasibleInequality> inequalities, String name, long[] weights) {
    if (Arrays.stream(weights).anyMatch(weight -> weight > 0)) {
      DualFeasibleInequality inequality =
          DualFeasibleInequality.prove(name, weights, instance, limits);
      if (inequalities.stream().noneMatch(other -> other.weights().equals(inequality.weights()))) {
        inequalities.add(inequality);
      }
    }
  }

  private static long[] areas(SheetLimit limit, double scale) {
    return limit.areas().stream()
        .mapToLong(area -> (long) Math.min(FINE, Math.floor(area * scale)))
        .toArray();
  }
}
