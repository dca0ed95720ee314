package curvestock.web;

import curvestock.packing.Packers;
import curvestock.packing.RecentPackings;
import io.javalin.http.ServiceUnavailableResponse;
import java.util.HashMap;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The computations that run and wait, at most one for each client: a new one cancels the old. Few
 * run at once, few wait, few finished ones are kept.
 */
final class Works implements AutoCloseable {

  private static final int RUNNING = 2;
  private static final int AT_ONCE = 2;
  private static final long MOST_KEPT_CHARACTERS = 24_000_000;
  private static final int WAITING = 8;
  private static final int KEPT = 24;
  private static final long PATIENCE_SECONDS = 20;

  private final ThreadPoolExecutor workers = pool(RUNNING, "computation");
  private final ThreadPoolExecutor first = pool(AT_ONCE, "first-words");
  private final ScheduledThreadPoolExecutor closing =
      new ScheduledThreadPoolExecutor(1, daemons("abandoned-computations"));
  private final Shared shared;

  /** By id, the longest unused first; those that were replaced are kept to tell that they were. */
  private final Map<String, Work> kept = new LinkedHashMap<>(16, 0.75f, true);

  private final Map<String, Work> byClient = new HashMap<>();

  /**
   * @param packers whose store is asked for packings that were not made in this run
   */
  Works(Packers packers) {
    this.shared =
        new Shared(
            new Packers(new RecentPackings(packers.store(), MOST_KEPT_CHARACTERS)),
            new KnownPlans(),
            new Pause());
  }

  private static ThreadPoolExecutor pool(int threads, String name) {
    return new ThreadPoolExecutor(
        threads, threads, 1, TimeUnit.MINUTES, new ArrayBlockingQueue<>(WAITING), daemons(name));
  }

  private static ThreadFactory daemons(String name) {
    return task -> {
      Thread thread = new Thread(task, name);
      thread.setDaemon(true);
      return thread;
    };
  }

  Shared shared() {
    return shared;
  }

  /** Does the task as soon as a thread is free for it, or not at all: it only saves time later. */
  void prepare(Runnable task) {
    if (first.getQueue().isEmpty()) {
      first.execute(task);
    }
  }

  /** Cancels the work in a while, unless somebody listens to it then: its page may be gone. */
  void stopIfAbandoned(Work work) {
    if (!closing.isShutdown()) {
      ScheduledFuture<?> unused =
          closing.schedule(
              () -> {
                if (work.events().isUnheard()) {
                  stop(work);
                }
              },
              PATIENCE_SECONDS,
              TimeUnit.SECONDS);
    }
  }

  /** Starts the work and cancels the client's former one. */
  synchronized void start(String client, Work work) {
    Work former = byClient.remove(client);
    if (former != null) {
      cancel(former);
    }
    try {
      workers.execute(work);
    } catch (RejectedExecutionException e) {
      throw new ServiceUnavailableResponse(
          "too many computations are waiting; try again in a minute");
    }
    if (first.getQueue().remainingCapacity() > 0) {
      first.execute(work::begin);
    }
    stopIfAbandoned(work);
    byClient.put(client, work);
    kept.put(work.id(), work);
    forgetOldest();
  }

  private void forgetOldest() {
    Iterator<Work> oldest = kept.values().iterator();
    while (kept.size() > KEPT && oldest.hasNext()) {
      Work work = oldest.next();
      oldest.remove();
      byClient.values().remove(work);
      cancel(work);
    }
  }

  /** How many streams of events are open. */
  synchronized int listening() {
    return kept.values().stream().mapToInt(work -> work.events().listening()).sum();
  }

  private void cancel(Work work) {
    work.cancel();
    workers.remove(work);
  }

  synchronized Optional<Work> find(String id) {
    return Optional.ofNullable(kept.get(id));
  }

  /** Cancels a work; what it has found until then is kept. */
  synchronized void stop(Work work) {
    cancel(work);
  }

  @Override
  public synchronized void close() {
    byClient.values().forEach(this::cancel);
    workers.shutdownNow();
    first.shutdownNow();
    closing.shutdownNow();
  }
}
