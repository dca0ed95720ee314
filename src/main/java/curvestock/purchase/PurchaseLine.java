package curvestock.purchase;

import curvestock.units.Money;
import java.util.List;

/**
 * One line of the shopping list.
 *
 * @param used sheets that are cut
 * @param bought sheets that are paid for: more than used where the minimum buy or a price break
 *     makes that cheaper
 * @param each price of each sheet bought
 * @param broken how the used sheets leave the store, each way once
 */
public record PurchaseLine(
    Product product, int used, int bought, Money each, List<BrokenSheets> broken) {

  public PurchaseLine {
    broken = List.copyOf(broken);
  }

  /** Sheets that are all carried whole. */
  public PurchaseLine(Product product, int used, int bought, Money each) {
    this(
        product,
        used,
        bought,
        each,
        List.of(new BrokenSheets(Breakdown.whole(product.stock()), used)));
  }

  static PurchaseLine of(Product product, List<BrokenSheets> broken) {
    int used = broken.stream().mapToInt(BrokenSheets::sheets).sum();
    int bought = product.toBuy(used);
    return new PurchaseLine(product, used, bought, product.priceEach(bought), broken);
  }

  /** Price of all sheets bought, and of the cuts made in those used. */
  public Money cost() {
    return each.times(bought).plus(cutting());
  }

  /** Price of the store's cuts. */
  public Money cutting() {
    return broken.stream()
        .map(way -> way.breakdown().cutting().times(way.sheets()))
        .reduce(Money.ZERO, Money::plus);
  }

  /** Number of the store's cuts. */
  public int cuts() {
    return broken.stream().mapToInt(way -> way.breakdown().cuts() * way.sheets()).sum();
  }
}
