package curvestock.compare;

import curvestock.units.Angle;

/** Where the joints of successive turns fall when equal pieces are laid end to end. */
public enum JointLine {
  /** Each above the one below: the same supports carry all joints of a column. */
  IN_LINE,
  /** Half a piece on: as in brickwork. */
  STAGGERED_BY_HALF,
  /** Some other part of a piece on. */
  WANDERING;

  private static final double TOLERANCE = 1e-6;

  public static JointLine of(Angle segment) {
    double perTurn = 360 / segment.degrees();
    double beyond = Math.abs(perTurn - Math.rint(perTurn));
    if (beyond < TOLERANCE) {
      return IN_LINE;
    }
    return Math.abs(beyond - 0.5) < TOLERANCE ? STAGGERED_BY_HALF : WANDERING;
  }
}
