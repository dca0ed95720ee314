package curvestock.answer;

import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Every demo job, planned without a long search, once for all tests. */
public final class DemoPlans {

  private static final PlanListener AT_ONCE =
      new PlanListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  private static final Map<Path, Plan> PLANS = new ConcurrentHashMap<>();

  private DemoPlans() {}

  /** All job files that come with the project. */
  public static List<Path> files() {
    try (Stream<Path> files = Files.walk(Path.of("demo-data"))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static Job job(Path file) {
    try {
      return Workshop.readJob(Optional.of(file));
    } catch (FileProblem e) {
      throw new IllegalStateException(e);
    }
  }

  /** From the first layouts found; by a quick search where these do not do. */
  public static Plan plan(Path file) {
    return PLANS.computeIfAbsent(file, DemoPlans::first);
  }

  private static Plan first(Path file) {
    try {
      return Workshop.plan(job(file), AT_ONCE);
    } catch (Infeasible tooFew) {
      return searched(file);
    }
  }

  /** By a quick search. */
  public static Plan searched(Path file) {
    try {
      Job job = job(file);
      return Workshop.plan(job.with(job.search().at(Effort.QUICK)), PlanListener.NONE);
    } catch (Infeasible impossible) {
      throw new IllegalStateException(impossible);
    }
  }
}
