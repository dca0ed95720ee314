package curvestock.job;

import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the user says that cutting and joining cost him; nothing here is assumed for him.
 *
 * @param feedPerMinute length cut in a minute, all passes counted
 * @param machinePerHour price of an hour of cutting, for a hired machine; zero if not given
 * @param ownTimePerHour what the builder's own hour is worth to him; zero if not given
 * @param minutesPerJoint time to fit one joint
 * @param partsPerJoint screws and glue of one joint; zero if not given
 * @param largestPiece the opening (door, car, router's bed) that every piece must pass
 */
public record Rates(
    Optional<Length> feedPerMinute,
    Money machinePerHour,
    Money ownTimePerHour,
    OptionalDouble minutesPerJoint,
    Money partsPerJoint,
    Optional<Opening> largestPiece) {

  /** No rates: only sheets cost money, and every piece can be carried. */
  public static final Rates NONE =
      new Rates(
          Optional.empty(),
          Money.ZERO,
          Money.ZERO,
          OptionalDouble.empty(),
          Money.ZERO,
          Optional.empty());

  /** A rectangle that a flat piece must lie in. */
  public record Opening(Length length, Length width) {}

  /**
   * @throws IllegalArgumentException if a price is below zero, the feed not above zero, or the time
   *     of a joint below zero
   */
  public Rates {
    feedPerMinute.ifPresent(feed -> feed.requirePositive("feed per minute"));
    requireNotNegative("machine per hour", machinePerHour);
    requireNotNegative("own time per hour", ownTimePerHour);
    requireNotNegative("parts per joint", partsPerJoint);
    if (minutesPerJoint.isPresent() && !(minutesPerJoint.getAsDouble() >= 0)) {
      throw new IllegalArgumentException(
          "minutes per joint must not be negative, but was " + minutesPerJoint.getAsDouble());
    }
  }

  private static void requireNotNegative(String what, Money money) {
    if (money.minorUnits() < 0) {
      throw new IllegalArgumentException(what + " must not be negative, but was " + money.plain());
    }
  }

  /** Whether any of them makes a choice dearer than its sheets. */
  public boolean costSomething() {
    boolean cutting =
        feedPerMinute.isPresent() && machinePerHour.plus(ownTimePerHour).compareTo(Money.ZERO) > 0;
    boolean joining = minutesPerJoint.isPresent() && ownTimePerHour.compareTo(Money.ZERO) > 0;
    return cutting || joining || partsPerJoint.compareTo(Money.ZERO) > 0;
  }
}
