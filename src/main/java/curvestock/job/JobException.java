package curvestock.job;

import java.util.List;
import java.util.stream.Collectors;

/** Says that a job file cannot be used, with every problem found, in the order of the file. */
public final class JobException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  JobException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  /** The problems, sorted by line and column; at least one. */
  public List<Problem> problems() {
    return problems;
  }
}
