package curvestock.compare;

import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.plan.BatchPlan;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.Planner;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Compares segments for several jobs whose pieces share sheets: each job by itself first, then all
 * together, in each angle that suits all of them and each in its own best.
 */
public final class BatchComparer {

  private final Batch batch;
  private final Question question;
  private final CompareListener listener;
  private final Packers packers;

  public BatchComparer(Batch batch, Question question, CompareListener listener, Packers packers) {
    this.batch = batch;
    this.question = question;
    this.listener = listener;
    this.packers = packers;
  }

  /**
   * The comparison; when stopped, of what was planned until then.
   *
   * @throws Infeasible if a job cannot be cut in any of the angles, or none of the jobs has a helix
   */
  public BatchComparison compare() throws Infeasible {
    List<Optional<Comparison>> apart = new ArrayList<>();
    int sheets = 0;
    Money cost = Money.ZERO;
    for (Batch.Member member : batch.members()) {
      listener.overall(0.6 * apart.size() / batch.members().size());
      listener.step("job " + member.tag() + ", " + member.job().title());
      Optional<Comparison> alone = alone(member.job());
      if (alone.isPresent()) {
        SegmentOption best = alone.get().best().orElseThrow();
        sheets += best.sheets();
        cost = cost.plus(best.sheetCost());
      } else {
        Plan plan = new Planner(quick(member.job()), listener, packers).planRoughly();
        sheets += plan.purchase().sheets();
        cost = cost.plus(plan.cost().paid());
      }
      apart.add(alone);
    }
    if (apart.stream().allMatch(Optional::isEmpty)) {
      throw new Infeasible(
          List.of(
              "None of these jobs has a `helix:` block, so there are no segment sizes to compare."));
    }
    JointPrice joint = joint(apart);
    List<BatchRow> rows = rows(apart);
    int best =
        IntStream.range(0, rows.size())
            .boxed()
            .min(
                Comparator.comparing((Integer i) -> total(rows.get(i), joint))
                    .thenComparing(i -> rows.get(i).joints()))
            .orElseThrow();
    return new BatchComparison(batch, apart, sheets, cost, rows, best, joint, listener.stopped());
  }

  /** As the first helix has it. */
  private JointPrice joint(List<Optional<Comparison>> apart) {
    Job first = apart.stream().flatMap(Optional::stream).findFirst().orElseThrow().job();
    return JointPrice.of(Designs.of(first).on(job()));
  }

  private Optional<Comparison> alone(Job job) throws Infeasible {
    boolean helix = job.helix().isPresent() || job.structure().isPresent();
    Question plain = new Question(question.angles(), false, java.util.OptionalInt.empty(), false);
    return helix
        ? Optional.of(new Comparer(quick(job), plain, listener, packers).compareBriefly())
        : Optional.empty();
  }

  private static Job quick(Job job) {
    return job.with(job.search().at(Effort.QUICK));
  }

  private Job job() {
    return quick(batch.together());
  }

  private static SheetStock main(Job job) {
    return job.sheets().stream()
        .filter(sheet -> sheet.available().isEmpty())
        .findFirst()
        .orElse(job.sheets().get(0));
  }

  private static Money total(BatchRow row, JointPrice joint) {
    return row.sheetCost().plus(joint.each().times(row.joints()));
  }

  /** Each angle that every helix can be cut in, then each helix in its own best. */
  private List<BatchRow> rows(List<Optional<Comparison>> apart) throws Infeasible {
    List<BatchRow> rows = new ArrayList<>();
    List<Division> common = common(apart);
    for (Division division : common) {
      if (!listener.stopped()) {
        listener.overall(0.6 + 0.4 * rows.size() / (common.size() + 1));
        listener.step("all together in segments of " + division.largest());
        try {
          rows.add(row(apart, Optional.of(division)));
        } catch (Infeasible e) {
          // Together they may need more of a sheet than there is.
          listener.step("not in segments of " + division.largest() + ": " + e.getMessage());
        }
      }
    }
    listener.step("all together, each in its own best segments");
    rows.add(row(apart, Optional.empty()));
    return rows;
  }

  private static List<Division> common(List<Optional<Comparison>> apart) {
    List<Division> common = new ArrayList<>();
    for (Optional<Comparison> alone : apart) {
      if (alone.isPresent()) {
        List<Division> own = alone.get().options().stream().map(SegmentOption::division).toList();
        if (common.isEmpty()) {
          common.addAll(own);
        } else {
          common.retainAll(own);
        }
      }
    }
    return common;
  }

  private BatchRow row(List<Optional<Comparison>> apart, Optional<Division> division)
      throws Infeasible {
    List<Demand> pieces = new ArrayList<>();
    List<Demand> small = new ArrayList<>();
    List<Optional<Division>> divisions = new ArrayList<>();
    List<Batch.Member> members = new ArrayList<>();
    int joints = 0;
    for (int i = 0; i < apart.size(); i++) {
      Batch.Member member = batch.members().get(i);
      Optional<SegmentOption> chosen = apart.get(i).map(alone -> chosen(alone, division));
      Job job = chosen.map(option -> option.design().job()).orElse(member.job());
      pieces.addAll(member.tagged(job.demands()));
      members.add(new Batch.Member(member.tag(), job));
      if (chosen.isPresent()) {
        small.addAll(member.tagged(chosen.get().design().small()));
        joints += chosen.get().joints();
      }
      divisions.add(chosen.map(SegmentOption::division));
    }
    Job together = quick(batch.together(pieces));
    Plan plan = new Planner(together, listener, packers).planRoughly();
    SmallFit fit = new Nesting(packers, main(together)).fit(plan, small);
    return new BatchRow(division, divisions, new BatchPlan(new Batch(members), plan), fit, joints);
  }

  private static SegmentOption chosen(Comparison alone, Optional<Division> division) {
    return division
        .flatMap(
            wanted ->
                alone.options().stream()
                    .filter(option -> option.division().equals(wanted))
                    .findFirst())
        .or(alone::best)
        .orElseThrow();
  }
}
