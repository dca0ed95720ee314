package curvestock.job;

import curvestock.machine.MachineSetup.Bed;
import curvestock.purchase.BedRips;
import curvestock.purchase.Breakdown;
import curvestock.purchase.Product;
import curvestock.purchase.StoreCuts;
import curvestock.sheet.SheetStock;
import curvestock.sheet.SizeTolerance;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import curvestock.units.TaxRate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * On which terms sheets are bought.
 *
 * @param sheets by the sheet's name; a sheet not named is sold one by one at one price
 * @param storeCuts how the store rips sheets that cannot be carried; empty if any can be
 * @param tax on sheets and cuts
 * @param unit of the job's own numbers, which says to which standard its sheets are made; empty:
 *     that of what is printed
 */
public record Terms(
    Map<String, SheetTerms> sheets,
    Optional<StoreCuts> storeCuts,
    TaxRate tax,
    Optional<LengthUnit> unit) {

  /** One by one, carried whole, no tax. */
  public static final Terms NONE =
      new Terms(Map.of(), Optional.empty(), TaxRate.NONE, Optional.empty());

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

  /**
   * How much less than its size the sheet may measure: as the job says; else what its standard
   * allows a sheet that is bought, and nothing for wood at home, which was measured.
   */
  SizeTolerance tolerance(SheetStock sheet, LengthStyle style) {
    SizeTolerance usual =
        unit.orElse(style.unit()).isImperial() ? SizeTolerance.INCHES : SizeTolerance.METRIC;
    return of(sheet)
        .tolerance()
        .map(given -> new SizeTolerance(given, "as the job says"))
        .orElse(of(sheet).onHand() ? SizeTolerance.NONE : usual);
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
    return storeCuts.isEmpty() || of(sheet).onHand()
        ? Optional.of(whole(sheet))
        : ripped(sheet, storeCuts.get().breakdowns(sheet));
  }

  /**
   * The sheet as it comes under a machine that reaches no farther than its bed: ripped small enough
   * for it, and for carrying if the store does it, in whichever of several ways is cheapest. Sheets
   * of odd shape or with defects are ripped by nobody, so they must fit as they are.
   *
   * @param kerf of the saw with which sheets at home are ripped
   */
  Optional<Product> onBed(SheetStock sheet, Bed bed, Length kerf) {
    StoreCuts atHome = new StoreCuts(Money.ZERO, kerf, Length.ZERO, bed.length(), bed.width());
    boolean byStore = storeCuts.isPresent() && !of(sheet).onHand();
    StoreCuts cuts = byStore ? storeCuts.get().within(bed.length(), bed.width()) : atHome;
    boolean plain = sheet.isRectangle() && sheet.defects().isEmpty();
    if (!plain && !cuts.canCarry(sheet.length(), sheet.width())) {
      return Optional.empty();
    }
    List<Breakdown> ways = new ArrayList<>(cuts.breakdowns(sheet));
    if (!byStore && ways.stream().allMatch(Breakdown::isRipped)) {
      BedRips.of(sheet, kerf, bed.length(), bed.width()).ifPresent(ways::add);
    }
    return ripped(sheet, ways);
  }

  private Optional<Product> ripped(SheetStock sheet, List<Breakdown> ways) {
    Product whole = whole(sheet);
    return ways.isEmpty()
        ? Optional.empty()
        : Optional.of(new Product(sheet, whole.minimumBuy(), whole.breaks(), ways));
  }
}
