package curvestock.helix.course;

import curvestock.units.Angle;
import curvestock.units.Length;

/**
 * What the slope does to a flat pattern: one turn of a helix bends flat to the radius R + c²/R with
 * c = rise/2π, and falls a little short of a whole turn (derived: the curvature of a helix is R/(R²
 * + c²)).
 */
public record UnrolledTurn(Length radius, Length risePerTurn) {

  /** Less than this nobody follows with a saw: our own choice. */
  private static final Length NOTICEABLE = Length.ofInches(1.0 / 32);

  private double pitch() {
    return risePerTurn.millimetres() / (2 * Math.PI);
  }

  /** How much larger than the plan's the flat pattern's radius is: c²/R. */
  public Length growth() {
    return Length.ofMillimetres(pitch() * pitch() / radius.millimetres());
  }

  /** Angle of the flat pattern that makes one turn: 2πR/√(R² + c²). */
  public Angle anglePerTurn() {
    double r = radius.millimetres();
    return Angle.ofRadians(2 * Math.PI * r / Math.hypot(r, pitch()));
  }

  /** Whether it is worth a thought. */
  public boolean isNegligible() {
    return growth().compareTo(NOTICEABLE) < 0;
  }
}
