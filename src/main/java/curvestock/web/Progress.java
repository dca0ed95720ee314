package curvestock.web;

import curvestock.plan.PlanListener;
import java.util.function.BooleanSupplier;

/**
 * Tells a page how far a search has come: a few times a second; the searches tell far oftener. A
 * computation that was cancelled ends here, by {@link GivenUp}; one that shall end with the best so
 * far is asked to stop.
 */
final class Progress implements PlanListener {

  private static final long PAUSE_NANOS = 250_000_000;

  private final WorkEvents events;
  private final Pause pause;
  private final BooleanSupplier cancelled;
  private final BooleanSupplier stopped;
  private volatile long begun = System.nanoTime();
  private volatile long lastTold;
  private volatile String stage = "";
  private volatile String step = "";

  /** How much of the whole stage is done, where that is told; else below 0. */
  private volatile double whole = -1;

  Progress(WorkEvents events, Pause pause, BooleanSupplier cancelled, BooleanSupplier stopped) {
    this.events = events;
    this.pause = pause;
    this.cancelled = cancelled;
    this.stopped = stopped;
  }

  void begin() {
    begun = System.nanoTime();
  }

  long millis() {
    return (System.nanoTime() - begun) / 1_000_000;
  }

  /** What the following steps are for, in plain words. */
  void stage(String words) {
    stage = words;
    whole = -1;
    step("");
  }

  @Override
  public void step(String what) {
    goOn();
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
    double share = whole >= 0 ? whole : Math.min(1, (double) done / budget);
    events.tell(
        "progress",
        Json.text(Json.object().put("stage", stage).put("step", step).put("share", share)));
  }

  /** How much of the stage is done. */
  void overall(double share) {
    whole = share;
  }

  @Override
  public boolean stopped() {
    goOn();
    return stopped.getAsBoolean();
  }

  private void goOn() {
    pause.pass(cancelled);
    if (cancelled.getAsBoolean()) {
      throw new GivenUp();
    }
  }
}
