package curvestock.cli;

import curvestock.answer.Answer;
import curvestock.app.Begun;
import curvestock.app.JobFiles;
import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.drawing.PaperSize;
import curvestock.files.FinishedRun;
import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.report.PlanPaper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a job and writes everything that a shop needs to cut and build it. */
@Command(
    name = "packet",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the cutting packet, one folder for the shop: report, layouts, patterns, tables, and a"
          + " README that says which file is for what. "
          + Workshop.ARCHIVE
          + " has the same files.",
      "Without a job file, it plans the built-in example. (Its figures are invented.)"
    })
final class PacketCommand implements Callable<Integer>, Faults.Debuggable {

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "JOB", description = "The job file (YAML).")
  private Path jobFile;

  @Option(names = "--out", paramLabel = "DIR", required = true, description = "Folder to write to.")
  @SuppressWarnings("UnusedMethod") // picocli calls it
  private void out(Path folder) {
    out = Folders.named(folder, spec.commandLine());
  }

  private Path out;

  @Mixin private AnywayOption anyway;

  @Option(
      names = "--force",
      description = "Overwrite the folder given with --out, if Curvestock made it.")
  private boolean force;

  @Option(
      names = "--effort",
      paramLabel = "EFFORT",
      description =
          "How long to search: quick, normal or thorough. To stop sooner, press Ctrl-C once: you get the best found so far. Default: the job's own setting.")
  private Effort effort;

  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      description =
          "Paper for full-size patterns: A4, Letter, A3, Tabloid or roll (24 in wide). Default: the job's own setting.")
  private PaperSize paper;

  @Option(
      names = "--no-compare",
      description = "Leave the comparison of segment sizes out of the report, which is quicker.")
  private boolean noCompare;

  @Option(names = "--quiet", description = "Print no progress.")
  private boolean quiet;

  @Option(
      names = "--no-cache",
      description = "Start from scratch: use no saved layouts from earlier runs, and save none.")
  @SuppressWarnings("UnusedVariable") // it counts by being there, see Asked
  private boolean noCache;

  private final Outcome outcome = new Outcome();

  @Mixin private DebugOption debug;

  @Override
  public boolean debug() {
    return debug.isGiven();
  }

  @Override
  public Integer call() throws Exception {
    ResultFolder.requireFree(out, force);
    Job job = Workshop.readJob(Optional.ofNullable(jobFile), outcome.inputs());
    if (effort != null) {
      job = job.with(job.search().at(effort));
    }
    if (paper != null) {
      job = job.with(paper);
    }
    Plan plan;
    Answer answer;
    try (Terminal terminal = new Terminal(quiet)) {
      Optional<JobFiles> begun = Optional.of(JobFiles.begin(job, true));
      plan = Workshop.plan(job, terminal);
      Answer alone = Answer.of(plan);
      Begun sheets = Workshop.begin(plan, alone);
      answer = comparison(plan, terminal).map(alone::compared).orElse(alone);
      terminal.step("drawing and checking sheets and papers");
      outcome.publish(Workshop.archived(Workshop.packet(plan, answer, begun, sheets)), out, force);
      outcome.stoppedIf(terminal.stopped());
    }
    print(plan, answer);
    return outcome.end(
        answer.bought().loose().isEmpty() ? anyway.code(List.of(job)) : Main.ANSWER_IS_NO, spec);
  }

  /** A packet without a comparison is still a packet; none is begun once it is stopped. */
  private Optional<Comparison> comparison(Plan plan, Terminal terminal) {
    if (noCompare || plan.job().helix().isEmpty() || terminal.stopped()) {
      return Optional.empty();
    }
    try {
      return Optional.of(Workshop.compare(plan, Question.PLAIN, new ComparisonProgress(terminal)));
    } catch (Infeasible e) {
      terminal.step("no comparison of sizes: " + e.getMessage());
      return Optional.empty();
    }
  }

  private void print(Plan plan, Answer answer) {
    List<String> lines = new ArrayList<>(PlanPaper.brief(plan.job(), answer));
    lines.add("");
    Workshop.unprintable(plan.job()).ifPresent(lines::add);
    lines.add("Written and checked: " + FinishedRun.FOLDER + " (read README.txt first)");
    outcome.print(lines, Optional.of(out), spec.commandLine().getOut());
  }
}
