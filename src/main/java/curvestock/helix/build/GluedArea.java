package curvestock.helix.build;

import curvestock.units.LengthStyle;

/** How much glue an area takes: white glue, one side spread; common practice, no source. */
public final class GluedArea {

  private static final double GRAMS_PER_SQUARE_METRE = 200;
  private static final double SQUARE_MM_PER_SQUARE_M = 1e6;

  /** The same for people, in the units that they weigh and measure in. */
  private static final String METRIC = "200 g per square metre (rule of thumb)";

  /** 200 g are 7.05 oz, a square metre is 10.76 square feet. */
  private static final String IMPERIAL = "0.66 oz per square foot (rule of thumb)";

  private GluedArea() {}

  /** How much an area takes, in words. */
  public static String words(LengthStyle style) {
    return style.unit().isImperial() ? IMPERIAL : METRIC;
  }

  /** Grams for an area in square millimetres. */
  public static double grams(double area) {
    return area / SQUARE_MM_PER_SQUARE_M * GRAMS_PER_SQUARE_METRE;
  }
}
