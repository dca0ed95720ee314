package curvestock.web;

import com.fasterxml.jackson.databind.node.ObjectNode;
import curvestock.compare.Comparison;
import curvestock.job.Job;
import curvestock.packing.Effort;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One computation for one client: runs once, tells every answer as soon as it is there, and can be
 * cancelled, or ended with the best so far. What needs no search is answered first, even while the
 * searches of others hold all places.
 */
abstract class Work implements Runnable {

  /** Longer searches belong to the command line. */
  private static final long LONGEST_MILLIS = 15 * 60_000L;

  private final String id;
  private final Asked asked;
  private final Shared shared;
  private final WorkEvents events = new WorkEvents();
  private final AtomicBoolean cancelled = new AtomicBoolean();
  private final AtomicBoolean enough = new AtomicBoolean();
  private final Progress progress;
  private boolean begun;

  private volatile Plan plan;
  private volatile Comparison comparison;

  Work(String id, Asked asked, Shared shared) {
    this.id = id;
    this.asked = asked;
    this.shared = shared;
    this.progress = new Progress(events, shared.pause(), cancelled::get, this::isStopped);
  }

  /** What can be said at once. */
  abstract void atOnce();

  /** What is computed after that; each part is told when it is there. */
  abstract void answer() throws Infeasible;

  final String id() {
    return id;
  }

  final Asked asked() {
    return asked;
  }

  final Job job() {
    return asked.job();
  }

  final Shared shared() {
    return shared;
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

  final Optional<Comparison> comparison() {
    return Optional.ofNullable(comparison);
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

  private boolean isStopped() {
    return cancelled.get() || enough.get() || progress.millis() > LONGEST_MILLIS;
  }

  /** Tells what can be said at once, if that was not done yet. */
  final void begin() {
    try {
      beginOnce();
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      fail(e);
    }
  }

  /** Whoever comes second waits for the first. */
  private synchronized void beginOnce() {
    if (!begun && !cancelled.get()) {
      begun = true;
      atOnce();
    }
  }

  @Override
  public final void run() {
    begin();
    if (cancelled.get() || events.isOver()) {
      return;
    }
    progress.begin();
    try {
      answer();
      events.end("done", "{}");
    } catch (Infeasible e) {
      ObjectNode refusal = Json.object();
      e.onPage().lines().forEach(refusal.withArray("sentences")::add);
      events.end("refused", Json.text(refusal));
    } catch (RuntimeException | OutOfMemoryError | StackOverflowError e) {
      fail(e);
    }
  }

  private void fail(Throwable e) {
    // One that was cancelled is left by an exception; what its other threads say of that is no
    // news.
    if (!cancelled.get()) {
      // Told to the page and on the terminal: a fault must not be swallowed by a worker thread.
      System.err.println("Curvestock has a bug: " + e);
      events.end("failed", Json.text(Json.object().put("message", e.toString())));
    }
  }

  /**
   * Keeps the plan as the best so far and tells it.
   *
   * @param open whether searching on may find a better one
   */
  final void tell(Plan found, String stage, String gained, boolean open) {
    if (!cancelled.get()) {
      plan = found;
      ObjectNode view = PlanView.of(found, stage, gained);
      view.put("fingerprint", asked.fingerprint()).put("open", open);
      events.tell("plan", Json.text(view));
    }
  }

  final Job at(Effort effort) {
    return job().with(job().search().at(effort));
  }
}
