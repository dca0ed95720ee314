package curvestock.cli;

import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.report.PlanSummary;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Plans a job and writes its result folder. */
@Command(
    name = "plan",
    mixinStandardHelpOptions = true,
    description = {
      "Packs the pieces of a job on its sheets, chooses what to buy, and writes checked cut layouts.",
      "Without a job file the embedded default job is planned (its data are invented)."
    })
final class PlanCommand implements Callable<Integer>, Faults.Debuggable {

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "JOB", description = "The job file (YAML).")
  private Path jobFile;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write; without it only the summary is printed.")
  private Path out;

  @Option(names = "--force", description = "Replace DIR if it is a former result.")
  private boolean force;

  @Option(
      names = "--effort",
      paramLabel = "EFFORT",
      description = "How long to search: quick, normal or thorough. Default: as the job says.")
  private Effort effort;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Seed of the search. Default: as the job says.")
  private Long seed;

  @Option(names = "--quiet", description = "Print no progress.")
  private boolean quiet;

  @Option(names = "--debug", description = "Print stack traces of faults.")
  private boolean debug;

  @Override
  public boolean debug() {
    return debug;
  }

  @Override
  public Integer call() throws Exception {
    Job job = settings(Workshop.readJob(Optional.ofNullable(jobFile)));
    Plan plan = work(job);
    print(plan);
    return 0;
  }

  private Plan work(Job job) throws Infeasible, FileProblem {
    try (Terminal terminal = new Terminal(quiet)) {
      Plan plan = Workshop.plan(job, terminal);
      ResultFolder result = Workshop.result(plan, terminal);
      if (out != null) {
        result.publish(out, force);
      }
      return plan;
    }
  }

  private Job settings(Job job) {
    SearchSettings given = job.search();
    return job.with(
        new SearchSettings(
            seed == null ? given.seed() : seed, effort == null ? given.effort() : effort));
  }

  private void print(Plan plan) {
    PrintWriter printer = spec.commandLine().getOut();
    PlanSummary.of(plan).forEach(printer::println);
    printer.println();
    if (out == null) {
      printer.println("Nothing was written: add --out DIR to get the cut layouts.");
    } else {
      printer.println("Written and checked: " + out + " (look at sheets/sheet-01.png first)");
    }
    printer.flush();
  }
}
