package curvestock.job;

import curvestock.purchase.Breakdown;
import curvestock.purchase.Product;
import curvestock.purchase.StoreCuts;
import curvestock.sheet.SheetStock;
import curvestock.units.TaxRate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * On which terms sheets are bought.
 *
 * @param sheets by the sheet's name; a sheet not named is sold one by one at one price
 * @param storeCuts how the store rips sheets that cannot be carried; empty if any can be
 * @param tax on sheets and cuts
 */
public record Terms(Map<String, SheetTerms> sheets, Optional<StoreCuts> storeCuts, TaxRate tax) {

  /** One by one, carried whole, no tax. */
  public static final Terms NONE = new Terms(Map.of(), Optional.empty(), TaxRate.NONE);

  public Terms {
    sheets = Map.copyOf(sheets);
  }

  private SheetTerms of(SheetStock sheet) {
    return sheets.getOrDefault(sheet.name(), SheetTerms.plain(sheet));
  }

  /** Whether the sheet is paid for and at home. */
  public boolean isOnHand(SheetStock sheet) {
    return of(sheet).onHand();
  }

  /** The sheet as it is sold, carried whole. */
  public Product whole(SheetStock sheet) {
    return of(sheet).product(sheet);
  }

  /**
   * The sheet as it comes home: whole, or ripped by the store if it cannot be carried. Empty if no
   * way of ripping it makes panels that can be.
   */
  public Optional<Product> carried(SheetStock sheet) {
    Product whole = whole(sheet);
    if (storeCuts.isEmpty() || of(sheet).onHand()) {
      return Optional.of(whole);
    }
    List<Breakdown> ways = storeCuts.get().breakdowns(sheet);
    return ways.isEmpty()
        ? Optional.empty()
        : Optional.of(new Product(sheet, whole.minimumBuy(), whole.breaks(), ways));
  }
}
