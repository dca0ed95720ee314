package curvestock.cli;

import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.files.FinishedRun;
import curvestock.files.ResultFolder;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.packing.RecentPackings;
import curvestock.packing.SearchSettings;
import curvestock.plan.PlanListener;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What all commands share that work a job out: which job, how hard, and where to write. */
final class JobOptions {

  /** Some 20 MB of memory at most; a comparison of a large job fills a tenth of it. */
  private static final long MOST_KEPT_CHARACTERS = 20_000_000;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec mixee;

  @Mixin private DebugOption debug;

  @Parameters(arity = "0..*", paramLabel = "JOB", description = "The job file (YAML).")
  private List<Path> files = List.of();

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Folder to write to. Without it, the answer is only printed on the screen.")
  @SuppressWarnings("UnusedMethod") // picocli calls it
  private void out(Path folder) {
    out = Folders.named(folder, mixee.commandLine());
  }

  private Path out;

  @Option(
      names = "--force",
      description = "Overwrite the folder given with --out, if Curvestock made it.")
  private boolean force;

  @Option(names = "--details", description = "Print everything, not only the short answer.")
  private boolean details;

  @Option(
      names = "--effort",
      paramLabel = "EFFORT",
      description =
          "How long to search: quick, normal or thorough. To stop sooner, press Ctrl-C once: you get the best found so far. Default: the job's own setting.")
  private Effort effort;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description =
          "Starting number for the search. A different number may find a different layout. Default: the job's own setting.")
  @SuppressWarnings("UnusedMethod") // picocli calls it
  private void seed(String number) {
    if (!number.matches("\\d{1,18}")) {
      throw new ParameterException(
          mixee.commandLine(), "--seed must be 0 or a whole number above it, but was " + number);
    }
    seed = Long.parseLong(number);
  }

  private Long seed;

  @Option(names = "--quiet", description = "Print only the answer, no progress.")
  private boolean quiet;

  @Option(
      names = "--no-cache",
      description =
          "Start from scratch: use no saved layouts from earlier runs, and save none. Slower; the answer is the same.")
  private boolean noCache;

  private final Outcome outcome = new Outcome();

  boolean debug() {
    return debug.isGiven();
  }

  boolean details() {
    return details;
  }

  boolean quiet() {
    return quiet;
  }

  boolean effortIsGiven() {
    return effort != null;
  }

  Optional<Path> out() {
    return Optional.ofNullable(out);
  }

  /** The one job, or the embedded default job; two files are refused. */
  Job job() throws FileProblem {
    if (files.size() > 1) {
      throw new ParameterException(
          mixee.commandLine(),
          "one job file is expected, but " + files.size() + " were given: " + files);
    }
    return jobs().get(0);
  }

  /** All jobs in the order given, with the seed and effort given here; without any the default. */
  List<Job> jobs() throws FileProblem {
    List<Job> jobs = new ArrayList<>();
    if (files.isEmpty()) {
      jobs.add(settings(Workshop.readJob(Optional.empty(), outcome.inputs())));
    }
    for (Path file : files) {
      jobs.add(settings(Workshop.readJob(Optional.of(file), outcome.inputs())));
    }
    if (out != null) {
      ResultFolder.requireFree(out, force);
    }
    if (jobs.size() == 1 && jobs.get(0).search().effort() != Effort.THOROUGH) {
      LightCompilation.forShortSearch();
    }
    return jobs;
  }

  private Job settings(Job job) {
    SearchSettings given = job.search();
    return job.with(
        new SearchSettings(
            seed == null ? given.seed() : seed, effort == null ? given.effort() : effort));
  }

  /**
   * With the user's cache, unless it is refused here or by the system property; within the run
   * nothing is packed twice.
   */
  Packers packers() {
    return new Packers(new RecentPackings(packers(noCache).store(), MOST_KEPT_CHARACTERS));
  }

  static Packers packers(boolean withoutCache) {
    return withoutCache ? Packers.FORGETFUL : Workshop.remembering();
  }

  /**
   * Prints an answer, then where it was written or how to have it written, and how to see more.
   *
   * @param written what stands before the folder's name
   * @param lookAt what to look at first in the folder
   * @param gives what --out would give
   * @param more what --details would print
   */
  void print(List<String> answer, String written, String lookAt, String gives, String more) {
    List<String> lines = new ArrayList<>(answer);
    lines.add("");
    lines.add(
        out == null
            ? "No files were saved. To save " + gives + ", add --out and a folder's name."
            : written + ": " + FinishedRun.FOLDER + " (look at " + lookAt + " first)");
    if (!details && !more.isEmpty()) {
      lines.add("Add --details for " + more + ".");
    }
    outcome.print(lines, out(), mixee.commandLine().getOut());
  }

  /**
   * Writes the result if a folder was named; only then it is made at all.
   *
   * @param listener who knows by now whether the search was stopped
   */
  void publish(Supplier<ResultFolder> result, PlanListener listener) throws FileProblem {
    if (out != null) {
      outcome.publish(result.get(), out, force);
    }
    outcome.stoppedIf(listener.stopped());
  }

  /** The last of all, with the exit code: the outcome is kept. */
  int end(int code) {
    return outcome.end(code, mixee);
  }
}
