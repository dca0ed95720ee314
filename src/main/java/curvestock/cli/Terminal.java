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

  private static final long PATIENCE_MILLIS = 60_000;
  private static final int PERMILLE = 1000;

  private final boolean quiet;
  private final boolean interactive;
  private final AtomicBoolean stop = new AtomicBoolean();
  private final Thread hook;
  private ProgressBar bar;

  Terminal(boolean quiet) {
    this.quiet = quiet;
    this.interactive = !quiet && exists();
    Thread worker = Thread.currentThread();
    hook = new Thread(() -> finishFirst(worker), "finish-first");
    Runtime.getRuntime().addShutdownHook(hook);
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

  /** Runs when the machine is asked to stop: lets the worker write what it has. */
  private void finishFirst(Thread worker) {
    stop.set(true);
    System.err.println();
    System.err.println("Stopping with the best so far ...");
    try {
      worker.join(PATIENCE_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void step(String what) {
    closeBar();
    if (interactive) {
      bar =
          new ProgressBarBuilder()
              .setTaskName(what)
              .setInitialMax(PERMILLE)
              .setStyle(ProgressBarStyle.ASCII)
              .hideEta()
              .build();
    } else if (!quiet) {
      System.err.println(what + " ...");
    }
  }

  @Override
  public void worked(long done, long budget) {
    if (bar != null) {
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
    if (!stop.get()) {
      Runtime.getRuntime().removeShutdownHook(hook);
    }
  }
}
