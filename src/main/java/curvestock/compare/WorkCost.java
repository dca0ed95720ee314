package curvestock.compare;

import curvestock.job.Rates;
import curvestock.units.Length;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;

/**
 * What cutting and joining cost at the user's own rates. Cutting without a rate costs nothing here,
 * and the report says that it was left out.
 *
 * @param cutMinutes time to cut all pieces; empty without a feed
 * @param cutting price of that time: machine and his own
 * @param eachJoint price of one joint, as {@link JointPrice} has it
 */
public record WorkCost(OptionalDouble cutMinutes, Money cutting, Money eachJoint) {

  private static final int MINUTES_PER_HOUR = 60;

  static WorkCost of(Rates rates, Design design, JointPrice joint) {
    Length cutLength = Length.ofMillimetres(design.cutMillimetres());
    OptionalDouble minutes =
        rates.feedPerMinute().isPresent()
            ? OptionalDouble.of(cutLength.millimetres() / rates.feedPerMinute().get().millimetres())
            : OptionalDouble.empty();
    Money hour = rates.machinePerHour().plus(rates.ownTimePerHour());
    return new WorkCost(minutes, price(hour, minutes), joint.each());
  }

  /** Price of the time that one joint takes. */
  static Money timeOfJoint(Rates rates) {
    return price(rates.ownTimePerHour(), rates.minutesPerJoint());
  }

  private static Money price(Money hour, OptionalDouble minutes) {
    BigDecimal units =
        BigDecimal.valueOf(hour.minorUnits())
            .multiply(BigDecimal.valueOf(minutes.orElse(0)))
            .divide(BigDecimal.valueOf(MINUTES_PER_HOUR), 0, RoundingMode.HALF_UP);
    return new Money(units.longValueExact());
  }
}
