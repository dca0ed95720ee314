package curvestock.purchase;

import curvestock.units.Money;

/**
 * One line of the shopping list.
 *
 * @param used sheets that are cut
 * @param bought sheets that are paid for: more than used where the minimum buy or a price break
 *     makes that cheaper
 * @param each price of each sheet bought
 */
public record PurchaseLine(Product product, int used, int bought, Money each) {

  static PurchaseLine of(Product product, int used) {
    int bought = product.toBuy(used);
    return new PurchaseLine(product, used, bought, product.priceEach(bought));
  }

  /** Price of all sheets bought. */
  public Money cost() {
    return each.times(bought);
  }
}
