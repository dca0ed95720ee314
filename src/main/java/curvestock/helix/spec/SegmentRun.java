package curvestock.helix.spec;

import curvestock.units.Angle;

/**
 * Pieces of one angle that follow each other.
 *
 * @param count how many
 * @param segment swept angle of each
 */
public record SegmentRun(int count, Angle segment) {

  private static final int MOST = 10_000;

  /**
   * Checks the values.
   *
   * @throws IllegalArgumentException if the count is not 1 to 10,000, or the angle not above 0
   */
  public SegmentRun {
    if (count < 1 || count > MOST) {
      throw new IllegalArgumentException("count must be 1 to " + MOST + ", but was " + count);
    }
    if (!(segment.degrees() > 0)) {
      throw new IllegalArgumentException("segment angle must be above 0, but was " + segment);
    }
  }

  /** Angle of all of them, in degrees. */
  public double degrees() {
    return count * segment.degrees();
  }
}
