package curvestock.compare;

import curvestock.job.Rates;
import curvestock.units.Length;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * What cutting and joining cost at the user's own rates. A rate that he does not give costs nothing
 * here, and the report says that it was left out.
 *
 * @param cutMinutes time to cut all pieces; empty without a feed
 * @param cutting price of that time: machine and his own
 * @param eachJoint price of one joint: parts and his own time
 * @param parts known prices of plates, screws and glue that are bought, where the rates say nothing
 *     of them
 */
public record WorkCost(OptionalDouble cutMinutes, Money cutting, Money eachJoint, Money parts) {

  private static final int MINUTES_PER_HOUR = 60;

  static WorkCost of(Rates rates, Design design) {
    Length cutLength = Length.ofMillimetres(design.cutMillimetres());
    Money knownParts = design.parts().known();
    OptionalDouble minutes =
        rates.feedPerMinute().isPresent()
            ? OptionalDouble.of(cutLength.millimetres() / rates.feedPerMinute().get().millimetres())
            : OptionalDouble.empty();
    Money parts = rates.partsPerJoint().equals(Money.ZERO) ? knownParts : Money.ZERO;
    Money hour = rates.machinePerHour().plus(rates.ownTimePerHour());
    return new WorkCost(minutes, price(hour, minutes), eachJoint(rates), parts);
  }

  /** Price of one joint. */
  static Money eachJoint(Rates rates) {
    return rates.partsPerJoint().plus(price(rates.ownTimePerHour(), rates.minutesPerJoint()));
  }

  private static Money price(Money hour, OptionalDouble minutes) {
    BigDecimal units =
        BigDecimal.valueOf(hour.minorUnits())
            .multiply(BigDecimal.valueOf(minutes.orElse(0)))
            .divide(BigDecimal.valueOf(MINUTES_PER_HOUR), 0, RoundingMode.HALF_UP);
    return new Money(units.longValueExact());
  }
}
