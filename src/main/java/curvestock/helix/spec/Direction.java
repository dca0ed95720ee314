package curvestock.helix.spec;

/** Which way round the track climbs, seen from above. */
public enum Direction {
  COUNTER_CLOCKWISE(1),
  CLOCKWISE(-1);

  private final int sign;

  Direction(int sign) {
    this.sign = sign;
  }

  /** +1 for counter-clockwise, −1 for clockwise. */
  public int sign() {
    return sign;
  }
}
