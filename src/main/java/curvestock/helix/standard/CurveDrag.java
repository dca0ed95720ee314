package curvestock.helix.standard;

import curvestock.units.Length;

/**
 * What a curve adds to a grade: 0.04 % per degree of curve (railway handbooks).
 *
 * <p>An estimate: the drag of a model is not that of its prototype.
 */
public final class CurveDrag {

  private static final double PERCENT_PER_DEGREE = 0.04;

  /** Radius in feet of a curve of one degree, measured along the arc: 18000/π. */
  private static final double ONE_DEGREE_FEET = 18_000 / Math.PI;

  /** A chord of 100 feet defines the degree of curve by the chord. */
  private static final double HALF_CHORD_FEET = 50;

  private static final double INCHES_PER_FOOT = 12;

  private CurveDrag() {}

  /** The constant k of the rule 'add k/R %' with R in inches: 32 for HO in the hobby's words. */
  public static double constant(Scale scale) {
    return PERCENT_PER_DEGREE * ONE_DEGREE_FEET * INCHES_PER_FOOT / scale.ratio();
  }

  /** Percent to add at the given radius. */
  public static double percent(Scale scale, Length radius) {
    return constant(scale) / radius.inches();
  }

  /** Degrees of curve by the arc for a radius in feet of the prototype: 5729.58/R. */
  public static double degreeByArc(double radiusFeet) {
    return ONE_DEGREE_FEET / radiusFeet;
  }

  /** Radius in feet of the prototype for a degree of curve by the chord: 50/sin(D/2). */
  public static double radiusByChord(double degree) {
    return HALF_CHORD_FEET / Math.sin(Math.toRadians(degree / 2));
  }
}
