package curvestock.cli;

import curvestock.app.CheckedDrawings;
import curvestock.app.Workshop;
import curvestock.check.CheckReport;
import curvestock.check.JobReport;
import curvestock.check.JobReport.Judged;
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
import java.util.stream.Collectors;
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
    description = {
      "Checks finished drawings against the job: shapes, gaps, margin, defects, grain and marks, and that no"
          + " piece is missing or extra.",
      "Layout drawings, SVG cut files and DXF cut files are checked as three separate sets: each set that you"
          + " give must have every piece in it. The test cut is checked too, by itself."
    })
final class CheckCommand implements Callable<Integer>, Faults.Debuggable {

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "1..*",
      paramLabel = "PATH",
      description =
          "The drawings to check (SVG or DXF), or the folder that `plan` or `packet` wrote.")
  private List<Path> paths;

  @Option(
      names = "--job",
      paramLabel = "JOB",
      description =
          "The job file. For several jobs planned together, repeat --job for each, in the same order."
              + " Default: the job saved in the plan.json beside the drawings.")
  private List<Path> jobFiles = List.of();

  @Option(
      names = "--partial",
      description =
          "Check only the drawings you name, and do not report pieces that are missing from them.")
  private boolean partial;

  @Mixin private DebugOption debug;

  @Override
  public boolean debug() {
    return debug.isGiven();
  }

  @Override
  public Integer call() throws Exception {
    Optional<Job> job = job();
    CheckedDrawings checked = Workshop.check(paths, job, partial);
    JobReport report = checked.report();
    PrintWriter printer = spec.commandLine().getOut();
    for (Judged drawing : report.drawings()) {
      print(printer, drawing, checked.job().style());
    }
    report.counts().forEach(printer::println);
    printer.flush();
    if (!report.unreadable().isEmpty()) {
      PrintWriter err = spec.commandLine().getErr();
      err.println("Not checked: " + String.join(", ", report.unreadable()));
      err.flush();
      return Main.WRONG_INPUT;
    }
    return report.passed() ? 0 : Main.ANSWER_IS_NO;
  }

  private Optional<Job> job() throws FileProblem {
    List<Job> jobs = new ArrayList<>();
    for (Path file : jobFiles) {
      jobs.add(Workshop.readJob(Optional.of(file)));
    }
    return jobs.size() > 1 ? Optional.of(Batch.of(jobs).together()) : jobs.stream().findFirst();
  }

  private static void print(PrintWriter printer, Judged drawing, LengthStyle style) {
    String what = drawing.name() + drawing.shows().remark();
    if (drawing.report().isEmpty()) {
      printer.println(what + ": NOT CHECKED");
      printer.println("  " + drawing.unreadable());
      return;
    }
    CheckReport report = drawing.report().get();
    printer.println(what + ": " + (report.passed() ? "right" : "WRONG"));
    report.findings().forEach(finding -> printer.println("  " + finding.message()));
    if (drawing.shows() == Judged.Shows.UNDERSIDE) {
      return;
    }
    printer.println("  " + pieces(report));
    report.leastGap().ifPresent(gap -> printer.println("  least gap " + measure(gap, style)));
    report
        .leastMargin()
        .ifPresent(margin -> printer.println("  least margin " + measure(margin, style)));
    printer.println(
        "  largest deviation from a nominal shape "
            + String.format(Locale.ROOT, "%.4f mm", report.worstShapeError()));
  }

  private static String pieces(CheckReport report) {
    String list =
        report.counts().entrySet().stream()
            .map(entry -> entry.getValue() + " x " + entry.getKey())
            .collect(Collectors.joining(", "));
    String count = report.pieces() == 1 ? "1 piece" : report.pieces() + " pieces";
    return list.isEmpty() ? count : count + ": " + list;
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
