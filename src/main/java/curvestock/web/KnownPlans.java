package curvestock.web;

import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Plan;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Plans of this run of the server, the best of each job and how hard was searched for it: whoever
 * goes back to what he had, chooses another segment size, or changes only a name, is answered
 * without a search. Beyond a number those that were not asked for longest go.
 */
final class KnownPlans {

  private static final int KEPT = 120;

  /**
   * A plan.
   *
   * @param searched the hardest search that was brought to its end; empty where each was stopped
   */
  record Known(Plan plan, Optional<Effort> searched) {

    boolean isSearched(Effort effort) {
      return searched.filter(done -> done.compareTo(effort) >= 0).isPresent();
    }
  }

  private final Map<String, Known> plans = new LinkedHashMap<>(16, 0.75f, true);

  /**
   * The plan of what {@link JobTrees#planned} gives, for this job: it may be called otherwise than
   * the one that was planned.
   */
  synchronized Optional<Known> find(String planned, Job job) {
    return Optional.ofNullable(plans.get(planned)).flatMap(known -> of(known, job.marked()));
  }

  private static Optional<Known> of(Known known, Job job) {
    Plan plan = known.plan();
    Job before = plan.job();
    boolean same =
        before.sheets().equals(job.sheets())
            && before.cutting().equals(job.cutting())
            && before.demands().equals(job.demands());
    return same
        ? Optional.of(
            new Known(
                new Plan(
                    job,
                    plan.purchase(),
                    plan.layouts(),
                    plan.capacities(),
                    plan.carriedWhole(),
                    plan.obstacles(),
                    plan.stopped(),
                    plan.numbers()),
                known.searched()))
        : Optional.empty();
  }

  /** The plan as it was made, for whom figures are enough. */
  synchronized Optional<Plan> find(String planned) {
    return Optional.ofNullable(plans.get(planned)).map(Known::plan);
  }

  /** Keeps the better of this plan and the one known, and gives it. */
  synchronized Known keep(String planned, Job job, Plan plan, Optional<Effort> searched) {
    Optional<Known> before = find(planned, job);
    Plan best = before.map(Known::plan).filter(known -> !isBetter(plan, known)).orElse(plan);
    Optional<Effort> most =
        before
            .flatMap(Known::searched)
            .filter(done -> searched.isEmpty() || done.compareTo(searched.get()) > 0)
            .or(() -> searched);
    Known kept = new Known(best, most);
    plans.put(planned, kept);
    if (plans.size() > KEPT) {
      plans.remove(plans.keySet().iterator().next());
    }
    return kept;
  }

  /** Whether it costs less, or takes fewer sheets, or leaves as much and was searched later. */
  static boolean isBetter(Plan plan, Plan than) {
    int money = plan.cost().paid().compareTo(than.cost().paid());
    return money < 0 || (money == 0 && plan.layouts().size() <= than.layouts().size());
  }
}
