package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.compare.Comparison;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.report.HelixReport;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One computation for one client: runs once, tells every answer as soon as it is there, and can be
 * cancelled, or ended with the best so far.
 */
abstract class Work implements Runnable {

  /** Longer searches belong to the command line. */
  private static final long LONGEST_MILLIS = 15 * 60_000L;

  private final String id;
  private final Job job;
  private final WorkEvents events = new WorkEvents();
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private final AtomicBoolean enough = new AtomicBoolean();
  private final Progress progress = new Progress(events, this::isStopped);

  private volatile HelixReport helix;
  private volatile Plan plan;
  private volatile Comparison comparison;

  Work(String id, Job job) {
    this.id = id;
    this.job = job;
  }

  /** What is computed; each part is told when it is there. */
  abstract void answer() throws Infeasible;

  final String id() {
    return id;
  }

  final Job job() {
    return job;
  }

  final WorkEvents events() {
    return events;
  }

  final Progress progress() {
    return progress;
  }

  /** The best plan so far. */
  final Optional<Plan> plan() {
    return Optional.ofNullable(plan);
  }

  final Optional<HelixReport> helix() {
    return Optional.ofNullable(helix);
  }

  final Optional<Comparison> comparison() {
    return Optional.ofNullable(comparison);
  }

  final void keep(HelixReport report) {
    helix = report;
  }

  final void keep(Plan found) {
    plan = found;
  }

  final void keep(Comparison compared) {
    comparison = compared;
  }

  /** Gives the work up: nothing more is told but that. */
  final void cancel() {
    cancelled.set(true);
    events.end("cancelled", "{}");
  }

  /** Ends the search with the best so far. */
  final void enough() {
    enough.set(true);
  }

  final boolean isStopped() {
    return cancelled.get() || enough.get() || progress.millis() > LONGEST_MILLIS;
  }

  @Override
  public final void run() {
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

  /** Keeps the plan as the best so far and tells it. */
  final void tell(Plan found, String stage, String gained) {
    if (!cancelled.get()) {
      plan = found;
      events.tell("plan", Json.text(PlanView.of(found, stage, gained)));
    }
  }

  final Job at(Effort effort) {
    return job.with(job.search().at(effort));
  }
}
