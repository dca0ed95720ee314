package curvestock.web;

import java.util.function.BooleanSupplier;

/**
 * Lets searches wait while somebody waits for something shorter, such as a packet, so that it gets
 * the whole machine.
 */
final class Pause {

  private static final long LONGEST_WAIT_MILLIS = 200;

  private int holders;

  synchronized void begin() {
    holders++;
  }

  synchronized void end() {
    holders--;
    notifyAll();
  }

  /** Returns when nobody holds the searches, or this one is no longer wanted. */
  synchronized void pass(BooleanSupplier unwanted) {
    try {
      while (holders > 0 && !unwanted.getAsBoolean()) {
        wait(LONGEST_WAIT_MILLIS);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
