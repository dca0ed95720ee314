package curvestock.helix.clearance;

import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.CurveWidening;
import curvestock.helix.standard.CurveWidening.VehicleGroup;
import curvestock.helix.standard.Sourced;
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
      if (passes(spec, tried)) {
        passes = length;
      } else {
        fails = length;
      }
    }
    return Optional.of(Length.ofMillimetres(passes)).filter(length -> length.millimetres() > 1);
  }

  private static boolean passes(HelixSpec spec, Vehicle car) {
    GroundPlan ground = spec.ground();
    Overhang inner = new Overhang(car, ground.innerTrack());
    Overhang outer = new Overhang(car, ground.outerTrack());
    Length spare = spec.traffic().spare();
    Length room = ground.sideMargin().minus(spec.supports().riser().reachFromEdge());
    boolean beside =
        ground
            .trackSpacing()
            .map(
                spacing ->
                    inner.outerReach().plus(outer.innerReach()).plus(spare).compareTo(spacing) <= 0)
            .orElse(true);
    return beside
        && inner.innerReach().plus(spare).compareTo(room) <= 0
        && outer.outerReach().plus(spare).compareTo(room) <= 0;
  }

  /**
   * The group of the longest cars that pass the supports; empty if the standard has no figure here,
   * or none passes.
   */
  public static Optional<VehicleGroup> group(HelixSpec spec) {
    Length room = spec.ground().sideMargin().minus(spec.supports().riser().reachFromEdge());
    return Stream.of(VehicleGroup.C, VehicleGroup.B, VehicleGroup.A)
        .filter(
            group -> wanted(spec, group).filter(width -> room.compareTo(width) >= 0).isPresent())
        .findFirst();
  }

  private static Optional<Length> wanted(HelixSpec spec, VehicleGroup group) {
    Optional<Length> half = CurveWidening.straightHalfWidth(spec.scale()).map(Sourced::value);
    Optional<Length> more =
        CurveWidening.eachSide(spec.scale(), spec.ground().innerTrack(), group).map(Sourced::value);
    return half.flatMap(straight -> more.map(straight::plus));
  }
}
