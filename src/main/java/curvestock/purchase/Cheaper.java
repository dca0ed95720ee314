package curvestock.purchase;

import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;

/**
 * Which cheaper purchase than a known one there could be, and what its sheets would have to hold.
 *
 * <p>The limits may be proven ones, or rules of thumb about what layouts could hold at best: what
 * is said is then as true as they are. Without a price on any sheet, fewer sheets count as cheaper.
 */
public final class Cheaper {

  private final CuttingStockInstance instance;
  private final PackingLimits limits;

  private final List<DualFeasibleInequality> inequalities;
  private final List<FewestCost.Price> prices;
  private final long cost;

  /**
   * @param limits not below any layout of the instance
   * @throws IllegalArgumentException if a layout of the instance exceeds the limits
   */
  public Cheaper(CuttingStockInstance instance, PackingLimits limits, Purchase known) {
    this.instance = instance;
    this.limits = limits;
    this.inequalities = new LowerBound(instance, limits).inequalities();
    boolean free = known.sheetCost().equals(Money.ZERO);
    this.prices = LowerBound.prices(instance, !free);
    this.cost = free ? known.sheets() : known.sheetCost().minorUnits();
  }

  /** Whether the limits leave room for a cheaper purchase. */
  public boolean isPossible() {
    return leaveRoom(inequalities);
  }

  /** Whether it must be a single sheet, from which all pieces come: two would cost as much. */
  public boolean isOneSheet() {
    boolean whole =
        instance.products().stream()
            .flatMap(product -> product.breakdowns().stream())
            .allMatch(way -> way.panels().size() == 1 && way.panels().get(0).perSheet() == 1);
    long least = prices.stream().mapToLong(FewestCost.Price::least).min().orElse(0);
    return whole && 2 * least >= cost;
  }

  private boolean leaveRoom(List<DualFeasibleInequality> inequalities) {
    return new FewestCost(inequalities, prices).atLeast(cost) < cost;
  }

  /**
   * How many pieces of a kind the fullest panel of a sort must hold in any cheaper purchase, all
   * other panels at their limits: the least number that leaves room for one. One more than the
   * limit if there is no room even then; 0 if others suffice.
   *
   * @param kind index in the instance's demands
   * @param panel index in the instance's panels
   */
  public int needed(int kind, int panel) {
    int low = 0;
    int high = limits.sheets().get(panel).counts().get(kind) + 1;
    while (low < high) {
      int middle = (low + high) / 2;
      if (leavesRoom(kind, panel, middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  private boolean leavesRoom(int kind, int panel, int count) {
    if (count > limits.sheets().get(panel).counts().get(kind)) {
      return true;
    }
    long[] alone = new long[instance.demands().size()];
    alone[kind] = 1;
    List<DualFeasibleInequality> with = new ArrayList<>(inequalities);
    with.add(
        DualFeasibleInequality.prove("number", alone, instance, limits.with(panel, kind, count)));
    return leaveRoom(with);
  }
}
