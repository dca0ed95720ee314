package curvestock.plan;

import curvestock.packing.Control;

/** Hears how far planning has come, and says whether to stop with the best so far. */
public interface PlanListener extends Control {

  /** Hears nothing, never stops. */
  PlanListener NONE = new PlanListener() {};

  /** A step begins, in plain words, for example {@code packing S on birch 4x8}. */
  default void step(String what) {}

  /** How much of the step's budget is used; it may end early, or begin anew for one piece more. */
  @Override
  default void worked(long done, long budget) {}

  /** Whether to stop now and keep the best so far. */
  @Override
  default boolean stopped() {
    return false;
  }
}
