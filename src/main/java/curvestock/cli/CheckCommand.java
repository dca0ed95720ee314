package curvestock.cli;

import curvestock.app.Workshop;
import curvestock.check.CheckReport;
import curvestock.files.FileProblem;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks written drawings against their job, independently of how they were made. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description =
        "Reads cut layouts back and verifies shapes, gaps, margin, defects and grain against the"
            + " job.")
final class CheckCommand implements Callable<Integer>, Faults.Debuggable {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "FILE",
      description = "The drawings to check: SVG or DXF.")
  private List<Path> drawings;

  @Option(
      names = "--job",
      paramLabel = "JOB",
      description =
          "The job file; again for each job of a batch, in the order they were planned in. Without"
              + " it the embedded default job.")
  private List<Path> jobFiles = List.of();

  @Mixin private DebugOption debug;

  @Override
  public boolean debug() {
    return debug.isGiven();
  }

  @Override
  public Integer call() throws Exception {
    Job job = job();
    PrintWriter printer = spec.commandLine().getOut();
    boolean allPassed = true;
    for (Path drawing : drawings) {
      CheckReport report = Workshop.check(drawing, job);
      allPassed &= report.passed();
      print(printer, drawing, report, job.style());
    }
    printer.flush();
    return allPassed ? 0 : Main.ANSWER_IS_NO;
  }

  private Job job() throws FileProblem {
    List<Job> jobs = new ArrayList<>();
    for (Path file : jobFiles) {
      jobs.add(Workshop.readJob(Optional.of(file)));
    }
    if (jobs.isEmpty()) {
      return Workshop.readJob(Optional.empty());
    }
    return jobs.size() == 1 ? jobs.get(0) : Batch.of(jobs).together();
  }

  private static void print(
      PrintWriter printer, Path drawing, CheckReport report, LengthStyle style) {
    printer.println(drawing + ": " + (report.passed() ? "right" : "WRONG"));
    report.findings().forEach(finding -> printer.println("  " + finding.message()));
    printer.println("  pieces: " + report.counts());
    report.leastGap().ifPresent(gap -> printer.println("  least gap " + measure(gap, style)));
    report
        .leastMargin()
        .ifPresent(margin -> printer.println("  least margin " + measure(margin, style)));
    printer.println(
        "  largest deviation from a nominal shape "
            + String.format(Locale.ROOT, "%.4f mm", report.worstShapeError()));
  }

  private static String measure(CheckReport.Measure measure, LengthStyle style) {
    String inStyle =
        style.unit().isImperial()
            ? LengthStyle.INCH_DECIMALS.format(Length.ofMillimetres(measure.millimetres())) + " = "
            : "";
    return inStyle
        + String.format(Locale.ROOT, "%.4f mm", measure.millimetres())
        + " ("
        + measure.what()
        + ")";
  }
}
