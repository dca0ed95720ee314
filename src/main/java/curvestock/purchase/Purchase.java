package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;

/**
 * The decision: what to buy and which layout to cut on each sheet, with the proven bound.
 *
 * @param layouts one for each panel that is cut, a sheet carried whole being its own panel; they
 *     may hold more pieces than are wanted, see {@link #trimmed}
 * @param lines one for each product that is used
 */
public record Purchase(
    CuttingStockInstance instance,
    List<Layout> layouts,
    List<PurchaseLine> lines,
    CostBound bound) {

  public Purchase {
    layouts = List.copyOf(layouts);
    lines = List.copyOf(lines);
  }

  /**
   * The purchase of the whole sheets under the given layouts, which somebody else has chosen.
   *
   * @param bound proven for the instance
   * @throws IllegalArgumentException if a layout does not lie on a product's whole sheet
   */
  public static Purchase of(CuttingStockInstance instance, List<Layout> layouts, CostBound bound) {
    List<PurchaseLine> lines = new ArrayList<>();
    int placed = 0;
    for (Product product : instance.products()) {
      long used = layouts.stream().filter(each -> each.sheet().equals(product.stock())).count();
      placed += Math.toIntExact(used);
      if (used > 0) {
        Breakdown whole = Breakdown.whole(product.stock());
        lines.add(
            PurchaseLine.of(product, List.of(new BrokenSheets(whole, Math.toIntExact(used)))));
      }
    }
    if (placed < layouts.size()) {
      throw new IllegalArgumentException("every layout must lie on a whole sheet on offer");
    }
    return new Purchase(instance, layouts, lines, bound);
  }

  /** Purchases that share no sheet as one; their bounds add up. */
  static Purchase sum(CuttingStockInstance instance, List<Purchase> parts) {
    List<Layout> layouts = new ArrayList<>();
    List<PurchaseLine> lines = new ArrayList<>();
    parts.forEach(part -> layouts.addAll(part.layouts));
    parts.forEach(part -> lines.addAll(part.lines));
    return new Purchase(
        instance, layouts, lines, CostBound.sum(parts.stream().map(Purchase::bound).toList()));
  }

  /** Price of all sheets bought and of the store's cuts in them. */
  public Money sheetCost() {
    return lines.stream().map(PurchaseLine::cost).reduce(Money.ZERO, Money::plus);
  }

  /** Number of sheets cut; one that is ripped into panels counts once. */
  public int sheets() {
    return lines.stream().mapToInt(PurchaseLine::used).sum();
  }

  /** Pieces too many of each kind, in the order of the demands. */
  public List<Integer> surplus() {
    int[] held = new int[instance.demands().size()];
    for (Layout layout : layouts) {
      int[] counts = instance.counts(layout);
      for (int i = 0; i < held.length; i++) {
        held[i] += counts[i];
      }
    }
    List<Integer> surplus = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      surplus.add(held[i] - instance.demands().get(i).count());
    }
    return surplus;
  }

  /** Most money that any other purchase, with any layouts at all, could save. */
  public Money gap() {
    return sheetCost().minus(bound.money());
  }

  /** The layouts with exactly the wanted pieces; see {@link Trimming}. */
  public List<Layout> trimmed() {
    return new Trimming(instance, layouts).trimmed();
  }
}
