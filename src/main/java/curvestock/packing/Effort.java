package curvestock.packing;

/** How long the search goes on, as a budget of steps (never of seconds, so that results repeat). */
public enum Effort {
  QUICK,
  NORMAL,
  THOROUGH
}
