package curvestock.job;

import curvestock.purchase.PriceBreak;
import curvestock.purchase.Product;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * The seller's terms for one kind of sheet.
 *
 * @param minimumBuy fewest that are sold, if any are bought at all
 * @param breaks lower prices for larger quantities
 * @param onHand whether it is paid for and at home, so that no store cuts it
 * @param tolerance how much less than its size it may measure, if the job says so
 */
public record SheetTerms(
    int minimumBuy, List<PriceBreak> breaks, boolean onHand, Optional<Length> tolerance) {

  public SheetTerms {
    breaks = List.copyOf(breaks);
  }

  /** One by one at one price; what costs nothing is on hand. */
  static SheetTerms plain(SheetStock sheet) {
    return new SheetTerms(1, List.of(), sheet.price().minorUnits() == 0, Optional.empty());
  }

  /** The sheet on these terms; a break that is no cheaper than the sheet's price is left out. */
  Product product(SheetStock sheet) {
    List<PriceBreak> cheaper =
        breaks.stream().filter(step -> step.each().compareTo(sheet.price()) < 0).toList();
    int available = sheet.available().orElse(Integer.MAX_VALUE);
    return new Product(sheet, Math.max(1, Math.min(minimumBuy, available)), cheaper);
  }
}
