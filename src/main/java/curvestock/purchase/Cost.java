package curvestock.purchase;

import curvestock.units.Money;
import curvestock.units.TaxRate;

/**
 * What sheets cost and what of that is proven. Whoever shows, weighs or compares money asks here,
 * so that tax is in every sum or in none.
 *
 * @param net price of sheets and the store's cuts before tax
 * @param tax the rate that is added
 * @param leastNet what no purchase can go below before tax, whatever its layouts; at most {@code
 *     net}
 * @param leastSheets how many sheets no purchase can go below
 * @param proof how that is proven, to follow the word "proven"
 */
public record Cost(Money net, TaxRate tax, Money leastNet, int leastSheets, String proof) {

  /**
   * @throws IllegalArgumentException if less than the proven least would be paid
   */
  public Cost {
    if (leastNet.compareTo(net) > 0) {
      throw new IllegalArgumentException(
          "a proven least of "
              + leastNet.plain()
              + " must not be above the cost, but that was "
              + net.plain());
    }
  }

  /** The cost of so much money under the bound. */
  public static Cost of(Money net, CostBound bound, TaxRate tax) {
    return new Cost(net, tax, bound.money(), bound.sheets(), bound.proof());
  }

  /** The tax alone. */
  public Money onTop() {
    return tax.on(net);
  }

  /** What is paid in the end. */
  public Money paid() {
    return tax.gross(net);
  }

  /** What would be paid at the proven least. */
  public Money leastPaid() {
    return tax.gross(leastNet);
  }

  /** Most money that any other purchase could save. */
  public Money couldStillSave() {
    return paid().minus(leastPaid());
  }

  public boolean isProvenLeast() {
    return couldStillSave().equals(Money.ZERO);
  }

  /** This and what more sheets cost. */
  public Cost plus(Money more) {
    return new Cost(net.plus(more), tax, leastNet, leastSheets, proof);
  }
}
