package curvestock.compare;

import curvestock.job.Rates;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;

/**
 * What one joint costs in time and parts.
 *
 * @param assumed whether the user left it open, so that a share of a sheet's price stands for it
 */
public record JointPrice(Money each, boolean assumed) {

  /**
   * A joint left open is taken at this part of a sheet: without any price for it, ever smaller
   * pieces would win, which no builder wants. Common practice, no source.
   */
  public static final int JOINTS_PER_SHEET = 20;

  static JointPrice of(Rates rates, SheetStock main) {
    boolean given =
        rates.minutesPerJoint().isPresent() || rates.partsPerJoint().compareTo(Money.ZERO) > 0;
    return given
        ? new JointPrice(WorkCost.eachJoint(rates), false)
        : new JointPrice(new Money(main.price().minorUnits() / JOINTS_PER_SHEET), true);
  }
}
