package curvestock.web;

import curvestock.answer.Answer;
import curvestock.answer.Choices;
import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.plan.Glance;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.report.AnswerJson;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer to a job: the helix and a glance at once, then a quick plan, the comparison of segment
 * sizes, the plan at the job's own effort, and how far the comparison holds.
 */
final class PlanWork extends Work {

  private final Optional<List<Layout>> byHand;
  private final Fuller fuller = new Fuller(job());

  /**
   * @param byHand layouts that the user has laid himself; the search then leaves them alone
   */
  PlanWork(String id, Job job, Shared shared, Optional<List<Layout>> byHand) {
    super(id, job, shared);
    this.byHand = byHand;
  }

  @Override
  void atOnce() {
    tellHelix();
    Optional<Glance> glance = Workshop.glance(job());
    glance.ifPresent(
        found -> {
          fuller.known(found.layout());
          events().tell("glance", Json.text(PlanView.of(job(), found)));
        });
  }

  @Override
  void answer() throws Infeasible {
    progress().stage("A quick plan first");
    progress().onFuller(this::tellFuller);
    Plan quick = Workshop.plan(at(Effort.QUICK), progress(), shared().packers());
    tell(quick, byHand.isPresent() ? "basis" : "quick", "");
    if (byHand.isPresent()) {
      tellByHand(quick, byHand.get());
    }
    if (job().helix().isPresent() && !progress().stopped()) {
      compare(quick);
    } else {
      deepen(quick);
    }
  }

  private void tellHelix() {
    if (job().structure().isPresent()) {
      Answer report = Workshop.helix(job(), false, PlanListener.NONE);
      keep(report);
      events().tell("helix", Json.text(HelixView.of(report)));
    }
  }

  private void tellFuller(Layout layout) {
    fuller.view(layout).ifPresent(view -> events().tell("fuller", Json.text(view)));
  }

  private void tellByHand(Plan basis, List<Layout> layouts) {
    try {
      tell(Workshop.byHand(basis, layouts), "hand", "");
    } catch (IllegalArgumentException e) {
      events().tell("unfit", Json.text(Json.object().put("message", e.getMessage())));
    }
  }

  /** The longer search comes as soon as the choices are known, before how far they hold. */
  private void compare(Plan quick) {
    progress().stage("Now the other sizes of pieces");
    progress()
        .onChoices(
            choices -> {
              tellSizes(choices);
              deepen(quick);
              progress().stage("Last, how far the choice of sizes holds");
            });
    try {
      tellSizes(Workshop.compare(at(Effort.QUICK), Question.PLAIN, progress(), shared().packers()));
    } catch (Infeasible e) {
      progress().step("no sizes compared: " + e.getMessage());
      deepen(quick);
    }
  }

  private void tellSizes(Comparison found) {
    keep(found);
    events().tell("sizes", Json.text(AnswerJson.choices(Choices.of(found))));
  }

  private void deepen(Plan quick) {
    Effort effort = job().search().effort();
    if (byHand.isPresent() || effort == Effort.QUICK || progress().stopped()) {
      return;
    }
    if (isProvenBest(quick)) {
      tell(quick, "quick", "A longer search could gain nothing: that is proven.");
      return;
    }
    progress().stage("Now the longer search");
    try {
      Plan deep = Workshop.plan(job(), progress(), shared().packers());
      if (!isWorse(deep, quick)) {
        String word = effort.name().toLowerCase(Locale.ROOT);
        tell(deep, word, Gain.words(quick, deep, job().currency()));
      }
    } catch (Infeasible e) {
      // Broken off before it had as much as the quick plan, which stands.
      progress().step(e.getMessage());
    }
  }

  private static boolean isProvenBest(Plan plan) {
    return plan.cost().isProvenLeast() && plan.cost().leastSheets() >= plan.purchase().sheets();
  }

  /** A search that was stopped early may end with less than the quick one. */
  private static boolean isWorse(Plan after, Plan before) {
    int byMoney = after.cost().paid().compareTo(before.cost().paid());
    return byMoney > 0 || (byMoney == 0 && after.layouts().size() > before.layouts().size());
  }
}
