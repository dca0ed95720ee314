package curvestock.units;

/**
 * A unit of length with its exact size in millimetres (1 in = 25.4 mm by international definition).
 */
public enum LengthUnit {
  MILLIMETRE(1.0, "mm"),
  CENTIMETRE(10.0, "cm"),
  METRE(1000.0, "m"),
  INCH(25.4, "in"),
  FOOT(304.8, "ft");

  private final double millimetres;
  private final String symbol;

  LengthUnit(double millimetres, String symbol) {
    this.millimetres = millimetres;
    this.symbol = symbol;
  }

  /** How many millimetres one of this unit is. */
  public double millimetres() {
    return millimetres;
  }

  /** The symbol printed after a number, for example {@code in}. */
  public String symbol() {
    return symbol;
  }

  /** Whether this is an inch or a foot. */
  public boolean isImperial() {
    return this == INCH || this == FOOT;
  }
}
