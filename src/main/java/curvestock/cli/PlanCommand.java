package curvestock.cli;

import curvestock.answer.Answer;
import curvestock.app.JobFiles;
import curvestock.app.Workshop;
import curvestock.files.ResultFolder;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.plan.BatchPlan;
import curvestock.plan.Plan;
import curvestock.report.BatchPaper;
import curvestock.report.PlanPaper;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Plans a job and writes its result folder. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = {
      "Tells you what to buy and lays out every piece on the sheets. With --out, writes the cut layouts, already checked.",
      "Name several job files, and their pieces share the same sheets.",
      "Without a job file, it plans the built-in example. (Its figures are invented.)"
    })
final class PlanCommand implements Callable<Integer>, Faults.Debuggable {

  @Mixin private JobOptions options;

  @Mixin private AnywayOption anyway;

  @Override
  public boolean debug() {
    return options.debug();
  }

  @Override
  public Integer call() throws Exception {
    List<Job> jobs = options.jobs();
    Answer answer;
    List<String> summary;
    // Drawn and checked even if nothing is written: a wrong layout must never reach a user.
    try (Terminal terminal = new Terminal(options.quiet())) {
      ResultFolder result;
      if (jobs.size() == 1) {
        Optional<JobFiles> begun = options.out().map(out -> JobFiles.begin(jobs.get(0), false));
        Plan plan = Workshop.plan(jobs.get(0), terminal, options.packers());
        answer = Answer.of(plan);
        result = Workshop.result(plan, answer, begun, terminal);
        summary =
            options.details()
                ? PlanPaper.text(plan.job(), answer)
                : PlanPaper.brief(plan.job(), answer);
      } else {
        BatchPlan batch = Workshop.plan(Batch.of(jobs), terminal, options.packers());
        answer = Answer.of(batch.plan());
        result = Workshop.result(batch, answer, terminal);
        summary =
            options.details() ? BatchPaper.text(batch, answer) : BatchPaper.brief(batch, answer);
      }
      options.publish(() -> result, terminal);
    }
    options.print(
        summary,
        "Written and checked",
        "sheets/sheet-01.png",
        "the cut layouts",
        "the pieces, the prices, the most that a sheet can hold and the offcuts");
    return options.end(answer.bought().loose().isEmpty() ? anyway.code(jobs) : Main.ANSWER_IS_NO);
  }
}
