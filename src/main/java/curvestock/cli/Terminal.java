package curvestock.cli;

import curvestock.plan.PlanListener;
import java.io.Console;
import java.util.concurrent.atomic.AtomicBoolean;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * Shows progress on the terminal, and on Ctrl-C asks the work to stop with the best so far. Where
 * the error stream is no terminal, one plain line a step is printed and no bar.
 */
final class Terminal implements PlanListener, AutoCloseable {

  private static final int PERMILLE = 1000;
  private static final double EARLIEST_ESTIMATE = 0.1;

  /** In seconds; less is over before it is read. */
  private static final long LEAST_ESTIMATE = 3;

  private final boolean quiet;
  private final boolean interactive;
  private final AtomicBoolean stop = new AtomicBoolean();
  private final Interrupt interrupt;
  private long started;
  private ProgressBar bar;
  private double overall = -1;

  /** How much was done when a line was last printed. */
  private double told = -1;

  Terminal(boolean quiet) {
    this.quiet = quiet;
    this.interactive = !quiet && exists();
    this.interrupt = new Interrupt(this::finishFirst);
  }

  /** From Java 22 on there is always a console, and it says itself whether it is a terminal. */
  @SuppressWarnings("SystemConsoleNull")
  static boolean exists() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (ReflectiveOperationException e) {
      return false;
    }
  }

  /** Runs on Ctrl-C: the worker ends with what it has. */
  private void finishFirst() {
    stop.set(true);
    LightCompilation.forShortSearch();
    System.err.println();
    System.err.println("Stopping with the best so far ...");
  }

  /** How much of all work is done, from 0 to 1: from then on one bar stands for the whole. */
  void overall(double share) {
    if (interactive && overall < 0) {
      closeBar();
      bar = bar("working");
    }
    if (overall < 0) {
      started = System.nanoTime();
    }
    overall = Math.max(overall, share);
    if (bar != null) {
      bar.stepTo(Math.round(PERMILLE * overall));
    }
  }

  /** How long it will still take if it goes on as until now; nothing too early to say. */
  private String estimate() {
    if (overall < EARLIEST_ESTIMATE) {
      return "";
    }
    return estimate((System.nanoTime() - started) / 1e9, overall);
  }

  /** In plain words, from the seconds that a share of the work took; nothing when it ends soon. */
  static String estimate(double seconds, double share) {
    long left = Math.round(seconds * (1 - share) / share);
    if (left < LEAST_ESTIMATE) {
      return "";
    }
    return left < 90
        ? " (about " + Math.round(left / 5.0) * 5 + " s to go)"
        : " (about " + Math.round(left / 60.0) + " min to go)";
  }

  private static ProgressBar bar(String name) {
    return new ProgressBarBuilder()
        .setTaskName(name)
        .setInitialMax(PERMILLE)
        .setStyle(ProgressBarStyle.ASCII)
        .hideEta()
        .build();
  }

  @Override
  public void step(String what) {
    if (overall >= 0) {
      if (bar != null) {
        // First, or a window of 80 columns has no room for it.
        bar.setExtraMessage(estimate() + " " + what);
      } else if (!quiet && overall > told) {
        told = overall;
        System.err.println(what + estimate() + " ...");
      }
      return;
    }
    closeBar();
    if (interactive) {
      bar = bar(what);
    } else if (!quiet) {
      System.err.println(what + " ...");
    }
  }

  @Override
  public void worked(long done, long budget) {
    if (bar != null && overall < 0) {
      bar.stepTo(Math.min(PERMILLE, done * PERMILLE / Math.max(1, budget)));
    }
  }

  @Override
  public boolean stopped() {
    return stop.get();
  }

  private void closeBar() {
    if (bar != null) {
      bar.close();
      bar = null;
    }
  }

  @Override
  public void close() {
    closeBar();
    interrupt.close();
  }
}
