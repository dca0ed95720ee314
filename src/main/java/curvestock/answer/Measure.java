package curvestock.answer;

/**
 * What a column of a table holds, which says how it is rounded, in which unit and how it stands.
 */
public enum Measure {
  TEXT(false),
  COUNT(true),
  /** A length that was worked out: shown as finely as anybody can cut. */
  LENGTH(true),
  /**
   * A length that many parts are sawn to: in 64ths, since its rounding adds up from part to part.
   */
  SAWN(true),
  /** A length that somebody measured or chose, which rounding would falsify. */
  GIVEN_LENGTH(true),
  /** What is left over, of wood or of height: rounded down. */
  OFFCUT(true),
  /** A length too long for a ruler: feet or metres. */
  RUN(true),
  /** A direction or a segment, in degrees. */
  ANGLE(true),
  /** An angle in full turns. */
  TURNS(true),
  /** A slope or a part of a whole, in per cent. */
  SHARE(true),
  WEIGHT(true),
  MONEY(true),
  /** Minutes of work. */
  MINUTES(true);

  private final boolean number;

  Measure(boolean number) {
    this.number = number;
  }

  /** Whether its cells are numbers, which stand flush right. */
  public boolean isNumber() {
    return number;
  }
}
