package curvestock.cli;

import curvestock.answer.Answer;
import curvestock.app.Begun;
import curvestock.app.JobFiles;
import curvestock.app.Workshop;
import curvestock.compare.Comparison;
import curvestock.compare.Question;
import curvestock.drawing.PaperSize;
import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.report.PlanPaper;
import java.io.PrintWriter;
import java.nio.file.Path;
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

  @Option(names = "--force", description = "Replace DIR if Curvestock wrote it.")
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

  @Mixin private DebugOption debug;

  @Override
  public boolean debug() {
    return debug.isGiven();
  }

  @Override
  public Integer call() throws Exception {
    ResultFolder.requireFree(out, force);
    Job job = Workshop.readJob(Optional.ofNullable(jobFile));
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
      Workshop.archived(Workshop.packet(plan, answer, begun, sheets)).publish(out, force);
    }
    print(plan, answer);
    return answer.bought().loose().isEmpty() ? anyway.code(List.of(job)) : Main.ANSWER_IS_NO;
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
    PrintWriter printer = spec.commandLine().getOut();
    PlanPaper.brief(plan.job(), answer).forEach(printer::println);
    printer.println();
    Workshop.unprintable(plan.job()).ifPresent(printer::println);
    printer.println("Written and checked: " + out + " (read README.txt first)");
    printer.flush();
  }
}
