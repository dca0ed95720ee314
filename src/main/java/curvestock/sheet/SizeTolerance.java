package curvestock.sheet;

import curvestock.units.Length;

/**
 * How much less than its stated size a sheet may measure, along and across.
 *
 * @param shortBy zero for a sheet that was measured
 * @param source who says so, for a sentence
 */
public record SizeTolerance(Length shortBy, String source) {

  /** Nothing: the size was measured. */
  public static final SizeTolerance NONE = new SizeTolerance(Length.ZERO, "as measured");

  /** PS 1-19, 5.10.1: plus nothing, less 1/16 in of the length and width stated. */
  public static final SizeTolerance INCHES = new SizeTolerance(Length.ofInches(0.0625), "PS 1-19");

  /** EN 315:2000: 3.5 mm more or less; from memory. */
  public static final SizeTolerance METRIC =
      new SizeTolerance(Length.ofMillimetres(3.5), "EN 315, as quoted elsewhere");

  /**
   * @throws IllegalArgumentException if the length is below zero
   */
  public SizeTolerance {
    shortBy.requireNotNegative("tolerance of a sheet's size");
  }

  public boolean isNone() {
    return shortBy.equals(Length.ZERO);
  }

  /** The smallest sheet that may come; of one that is no plain rectangle nothing is known. */
  public SheetStock smallest(SheetStock sheet) {
    if (isNone() || !sheet.isRectangle() || !sheet.defects().isEmpty()) {
      return sheet;
    }
    return new SheetStock(
        sheet.name(),
        SheetStock.rectangleOutline(sheet.length().minus(shortBy), sheet.width().minus(shortBy)),
        sheet.defects(),
        sheet.thickness(),
        sheet.nominalThickness(),
        sheet.price(),
        sheet.available(),
        sheet.grain());
  }
}
