package curvestock.purchase;

import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.List;

/**
 * One way a bought sheet leaves the store: whole, or ripped into panels. The panels of one sheet
 * can only be bought together; no piece lies across a cut because pieces lie on panels.
 *
 * @param panels every kind of panel once
 * @param cuts straight cuts that the store makes in one sheet; 0 for a whole sheet
 * @param cutting what they cost for one sheet
 */
public record Breakdown(List<Panel> panels, int cuts, Money cutting) {

  /**
   * @throws IllegalArgumentException if there is no panel, a price is negative, or cuts and panels
   *     do not belong together: each cut makes one panel more, or a strip of waste
   */
  public Breakdown {
    panels = List.copyOf(panels);
    int count = panels.stream().mapToInt(Panel::perSheet).sum();
    if (count < 1 || cuts < count - 1) {
      throw new IllegalArgumentException(
          "a sheet with %s cuts must give 1 to %s panels, but gives %s"
              .formatted(cuts, cuts + 1, count));
    }
    if (cutting.minorUnits() < 0) {
      throw new IllegalArgumentException(
          "cutting must not cost less than nothing, but was " + cutting.plain());
    }
  }

  /** The sheet as it is. */
  public static Breakdown whole(SheetStock stock) {
    return new Breakdown(List.of(new Panel(stock, 1)), 0, Money.ZERO);
  }

  /** Whether the store cuts the sheet. */
  public boolean isRipped() {
    return cuts > 0;
  }
}
