package curvestock.helix.clearance;

import curvestock.helix.spec.Vehicle;
import curvestock.units.Length;

/**
 * How far a vehicle on a curve reaches beyond where it would on straight track (derived). Inside,
 * at its middle: R − √(R² − (a/2)²). Outside, at its ends: √((R − inside + w/2)² + (L/2)²) − (R +
 * w/2).
 *
 * @param vehicle the vehicle
 * @param radius centre-line radius of the track
 */
public record Overhang(Vehicle vehicle, Length radius) {

  /**
   * Checks that the vehicle can stand on the curve at all.
   *
   * @throws IllegalArgumentException if the trucks are further apart than the curve is wide
   */
  public Overhang {
    if (vehicle.truckCentres().compareTo(radius.times(2)) >= 0) {
      throw new IllegalArgumentException(
          "truck centres must be less than the diameter of the curve ("
              + radius.times(2)
              + "), but were "
              + vehicle.truckCentres());
    }
  }

  public Length inside() {
    double r = radius.millimetres();
    double half = vehicle.truckCentres().millimetres() / 2;
    return Length.ofMillimetres(r - Math.sqrt(r * r - half * half));
  }

  public Length outside() {
    double halfWidth = vehicle.width().millimetres() / 2;
    double r = radius.millimetres();
    double side = r - inside().millimetres() + halfWidth;
    return Length.ofMillimetres(
        Math.hypot(side, vehicle.length().millimetres() / 2) - (r + halfWidth));
  }

  /** From the track's centre line to the innermost point of the vehicle. */
  public Length innerReach() {
    return vehicle.width().times(0.5).plus(inside());
  }

  /** From the track's centre line to the outermost point of the vehicle. */
  public Length outerReach() {
    return vehicle.width().times(0.5).plus(outside());
  }
}
