package curvestock.compare;

import curvestock.plan.BatchPlan;
import curvestock.purchase.Cost;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;

/**
 * One choice of segments for all jobs of a batch, their pieces sharing sheets.
 *
 * @param common the division of all helixes; empty where each has its own best
 * @param divisions of each job's helix, in the order of the jobs; empty for a job without one
 * @param batch the pieces of all together
 * @param small how the small parts lie in what is left over
 * @param joints of all helixes
 */
public record BatchRow(
    Optional<Division> common,
    List<Optional<Division>> divisions,
    BatchPlan batch,
    SmallFit small,
    int joints) {

  public BatchRow {
    divisions = List.copyOf(divisions);
  }

  public int sheets() {
    return batch.plan().purchase().sheets() + small.extraSheets();
  }

  /** What all sheets cost, and what no layouts can go below. */
  public Cost cost() {
    return batch.plan().cost().plus(small.extraCost());
  }

  /** What is paid for all sheets. */
  public Money sheetCost() {
    return cost().paid();
  }
}
