package curvestock.helix.spec;

import curvestock.helix.standard.HeightStandard;
import curvestock.units.Length;
import java.util.Optional;

/**
 * What has to pass, and how much room it and the builder are to have.
 *
 * @param tallest height above the rail tops of the tallest vehicle, if known
 * @param longest the longest vehicle, if known
 * @param trainLength longest train, if known
 * @param spare height to keep above the tallest vehicle, and width beside every vehicle
 * @param heights published heights to compare with
 * @param opening least width that a person needs to get inside
 */
public record Traffic(
    Optional<Length> tallest,
    Optional<Vehicle> longest,
    Optional<Length> trainLength,
    Length spare,
    HeightStandard heights,
    Length opening) {

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if a height or length is not above zero, or spare or opening
   *     are below zero
   */
  public Traffic {
    tallest.ifPresent(length -> length.requirePositive("tallest vehicle"));
    trainLength.ifPresent(length -> length.requirePositive("train length"));
    spare.requireNotNegative("spare");
    opening.requireNotNegative("opening");
  }

  /** The tallest height known: the one stated or the longest vehicle's, whichever is more. */
  public Optional<Length> tallestKnown() {
    Optional<Length> ofLongest = longest.map(Vehicle::height);
    if (tallest.isPresent() && ofLongest.isPresent()) {
      return tallest.get().compareTo(ofLongest.get()) >= 0 ? tallest : ofLongest;
    }
    return tallest.or(() -> ofLongest);
  }
}
