package curvestock.units;

/**
 * A part of a whole, or a slope: 0.0248 is 2.48 %.
 *
 * @param part as a plain ratio; finite
 */
public record Share(double part) implements Quantity {

  /**
   * @throws IllegalArgumentException if the value is not a finite number
   */
  public Share {
    if (!Double.isFinite(part)) {
      throw new IllegalArgumentException("share must be a finite number, but was " + part);
    }
  }

  /** The part in hundredths: 2.48 for 0.0248. */
  public double percent() {
    return part * 100;
  }
}
