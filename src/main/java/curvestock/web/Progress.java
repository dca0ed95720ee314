package curvestock.web;

import curvestock.compare.CompareListener;
import curvestock.compare.FirstLook;
import java.util.List;
import java.util.function.BooleanSupplier;

/** Tells a page how far a search has come: a few times a second; the searches tell far oftener. */
final class Progress implements CompareListener {

  private static final long PAUSE_NANOS = 250_000_000;

  private final WorkEvents events;
  private final BooleanSupplier stopped;
  private long begun = System.nanoTime();
  private long lastTold;
  private String step = "";

  Progress(WorkEvents events, BooleanSupplier stopped) {
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
