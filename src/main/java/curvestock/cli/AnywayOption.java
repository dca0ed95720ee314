package curvestock.cli;

import curvestock.job.Job;
import java.util.List;
import picocli.CommandLine.Option;

/** The option that all commands share whose exit code says whether a helix fails. */
final class AnywayOption {

  @Option(
      names = "--anyway",
      description =
          "Exit with code 0 even if the helix fails a check. Reports and drawings still say that it fails.")
  private boolean anyway;

  /** 1 if the helix of one of the jobs fails, unless the user wants it anyway. */
  int code(List<Job> jobs) {
    boolean fails = jobs.stream().anyMatch(job -> job.failure().isPresent());
    return fails && !anyway ? Main.ANSWER_IS_NO : 0;
  }
}
