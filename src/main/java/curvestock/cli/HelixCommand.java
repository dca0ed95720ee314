package curvestock.cli;

import curvestock.answer.Answer;
import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.report.HelixPaper;
import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Says whether a helix works and what it takes to build it, before a sheet is cut. */
@Command(
    name = "helix",
    mixinStandardHelpOptions = true,
    description = {
      "Checks a whole helix before you cut: grade, clearance, joints and supports. Prints the"
          + " shopping list.",
      "Unlike plan, it takes only one job. The exit code is 0 if the helix works and 1 if a check fails.",
      "Without a job file, it checks the built-in example. (Its figures are invented.)"
    })
final class HelixCommand implements Callable<Integer>, Faults.Debuggable {

  @Spec private CommandSpec spec;

  @Mixin private JobOptions options;

  @Mixin private AnywayOption anyway;

  @Option(
      names = "--no-sheets",
      description = "Leave the sheets out of the shopping list, which is quicker.")
  private boolean noSheets;

  @Override
  public boolean debug() {
    return options.debug();
  }

  @Override
  public Integer call() throws Exception {
    Job job = options.job();
    if (job.structure().isEmpty()) {
      PrintWriter err = spec.commandLine().getErr();
      err.println(
          "This job only lists what to cut, so there is no helix to check. To check one, add at least"
              + " `scale: HO` and two of `turns:`, `climb:`, `rise-per-turn:` to its `helix:` block.");
      err.println("`curvestock schema --example` prints a complete example.");
      err.flush();
      return Main.WRONG_INPUT;
    }
    Answer report = work(job);
    options.print(
        options.details() ? HelixPaper.text(report) : HelixPaper.brief(report),
        "Written",
        "helix-plan.png and helix-side.png",
        "drawings, schedule and tables",
        "all parts, checks, heights, joints, supports and cautions");
    return options.end(report.unfit().isEmpty() ? anyway.code(List.of(job)) : Main.ANSWER_IS_NO);
  }

  private Answer work(Job job) throws FileProblem {
    try (Terminal terminal = new Terminal(options.quiet())) {
      // Sheets are here for their price: planned in haste unless more is asked for.
      Job planned = options.effortIsGiven() ? job : job.with(job.search().at(Effort.QUICK));
      Answer report = Workshop.helix(planned, !noSheets, terminal, options.packers());
      options.publish(() -> Workshop.helixResult(report), terminal);
      return report;
    }
  }
}
