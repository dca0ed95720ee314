package curvestock.helix.build;

import curvestock.units.Length;

/** Weights of flat wood, in kilograms. */
public record Weight(double woodDensity) {

  private static final double CUBIC_MM_PER_CUBIC_M = 1e9;

  /** Of wood with the given area in square millimetres. */
  public double ofWood(double area, Length thickness) {
    return area * thickness.millimetres() * woodDensity / CUBIC_MM_PER_CUBIC_M;
  }
}
