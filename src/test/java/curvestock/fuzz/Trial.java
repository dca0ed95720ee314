package curvestock.fuzz;

import curvestock.check.CheckException;
import curvestock.check.CheckReport;
import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SheetDrawing;
import curvestock.job.Job;
import curvestock.job.JobException;
import curvestock.job.JobReader;
import curvestock.job.Problem;
import curvestock.layout.Layout;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.plan.Planner;
import curvestock.units.Length;
import curvestock.units.LengthFormatException;
import curvestock.units.LengthUnit;
import java.util.List;

/** Gives a hostile input to the program and holds what comes out against the one law. */
public final class Trial {

  /** Longest message to be shown to a person. */
  private static final int LONGEST_MESSAGE = 2_000;

  private static final int MOST_KINDS_PLANNED = 4;
  private static final int MOST_EDGES_PLANNED = 8;
  private static final int MOST_SHEETS_DRAWN = 3;

  /** Searches nothing: regular patterns alone, so that many jobs can be planned. */
  private static final PlanListener AT_ONCE =
      new PlanListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  private Trial() {}

  /**
   * Reads a job.
   *
   * @throws AssertionError if the program does not say plainly what is wrong and where
   */
  public static Outcome read(String text) {
    try {
      require(!JobReader.read(text, "noise.yaml").demands().isEmpty(), "a job without pieces");
      return Outcome.GOOD;
    } catch (JobException e) {
      requireLocated(e.problems(), text);
      return Outcome.REFUSED;
    }
  }

  /**
   * Reads a job and plans it if it is simple enough to be planned at once.
   *
   * @throws AssertionError as {@link #read}, or if a drawing fails its check
   */
  public static Outcome plan(String text) {
    Outcome outcome = read(text);
    if (outcome != Outcome.GOOD) {
      return outcome;
    }
    Job job = JobReader.read(text, "noise.yaml");
    return isSimple(job) ? plan(job) : outcome;
  }

  private static boolean isSimple(Job job) {
    return job.demands().size() * job.sheets().size() <= MOST_KINDS_PLANNED
        && job.demands().stream()
            .allMatch(
                demand -> demand.piece().shape().outline().edges().size() <= MOST_EDGES_PLANNED);
  }

  private static Outcome plan(Job job) {
    try {
      Plan plan = new Planner(job, AT_ONCE).plan();
      for (Layout layout : plan.layouts().stream().limit(MOST_SHEETS_DRAWN).toList()) {
        CheckReport report = LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout));
        require(report.passed(), "a wrong layout: " + report.findings());
      }
      return Outcome.PLANNED;
    } catch (Infeasible e) {
      requireReadable(e.getMessage());
      return Outcome.ANSWERED_NO;
    } catch (CheckException e) {
      throw new AssertionError("a drawing of our own cannot be checked: " + e.getMessage(), e);
    }
  }

  /**
   * Judges a drawing.
   *
   * @throws AssertionError if the program neither judges nor refuses it plainly
   */
  public static Outcome check(String svg, Expectation expectation) {
    try {
      CheckReport report = LayoutCheck.check(svg, expectation);
      report.findings().forEach(finding -> requireReadable(finding.message()));
      return report.passed() ? Outcome.GOOD : Outcome.ANSWERED_NO;
    } catch (CheckException e) {
      requireReadable(e.getMessage());
      return Outcome.REFUSED;
    }
  }

  /**
   * Reads a length.
   *
   * @throws AssertionError if it is neither a length of sane size nor refused plainly
   */
  public static Outcome length(String text) {
    try {
      double millimetres = Length.parse(text, LengthUnit.INCH).millimetres();
      require(Math.abs(millimetres) <= 1e7, "no sane length: " + millimetres);
      return Outcome.GOOD;
    } catch (LengthFormatException e) {
      requireReadable(e.getMessage());
      return Outcome.REFUSED;
    }
  }

  private static void requireLocated(List<Problem> problems, String text) {
    long lines = text.chars().filter(c -> c == '\n' || c == '\r').count() + 1;
    require(!problems.isEmpty(), "refused without a reason");
    for (Problem problem : problems) {
      require(problem.line() >= 1 && problem.line() <= lines, "no such line: " + problem);
      require(problem.column() >= 1, "no such column: " + problem);
      require(!problem.message().isBlank(), "no reason: " + problem);
      requireReadable(problem.toString());
      require(problem.toString().lines().count() == 1, "more than a line: " + problem);
    }
  }

  private static void requireReadable(String message) {
    require(message != null && !message.isBlank(), "no message");
    require(message.length() <= LONGEST_MESSAGE, "a message of " + message.length());
    // What it quotes is the file's own: a fuzzer that watches comparisons soon writes "java." itself.
    String own = message.replaceAll("\".*\"|'.*'", "");
    require(
        !own.contains("Exception") && !own.contains("java.") && !own.contains("Optional["),
        "words of the machine: " + message);
  }

  private static void require(boolean holds, String otherwise) {
    if (!holds) {
      throw new AssertionError(otherwise);
    }
  }
}
