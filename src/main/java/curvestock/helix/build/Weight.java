package curvestock.helix.build;

import curvestock.units.Length;

/** Weights of flat wood and round iron, in kilograms. */
public record Weight(double woodDensity) {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  /** Density of steel in kg/m³, as in any engineer's table (from memory). */
  private static final double STEEL = 7850;

  /** Of wood with the given area in square millimetres. */
  public double ofWood(double area, Length thickness) {
    return area * thickness.millimetres() * woodDensity / CUBIC_MM_PER_CUBIC_M;
  }

  /** Of a threaded rod, taken as a full cylinder: errs high by what the thread leaves out. */
  public static double ofRod(Length diameter, Length length) {
    double radius = diameter.millimetres() / 2;
    return Math.PI * radius * radius * length.millimetres() * STEEL / CUBIC_MM_PER_CUBIC_M;
  }
}
