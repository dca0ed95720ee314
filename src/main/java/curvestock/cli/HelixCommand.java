package curvestock.cli;

import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.job.Job;
import curvestock.report.HelixReport;
import curvestock.report.HelixSummary;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says whether a helix works and what it takes to build it, before a sheet is cut. */
@Command(
    name = "helix",
    mixinStandardHelpOptions = true,
    description = {
      "Works a whole helix out: grade, clearances, joints, supports, schedule, shopping list, with a"
          + " verdict for every rule.",
      "Exits with 0 if the helix works and 1 if a rule fails.",
      "Without a job file the embedded default job is taken (its data are invented)."
    })
final class HelixCommand implements Callable<Integer>, Faults.Debuggable {

  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "JOB", description = "The job file (YAML).")
  private Path jobFile;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write: drawings, schedule, tables.")
  private Path out;

  @Option(names = "--force", description = "Replace DIR if it is a former result.")
  private boolean force;

  @Option(names = "--no-sheets", description = "Do not plan the sheets for the shopping list.")
  private boolean noSheets;

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
    Job job = Workshop.readJob(Optional.ofNullable(jobFile));
    if (job.structure().isEmpty()) {
      PrintWriter err = spec.commandLine().getErr();
      err.println(
          "This job holds no whole helix to judge: add at least `scale: HO` and the climb (two of"
              + " `turns:`, `climb:`, `rise-per-turn:`) to its `helix:` block.");
      err.println("`curvestock schema --example` prints a job that has all of it.");
      err.flush();
      return Main.WRONG_INPUT;
    }
    HelixReport report = work(job);
    print(report);
    return report.works() ? 0 : Main.ANSWER_IS_NO;
  }

  private HelixReport work(Job job) throws FileProblem {
    try (Terminal terminal = new Terminal(quiet)) {
      HelixReport report = Workshop.helix(job, !noSheets, terminal);
      if (out != null) {
        Workshop.helixResult(report).publish(out, force);
      }
      return report;
    }
  }

  private void print(HelixReport report) {
    PrintWriter printer = spec.commandLine().getOut();
    HelixSummary.of(report).forEach(printer::println);
    printer.println();
    if (out == null) {
      printer.println("Nothing was written: add --out DIR to get drawings, schedule and tables.");
    } else {
      printer.println("Written: " + out + " (look at helix-plan.png and helix-side.png first)");
    }
    printer.flush();
  }
}
