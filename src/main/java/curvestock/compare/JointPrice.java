package curvestock.compare;

import curvestock.job.Rates;
import curvestock.units.Money;

/**
 * What one joint costs in time and parts: whole cents, the same in every size, so that a reader who
 * multiplies it by the joints finds the sum that is printed. Glue, a cent or two a joint, is left
 * to the shopping list.
 *
 * @param time and whatever else the rates say; a share of a sheet where they say nothing
 * @param parts plates and screws that are bought, where the rates say nothing of them
 * @param assumed whether the user left it open, so that a share of a sheet's price stands for it
 */
public record JointPrice(Money time, Money parts, boolean assumed) {

  /**
   * A joint left open is taken at this part of a sheet: without any price for it, ever smaller
   * pieces would win, which no builder wants. Common practice, no source.
   */
  public static final int JOINTS_PER_SHEET = 20;

  static JointPrice of(Designs designs) {
    Rates rates = designs.job().rates();
    boolean partsGiven = rates.partsPerJoint().compareTo(Money.ZERO) > 0;
    Money parts = partsGiven ? Money.ZERO : designs.boughtPerJoint();
    return rates.minutesPerJoint().isPresent() || partsGiven
        ? new JointPrice(rates.partsPerJoint().plus(WorkCost.timeOfJoint(rates)), parts, false)
        : new JointPrice(
            new Money(designs.mainSheet().price().minorUnits() / JOINTS_PER_SHEET), parts, true);
  }

  /** All of it. */
  public Money each() {
    return time.plus(parts);
  }
}
