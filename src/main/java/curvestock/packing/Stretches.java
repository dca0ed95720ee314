package curvestock.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * Runs lanes side by side, on as many threads as are free, a stretch at a time: a thread takes the
 * lane that is furthest behind. Lanes do not wait for each other, and yet end as if all of them had
 * met after each stretch, the last of them the first one in which a lane solved, or at whose end
 * the budget was used up. What a lane has done beyond that is forgotten.
 */
final class Stretches {

  /** A lane, which one thread at a time moves on. */
  interface Runner {
    /** Goes on for one stretch, or until solved. */
    void advance();

    boolean solved();

    /** How near it is to solved. */
    double energy();

    /** Pairs tested so far. */
    long work();
  }

  /** A lane's work and energy after each of its stretches. */
  private static final class Log {
    private final List<Long> work = new ArrayList<>();
    private final List<Double> energy = new ArrayList<>();
    private boolean running;
    private boolean solved;

    int stretches() {
      return work.size();
    }

    /** Work by the end of a stretch, or of its last one. */
    long work(int stretch) {
      int known = Math.min(stretch, work.size());
      return known == 0 ? 0 : work.get(known - 1);
    }

    boolean solvedIn(int stretch) {
      return solved && work.size() == stretch;
    }
  }

  private final List<? extends Runner> runners;
  private final List<Log> logs = new ArrayList<>();
  private final long budget;
  private final Control control;
  private int common;
  private boolean stopped;

  /**
   * Asks {@code control} at the start and whenever all lanes have come one stretch further, so as
   * often on any number of threads; on any of them, but never on two at once.
   */
  Stretches(List<? extends Runner> runners, long budget, Control control) {
    this.runners = runners;
    this.budget = budget;
    this.control = control;
    runners.forEach(runner -> logs.add(new Log()));
  }

  /** The calling thread works too. */
  void run() {
    stopped = control.stopped();
    IntStream.range(0, runners.size()).parallel().forEach(any -> work());
  }

  private void work() {
    int number = next();
    while (number >= 0) {
      Runner runner = runners.get(number);
      runner.advance();
      done(number, runner);
      number = next();
    }
  }

  /** The lane to go on with, which then is this thread's; or −1. */
  private synchronized int next() {
    int next = -1;
    for (int number = 0; number < logs.size(); number++) {
      boolean goes = !logs.get(number).running && goesOn(logs.get(number));
      if (goes && (next < 0 || logs.get(number).stretches() < logs.get(next).stretches())) {
        next = number;
      }
    }
    if (next >= 0) {
      logs.get(next).running = true;
    }
    return next;
  }

  private boolean goesOn(Log log) {
    int after = log.stretches();
    return !stopped
        && !log.solved
        && logs.stream().noneMatch(other -> other.solved && other.stretches() <= after)
        && work(after) < budget;
  }

  /** Work of all lanes by the end of a stretch; of lanes that are not so far, what is known. */
  private long work(int stretch) {
    return logs.stream().mapToLong(log -> log.work(stretch)).sum();
  }

  private synchronized void done(int number, Runner runner) {
    Log log = logs.get(number);
    log.work.add(runner.work());
    log.energy.add(runner.energy());
    log.solved = runner.solved();
    log.running = false;
    int all = logs.stream().mapToInt(Log::stretches).min().orElse(0);
    while (common < all) {
      common++;
      control.worked(work(common), budget);
      stopped |= control.stopped();
    }
  }

  /** The lane that solved first, the lowest of those that solved in the same stretch. */
  OptionalInt winner() {
    int last = last();
    return IntStream.range(0, logs.size())
        .filter(number -> logs.get(number).solvedIn(last))
        .findFirst();
  }

  /** The least energy after any stretch that counts. */
  double nearest() {
    int last = last();
    return logs.stream()
        .flatMap(log -> log.energy.stream().limit(last))
        .mapToDouble(Double::doubleValue)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }

  /** The last stretch that counts: in which a lane solved, or the budget ended. */
  private int last() {
    int most = logs.stream().mapToInt(Log::stretches).max().orElse(0);
    for (int stretch = 1; stretch <= most; stretch++) {
      int now = stretch;
      if (work(now) >= budget || logs.stream().anyMatch(log -> log.solvedIn(now))) {
        return now;
      }
    }
    return most;
  }
}
