package curvestock.bench;

import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.packing.Packers;
import curvestock.plan.BatchPlan;
import curvestock.plan.Infeasible;
import curvestock.plan.PlanListener;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Plans 1,000 pieces of 20 kinds from four invented jobs in one run, draws and checks every sheet,
 * and writes {@code benchmarks/report-batch.md}: time, memory, sheets against the bound.
 */
public final class BatchReport {

  private static final List<String> FILES = List.of("a.yaml", "b.yaml", "c.yaml", "d.yaml");

  private BatchReport() {}

  public static void main(String[] args) throws IOException, FileProblem, Infeasible {
    Settings settings = Settings.fromProperties();
    List<Job> jobs = new ArrayList<>();
    for (String name : FILES) {
      Path file = Settings.DATA.resolve("batch").resolve(name);
      Job job = Workshop.readJob(Optional.of(file));
      jobs.add(job.with(settings.search()));
    }
    Batch batch = Batch.of(jobs);
    long start = System.nanoTime();
    BatchPlan plan = Workshop.plan(batch, new Progress(), Packers.FORGETFUL);
    double planned = (System.nanoTime() - start) / 1e9;
    // Throws if a drawing fails the independent check.
    Workshop.result(plan, PlanListener.NONE);
    double drawn = (System.nanoTime() - start) / 1e9 - planned;
    String text = markdown(settings, batch, plan, planned, drawn);
    System.out.print(text);
    Files.writeString(Settings.REPORTS.resolve("report-batch.md"), text);
  }

  private static String markdown(
      Settings settings, Batch batch, BatchPlan plan, double planned, double drawn) {
    int kinds = batch.together().demands().size();
    StringBuilder text = new StringBuilder();
    text.append("# A batch of four jobs\n\n");
    text.append("All data invented (`data/batch/`). Effort ");
    text.append(settings.search().effort().name().toLowerCase(Locale.ROOT));
    text.append("; ").append(Settings.machine()).append(".\n\n");
    text.append("| what | |\n|---|--:|\n");
    row(text, "pieces", plan.plan().pieces() + " of " + kinds + " kinds");
    row(text, "sheets", Integer.toString(plan.plan().purchase().sheets()));
    row(text, "proven least", Integer.toString(plan.plan().purchase().bound().sheets()));
    row(text, "area that becomes pieces", format("%.1f %%", 100 * plan.plan().areaYield()));
    row(text, "planning", format("%.0f s", planned));
    row(text, "drawing and checking every sheet", format("%.0f s", drawn));
    row(text, "largest heap", format("%.0f MiB", heap() / (1 << 20)));
    text.append("\n| job | pieces | of the area | of the cost |\n|---|--:|--:|--:|\n");
    for (BatchPlan.Share share : plan.shares()) {
      text.append(
          format(
              "| %s %s | %d | %.1f %% | %s |\n",
              share.member().tag(),
              share.member().job().title(),
              share.pieces(),
              100 * share.part(),
              share.cost().format("EUR ")));
    }
    return text.toString();
  }

  private static void row(StringBuilder text, String what, String value) {
    text.append("| ").append(what).append(" | ").append(value).append(" |\n");
  }

  private static String format(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }

  /** Sum of the peaks of all heap pools: at least as large as the true peak. */
  private static double heap() {
    return ManagementFactory.getMemoryPoolMXBeans().stream()
        .filter(pool -> pool.getType() == MemoryType.HEAP)
        .map(MemoryPoolMXBean::getPeakUsage)
        .mapToLong(java.lang.management.MemoryUsage::getUsed)
        .sum();
  }

  private static final class Progress implements PlanListener {
    @Override
    public void step(String what) {
      System.err.println(what);
    }
  }
}
