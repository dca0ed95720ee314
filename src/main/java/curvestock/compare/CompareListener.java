package curvestock.compare;

import curvestock.plan.PlanListener;
import java.util.List;

/** Hears how far a comparison has come; can stop it with what has been compared so far. */
public interface CompareListener extends PlanListener {

  /** Hears nothing, never stops. */
  CompareListener NONE = new CompareListener() {};

  /** The first numbers, by lattices alone, long before the plans are ready. */
  default void firstLook(List<SizeLook> looks) {}

  /**
   * The choices as planned, and the recommendation, before it is known how far they hold. The
   * comparison goes on when this returns.
   */
  default void choices(Comparison soFar) {}

  /** How much of the whole comparison is done, from 0 to 1: an estimate. */
  default void overall(double share) {}
}
