package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.job.Job;
import curvestock.plan.Plan;
import java.util.List;
import java.util.Optional;

/**
 * A whole helix: whether it works, and everything to build it from.
 *
 * @param order the helix itself
 * @param verdicts a verdict for each rule
 * @param checks the same as a table
 * @param figures the figures that people ask for first, in one row
 * @param tracks a row for each track, inner first
 * @param budgets where the height between turns goes, a row for each item, what is free last
 * @param kinds a row for each kind of roadbed piece
 * @param schedule a row for each piece of roadbed, from the bottom up
 * @param supports a row for each turn at each station
 * @param heights the undersides by station and turn, to check with a ruler
 * @param joints a row for each joint
 * @param blocks riser blocks that are cut alike; empty if none are
 * @param rods the rods of each station; empty if there are none
 * @param bridges what carries the roadbed over supports that are left out; empty if none are
 * @param cuttingList what is cut from each board or rod; empty where risers come from the sheets
 * @param assumed what the job left open
 * @param costOfAssumed what of it passes no check and what plywood it costs
 */
public record Building(
    HelixOrder order,
    List<Verdict> verdicts,
    Table checks,
    Table figures,
    Table tracks,
    Table budgets,
    Table kinds,
    Table schedule,
    Table supports,
    Table heights,
    Table joints,
    Table blocks,
    Table bySupport,
    Table rods,
    Table bridges,
    Table cuttingList,
    Table assumed,
    AssumedCost costOfAssumed) {

  static Building of(Job job, HelixOrder order, Optional<Plan> cut) {
    List<Verdict> verdicts = order.verdicts();
    Figures figures = Heading.of(job).figures();
    HelixTables tables = new HelixTables(order, figures);
    BuildTables build = new BuildTables(order, cut, job.style());
    return new Building(
        order,
        verdicts,
        tables.checks(verdicts),
        tables.figures(),
        tables.tracks(),
        tables.budgets(),
        tables.kinds(),
        build.schedule(),
        build.supports(),
        build.heights(),
        build.joints(),
        build.blocks(),
        build.bySupport(),
        build.rods(),
        build.bridges(),
        build.cuttingList(),
        tables.assumed(),
        new AssumedCost(job, order, figures));
  }

  /**
   * What was assumed and passes no check, and what plywood it costs, in sentences; may be empty.
   */
  public String assumedCost() {
    return costOfAssumed.words();
  }

  public HelixPlan plan() {
    return order.plan();
  }

  /** Whether threaded rods hold it up. */
  public boolean hasRods() {
    return plan().spec().supports().riser() instanceof Riser.ThreadedRods;
  }

  /** Whether no check fails. */
  public boolean works() {
    return count(State.FAIL) == 0;
  }

  /** How many checks came out so. */
  public int count(State state) {
    return (int) verdicts.stream().filter(verdict -> verdict.state() == state).count();
  }
}
