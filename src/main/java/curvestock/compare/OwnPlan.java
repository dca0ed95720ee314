package curvestock.compare;

import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;

/**
 * The plan of the size that the job itself cuts, as it is printed: the row of that size in a
 * comparison shows this plan, and no other search of its own.
 */
@FunctionalInterface
public interface OwnPlan {

  /**
   * The plan; made now, or before.
   *
   * @throws Infeasible if the job cannot be cut from its sheets
   */
  Plan plan(PlanListener listener) throws Infeasible;
}
