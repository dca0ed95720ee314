package curvestock.job;

import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the user says that cutting and joining cost him; nothing here is assumed for him.
 *
 * @param feedPerMinute length cut in a minute, all passes counted
 * @param markingPerMinute length marked or engraved in a minute; empty: as fast as it cuts
 * @param liftingPerMinute way with the tool lifted in a minute; empty: as fast as it cuts
 * @param machinePerHour price of an hour of cutting, for a hired machine; zero if not given
 * @param ownTimePerHour what the builder's own hour is worth to him; zero if not given
 * @param minutesPerJoint time to fit one joint
 * @param partsPerJoint screws and glue of one joint; zero if not given
 * @param offcutsWorth what wood kept for the next job is worth, as a share of what it cost, 0 to 1;
 *     zero if not given
 * @param openings what every piece must pass or lie on: router's bed, car, door
 */
public record Rates(
    Optional<Length> feedPerMinute,
    Optional<Length> markingPerMinute,
    Optional<Length> liftingPerMinute,
    Money machinePerHour,
    Money ownTimePerHour,
    OptionalDouble minutesPerJoint,
    Money partsPerJoint,
    double offcutsWorth,
    List<Opening> openings) {

  /** No rates: only sheets cost money, and every piece can be carried. */
  public static final Rates NONE =
      new Rates(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Money.ZERO,
          Money.ZERO,
          OptionalDouble.empty(),
          Money.ZERO,
          0,
          List.of());

  /**
   * A rectangle that a flat piece must lie in.
   *
   * @param name what it is, for a sentence: {@code the router's bed}
   */
  public record Opening(String name, Length length, Length width) {}

  /**
   * @throws IllegalArgumentException if a price is below zero, the feed not above zero, or the time
   *     of a joint below zero
   */
  public Rates {
    openings = List.copyOf(openings);
    feedPerMinute.ifPresent(feed -> feed.requirePositive("feed per minute"));
    markingPerMinute.ifPresent(speed -> speed.requirePositive("marking per minute"));
    liftingPerMinute.ifPresent(speed -> speed.requirePositive("lifting per minute"));
    requireNotNegative("machine per hour", machinePerHour);
    requireNotNegative("own time per hour", ownTimePerHour);
    requireNotNegative("parts per joint", partsPerJoint);
    if (!(offcutsWorth >= 0 && offcutsWorth <= 1)) {
      throw new IllegalArgumentException(
          "offcuts' worth must be from 0 to 1, but was " + offcutsWorth);
    }
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
    boolean keeping = offcutsWorth > 0;
    return cutting || joining || keeping || partsPerJoint.compareTo(Money.ZERO) > 0;
  }
}
