package curvestock.fuzz;

/** What may become of a hostile input. Anything else is a fault of ours. */
public enum Outcome {
  /** Not a job, not a drawing: refused with places or reasons. */
  REFUSED,
  /** A job that cannot be cut, a drawing that is wrong: said in words. */
  ANSWERED_NO,
  /** A good job or drawing. */
  GOOD,
  /** A good job whose plan was made and whose every drawing passed its check. */
  PLANNED
}
