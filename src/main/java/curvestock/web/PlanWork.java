package curvestock.web;

import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.report.HelixReport;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer to a job: the helix and a glance at once, then a quick plan, the comparison of segment
 * sizes, and the plan at the job's own effort.
 */
final class PlanWork extends Work {

  private final Optional<List<Layout>> byHand;

  /**
   * @param byHand layouts that the user has laid himself; the search then leaves them alone
   */
  PlanWork(String id, Job job, Optional<List<Layout>> byHand) {
    super(id, job);
    this.byHand = byHand;
  }

  @Override
  void answer() throws Infeasible {
    tellHelix();
    Workshop.glance(job())
        .ifPresent(glance -> events().tell("glance", Json.text(PlanView.of(job(), glance))));
    Plan quick = Workshop.plan(at(Effort.QUICK), progress());
    tell(quick, byHand.isPresent() ? "basis" : "quick", "");
    if (byHand.isPresent()) {
      tellByHand(quick, byHand.get());
    }
    compare();
    if (byHand.isEmpty() && job().search().effort() != Effort.QUICK && !isStopped()) {
      deepen(quick);
    }
  }

  private void tellHelix() {
    if (job().structure().isPresent()) {
      HelixReport report = Workshop.helix(job(), false, PlanListener.NONE);
      keep(report);
      events().tell("helix", Json.text(HelixView.of(report)));
    }
  }

  private void tellByHand(Plan basis, List<Layout> layouts) {
    try {
      tell(Workshop.byHand(basis, layouts), "hand", "");
    } catch (IllegalArgumentException e) {
      events().tell("unfit", Json.text(Json.object().put("message", e.getMessage())));
    }
  }

  private void compare() {
    if (job().helix().isEmpty() || isStopped()) {
      return;
    }
    try {
      Comparison found = Workshop.compare(at(Effort.QUICK), Question.PLAIN, progress());
      keep(found);
      events().tell("sizes", Json.text(SizesView.of(found)));
    } catch (Infeasible e) {
      progress().step("no segment sizes compared: " + e.getMessage());
    }
  }

  private void deepen(Plan quick) throws Infeasible {
    Plan deep = Workshop.plan(job(), progress());
    if (!isWorse(deep, quick)) {
      String word = job().search().effort().name().toLowerCase(Locale.ROOT);
      tell(deep, word, Gain.words(quick, deep, job().currency()));
    }
  }

  /** A search that was stopped early may end with less than the quick one. */
  private static boolean isWorse(Plan after, Plan before) {
    int byMoney = after.purchase().sheetCost().compareTo(before.purchase().sheetCost());
    return byMoney > 0 || (byMoney == 0 && after.layouts().size() > before.layouts().size());
  }
}
