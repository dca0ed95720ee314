package curvestock.compare;

import curvestock.plan.BatchPlan;
import curvestock.purchase.CostBound;
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

  public Money sheetCost() {
    return batch.plan().purchase().sheetCost().plus(small.extraCost());
  }

  public CostBound bound() {
    return batch.plan().purchase().bound();
  }
}
