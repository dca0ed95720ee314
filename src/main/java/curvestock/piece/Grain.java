package curvestock.piece;

import curvestock.units.Angle;

/**
 * Which directions of the sheet's face grain a piece allows: those within {@code within} of {@code
 * direction}, both ways along it, measured in the piece's own frame. A full 90° leaves it free.
 */
public record Grain(Angle direction, Angle within) {

  /** Any direction will do, as is usual for plywood arcs. */
  public static final Grain FREE = new Grain(Angle.ofDegrees(0), Angle.ofDegrees(90));

  /**
   * @throws IllegalArgumentException if {@code within} is not between 0° and 90°
   */
  public Grain {
    if (!(within.degrees() >= 0 && within.degrees() <= 90)) {
      throw new IllegalArgumentException(
          "grain must be within 0° to 90° of a direction, but was " + within);
    }
  }

  public boolean isFree() {
    return within.degrees() >= 90;
  }

  /**
   * Whether a piece turned by {@code rotation} radians is allowed on a sheet whose grain runs at
   * {@code sheetGrain} radians; a ten-thousandth of a degree is forgiven, for rounding in files.
   */
  public boolean allows(double rotation, double sheetGrain) {
    double off = direction.radians() + rotation - sheetGrain;
    off = Math.abs(off - Math.PI * Math.rint(off / Math.PI));
    return isFree() || off <= within.radians() + Math.toRadians(1e-4);
  }
}
