package curvestock.packing;

/** How long the search goes on, as a budget of steps (never of seconds, so that results repeat). */
public enum Effort {
  /** The least: for a first answer. */
  QUICK,
  /** What a job gets that asks for nothing else. */
  NORMAL,
  /** The most, in the search as in proofs. */
  THOROUGH
}
