package curvestock.compare;

/** Where the joints of successive turns fall, within a layer. */
public enum JointLine {
  /** Each above the one below: the same supports carry all joints of a column. */
  IN_LINE,
  /** Half a piece on: as in brickwork. */
  STAGGERED_BY_HALF,
  /** Some above each other, some not. */
  PARTLY_IN_LINE,
  /** Some other part of a piece on. */
  WANDERING,
  /** There is no second turn with a joint. */
  NONE_ABOVE
}
