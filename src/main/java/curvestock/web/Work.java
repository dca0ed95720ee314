package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.app.Workshop;
import curvestock.compare.CompareListener;
import curvestock.compare.Comparison;
import curvestock.compare.FirstLook;
import curvestock.compare.Question;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.PlanListener;
import curvestock.report.HelixReport;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One computation: the helix and a glance at once, then a quick plan, the comparison of segment
 * sizes, and the plan at the job's own effort. Every answer is told as soon as it is there.
 */
final class Work implements Runnable {

  /** Longer searches belong to the command line. */
  private static final long LONGEST_MILLIS = 15 * 60_000L;

  private final String id;
  private final Job job;
  private final Optional<List<Layout>> byHand;
  private final WorkEvents events = new WorkEvents();
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private final AtomicBoolean enough = new AtomicBoolean();
  private final Progress progress = new Progress(events, this::isStopped);

  private volatile HelixReport helix;
  private volatile Plan plan;
  private volatile Comparison comparison;

  /**
   * @param byHand layouts that the user has laid himself; the search then leaves them alone
   */
  Work(String id, Job job, Optional<List<Layout>> byHand) {
    this.id = id;
    this.job = job;
    this.byHand = byHand;
  }

  String id() {
    return id;
  }

  Job job() {
    return job;
  }

  WorkEvents events() {
    return events;
  }

  /** The best plan so far. */
  Optional<Plan> plan() {
    return Optional.ofNullable(plan);
  }

  Optional<HelixReport> helix() {
    return Optional.ofNullable(helix);
  }

  Optional<Comparison> comparison() {
    return Optional.ofNullable(comparison);
  }

  /** Gives the work up: nothing more is told but that. */
  void cancel() {
    cancelled.set(true);
    events.end("cancelled", "{}");
  }

  /** Ends the search with the best so far. */
  void enough() {
    enough.set(true);
  }

  private boolean isStopped() {
    return cancelled.get() || enough.get() || progress.millis() > LONGEST_MILLIS;
  }

  @Override
  public void run() {
    if (cancelled.get()) {
      return;
    }
    progress.begin();
    try {
      answer();
      events.end("done", "{}");
    } catch (Infeasible e) {
      ObjectNode refusal = Json.object();
      e.getMessage().lines().forEach(refusal.withArray("sentences")::add);
      events.end("refused", Json.text(refusal));
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      // Told to the page and on the terminal: a fault must not be swallowed by a worker thread.
      System.err.println("Curvestock failed by a fault of its own: " + e);
      events.end("failed", Json.text(Json.object().put("message", e.toString())));
    }
  }

  private void answer() throws Infeasible {
    tellHelix();
    Workshop.glance(job).ifPresent(glance -> events.tell("glance", text(PlanView.of(job, glance))));
    Plan quick = Workshop.plan(at(Effort.QUICK), progress);
    tell(quick, byHand.isPresent() ? "basis" : "quick", "");
    if (byHand.isPresent()) {
      tellByHand(quick, byHand.get());
    }
    compare();
    if (byHand.isEmpty() && job.search().effort() != Effort.QUICK && !isStopped()) {
      deepen(quick);
    }
  }

  private void tellHelix() {
    if (job.structure().isPresent()) {
      helix = Workshop.helix(job, false, PlanListener.NONE);
      events.tell("helix", text(HelixView.of(helix)));
    }
  }

  private void tellByHand(Plan basis, List<Layout> layouts) {
    try {
      tell(Workshop.byHand(basis, layouts), "hand", "");
    } catch (IllegalArgumentException e) {
      events.tell("unfit", text(Json.object().put("message", e.getMessage())));
    }
  }

  private void compare() {
    if (job.helix().isEmpty() || isStopped()) {
      return;
    }
    try {
      comparison = Workshop.compare(at(Effort.QUICK), Question.PLAIN, progress);
      events.tell("sizes", text(SizesView.of(comparison)));
    } catch (Infeasible e) {
      progress.step("no segment sizes compared: " + e.getMessage());
    }
  }

  private void deepen(Plan quick) throws Infeasible {
    Plan deep = Workshop.plan(job, progress);
    if (!isWorse(deep, quick)) {
      String word = job.search().effort().name().toLowerCase(Locale.ROOT);
      tell(deep, word, Gain.words(quick, deep, job.currency()));
    }
  }

  /** A search that was stopped early may end with less than the quick one. */
  private static boolean isWorse(Plan after, Plan before) {
    int byMoney = after.purchase().sheetCost().compareTo(before.purchase().sheetCost());
    return byMoney > 0 || (byMoney == 0 && after.layouts().size() > before.layouts().size());
  }

  private void tell(Plan found, String stage, String gained) {
    if (!cancelled.get()) {
      plan = found;
      events.tell("plan", text(PlanView.of(found, stage, gained)));
    }
  }

  private Job at(Effort effort) {
    return job.with(new SearchSettings(job.search().seed(), effort));
  }

  private static String text(ObjectNode node) {
    return Json.text(node);
  }

  /** Told a few times a second; the searches themselves tell far oftener. */
  private static final class Progress implements CompareListener {

    private static final long PAUSE_NANOS = 250_000_000;

    private final WorkEvents events;
    private final java.util.function.BooleanSupplier stopped;
    private long begun = System.nanoTime();
    private long lastTold;
    private String step = "";

    Progress(WorkEvents events, java.util.function.BooleanSupplier stopped) {
      this.events = events;
      this.stopped = stopped;
    }

    void begin() {
      begun = System.nanoTime();
    }

    long millis() {
      return (System.nanoTime() - begun) / 1_000_000;
    }

    @Override
    public void step(String what) {
      step = what;
      tell(0, 1);
    }

    @Override
    public void worked(long done, long budget) {
      if (System.nanoTime() - lastTold > PAUSE_NANOS) {
        tell(done, Math.max(1, budget));
      }
    }

    private void tell(long done, long budget) {
      lastTold = System.nanoTime();
      double share = Math.min(1, (double) done / budget);
      events.tell("progress", Json.text(Json.object().put("step", step).put("share", share)));
    }

    @Override
    public boolean stopped() {
      return stopped.getAsBoolean();
    }

    @Override
    public void firstLook(List<FirstLook> looks) {
      events.tell("looks", Json.text(SizesView.of(looks)));
    }
  }
}
