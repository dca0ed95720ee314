package curvestock.report;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.VerdictWords;
import curvestock.job.Job;
import curvestock.plan.Plan;
import java.util.List;
import java.util.Optional;

/**
 * All there is to say about a whole helix.
 *
 * @param job that asks for it
 * @param order the helix, and what was assumed
 * @param sheets how its pieces are cut, if that is planned
 * @param rough whether the sheets were planned in haste, only to know about how many are needed;
 *     the cut layouts are then not to be referred to
 */
public record HelixReport(Job job, HelixOrder order, Optional<Plan> sheets, boolean rough) {

  public HelixPlan plan() {
    return order.plan();
  }

  /** One verdict a rule. */
  public List<Verdict> verdicts() {
    return plan().advice();
  }

  /** How to tell them. */
  public VerdictWords words() {
    return new VerdictWords(job.style());
  }

  /** Whether no rule fails. */
  public boolean works() {
    return plan().works();
  }
}
