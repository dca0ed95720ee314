package curvestock.helix.build;

/** How much glue an area takes: white glue, one side spread; common practice, no source. */
public final class GluedArea {

  private static final double GRAMS_PER_SQUARE_METRE = 200;
  private static final double SQUARE_MM_PER_SQUARE_M = 1e6;

  private GluedArea() {}

  /** Grams for an area in square millimetres. */
  public static double grams(double area) {
    return area / SQUARE_MM_PER_SQUARE_M * GRAMS_PER_SQUARE_METRE;
  }
}
