package curvestock.compare;

import curvestock.job.Batch;
import curvestock.units.Money;
import java.util.List;
import java.util.Optional;

/**
 * Several jobs compared together.
 *
 * @param apart each job compared by itself, in their order; empty for a job without a helix
 * @param apartSheets sheets of all jobs planned apart, each in its own best segments
 * @param apartCost their price
 * @param rows choices for all jobs together; the last one is each in its own best
 * @param best index of the cheapest row, joints included
 * @param joint what a joint is taken to cost
 * @param stopped whether it was stopped before its end
 */
public record BatchComparison(
    Batch batch,
    List<Optional<Comparison>> apart,
    int apartSheets,
    Money apartCost,
    List<BatchRow> rows,
    int best,
    JointPrice joint,
    boolean stopped) {

  public BatchComparison {
    apart = List.copyOf(apart);
    rows = List.copyOf(rows);
  }
}
