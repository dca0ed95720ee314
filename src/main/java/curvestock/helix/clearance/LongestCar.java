package curvestock.helix.clearance;

import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.units.Length;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * How long a car may be to pass the supports, and on two tracks another of its kind: by {@link
 * Overhang} for cars like the longest that the job states, or by the car groups of NEM 103.
 */
public final class LongestCar {

  private static final int HALVINGS = 60;

  private LongestCar() {}

  /**
   * Over the body, as wide as the job's longest vehicle and with its trucks as far apart in
   * proportion; empty if the job states none, or none passes.
   */
  public static Optional<Length> like(HelixSpec spec) {
    return spec.traffic().longest().flatMap(vehicle -> longest(spec, vehicle));
  }

  private static Optional<Length> longest(HelixSpec spec, Vehicle vehicle) {
    double share = vehicle.truckCentres().millimetres() / vehicle.length().millimetres();
    double passes = 0;
    double fails = spec.ground().innerTrack().millimetres() / share;
    for (int i = 0; i < HALVINGS; i++) {
      double length = (passes + fails) / 2;
      Vehicle tried =
          new Vehicle(
              vehicle.height(),
              Length.ofMillimetres(length),
              vehicle.width(),
              Length.ofMillimetres(length * share));
      if (new SideRoom(spec).passes(tried)) {
        passes = length;
      } else {
        fails = length;
      }
    }
    return Optional.of(Length.ofMillimetres(passes)).filter(length -> length.millimetres() > 1);
  }

  /**
   * The group of the longest cars that pass the supports; empty if the standard has no figure here,
   * or none passes.
   */
  public static Optional<VehicleGroup> group(HelixSpec spec) {
    SideRoom room = new SideRoom(spec);
    return Stream.of(VehicleGroup.C, VehicleGroup.B, VehicleGroup.A)
        .filter(
            group ->
                room.wanted(group)
                    .filter(wanted -> room.room().compareTo(wanted.width()) >= 0)
                    .isPresent())
        .findFirst();
  }
}
