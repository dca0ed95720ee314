package curvestock.purchase;

import curvestock.sheet.SheetStock;

/**
 * What a bought sheet is cut from: the whole sheet, or one of the panels that the store rips it
 * into.
 *
 * @param stock the panel as a sheet of its own, at the least size it may turn out
 * @param perSheet how many such panels one bought sheet gives
 */
public record Panel(SheetStock stock, int perSheet) {

  /**
   * @throws IllegalArgumentException if {@code perSheet} is below 1
   */
  public Panel {
    if (perSheet < 1) {
      throw new IllegalArgumentException(
          "a sheet must give at least 1 of each panel, but %s was given %s times"
              .formatted(stock.name(), perSheet));
    }
  }
}
