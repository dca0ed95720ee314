package curvestock.bench;

import curvestock.app.Workshop;
import curvestock.files.FileProblem;
import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.plan.BatchPlan;
import curvestock.plan.Infeasible;
import curvestock.plan.PlanListener;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans 1,000 pieces of 20 kinds from four invented jobs in one run, and multiples of them, draws
 * and checks every sheet, and writes {@code benchmarks/report-batch.md}: processor time, memory,
 * sheets against the bound, and how they grow. Sizes done are kept in a {@link Journal}.
 */
public final class BatchReport {

  private static final List<String> FILES = List.of("a.yaml", "b.yaml", "c.yaml", "d.yaml");

  private BatchReport() {}

  /**
   * @param arguments how many times the 1,000 pieces, a number for each size
   */
  public static void main(String[] arguments) throws IOException, FileProblem, Infeasible {
    Settings settings = Settings.fromProperties();
    Journal journal = Journal.open(Engine.program(), "batch", settings.asked());
    Report report =
        new Report(
            Settings.REPORTS.resolve("report-batch.md"),
            Engine.program(),
            "A batch of four jobs, 1,000 pieces and more",
            settings.asked());
    List<BatchSize> done = new ArrayList<>();
    for (String argument : arguments) {
      Optional<List<String>> known = journal.line(argument);
      BatchSize size;
      if (known.isPresent()) {
        size = BatchSize.parse(known.get());
      } else {
        size = measured(Integer.parseInt(argument), settings);
        journal.note(argument, size.cells());
      }
      done.add(size);
      report.body(BatchSize.table(done));
      System.out.println(BatchSize.table(done));
    }
    report.finish();
  }

  private static BatchSize measured(int times, Settings settings) throws FileProblem, Infeasible {
    Batch batch = batch(times, settings);
    PeakHeap heap = new PeakHeap();
    double start = ProcessorTime.ofProcess();
    BatchPlan plan = Workshop.plan(batch, new Progress(), Packers.FORGETFUL);
    double planned = ProcessorTime.ofProcess() - start;
    // Throws if a drawing fails the independent check.
    Workshop.result(plan, PlanListener.NONE);
    double drawn = ProcessorTime.ofProcess() - start - planned;
    return new BatchSize(
        plan.plan().pieces(),
        batch.together().demands().size(),
        plan.plan().purchase().sheets(),
        plan.plan().purchase().bound().sheets(),
        plan.plan().areaYield(),
        planned,
        drawn,
        heap.mebibytes());
  }

  private static Batch batch(int times, Settings settings) throws FileProblem {
    List<Job> jobs = new ArrayList<>();
    for (String name : FILES) {
      Path file = Settings.DATA.resolve("batch").resolve(name);
      Job job = Workshop.readJob(Optional.of(file)).with(settings.search());
      List<Demand> more =
          job.wanted().stream()
              .map(demand -> new Demand(demand.piece(), times * demand.count()))
              .toList();
      jobs.add(times == 1 ? job : job.only(more));
    }
    return Batch.of(jobs);
  }

  private static final class Progress implements PlanListener {
    @Override
    public void step(String what) {
      System.err.println(what);
    }
  }
}
