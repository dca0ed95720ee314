package curvestock.compare;

import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import curvestock.units.TaxRate;

/**
 * What regular patterns say of a choice at once. The purchase is a reckoning, neither a bound nor a
 * plan: all pieces of the job on sheets as full as the pattern, whole sheets of the main stock.
 *
 * @param pieces wanted for the whole helix
 * @param perSheet how many a lattice lays on the main sheet; 0 if none fits
 * @param sheets about how many of the main sheet hold everything; 0 if none is known to
 * @param sheetCost about what is paid for them, tax included
 * @param joints between the pieces of the helix
 * @param longest longer side of the largest piece's rectangle
 */
public record FirstLook(
    Angle angle,
    int pieces,
    int perSheet,
    int sheets,
    Money sheetCost,
    int joints,
    Length longest) {

  static FirstLook of(Design design, SheetStock main, Layout pattern, TaxRate tax) {
    double wood =
        design.job().demands().stream()
            .filter(demand -> design.job().suits(demand.piece(), main))
            .mapToDouble(FirstLook::area)
            .sum();
    double onOne = pattern.pieceArea();
    int sheets = onOne > 0 ? (int) Math.ceil(wood / onOne - ROUNDING) : 0;
    return new FirstLook(
        design.division().largest(),
        design.pieces(),
        pattern.placements().size(),
        sheets,
        tax.gross(main.price().times(sheets)),
        design.parts().joints(),
        design.largest().length());
  }

  /** A pattern that holds exactly all of them is one sheet, not a hair more. */
  private static final double ROUNDING = 1e-9;

  private static double area(Demand demand) {
    return demand.count() * demand.piece().shape().area();
  }

  public double turnsPerSheet() {
    return perSheet * angle.degrees() / 360;
  }
}
