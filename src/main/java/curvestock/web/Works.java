package curvestock.web;

import io.javalin.http.ServiceUnavailableResponse;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/**
 * The computations that run and wait, at most one for each client: a new one cancels the old. Few
 * run at once, few wait, few finished ones are kept.
 */
final class Works implements AutoCloseable {

  private static final int RUNNING = 2;
  private static final int WAITING = 8;
  private static final int KEPT = 24;
  private static final long PATIENCE_SECONDS = 20;

  private final ThreadPoolExecutor workers =
      new ThreadPoolExecutor(
          RUNNING,
          RUNNING,
          1,
          TimeUnit.MINUTES,
          new ArrayBlockingQueue<>(WAITING),
          task -> {
            Thread thread = new Thread(task, "computation");
            thread.setDaemon(true);
            return thread;
          });

  private final ScheduledThreadPoolExecutor closing =
      new ScheduledThreadPoolExecutor(
          1,
          task -> {
            Thread thread = new Thread(task, "abandoned-computations");
            thread.setDaemon(true);
            return thread;
          });

  /** By client, the longest unused first. */
  private final Map<String, Work> byClient = new LinkedHashMap<>(16, 0.75f, true);

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
    byClient.put(client, work);
    forgetOldest();
  }

  private void forgetOldest() {
    Iterator<Work> oldest = byClient.values().iterator();
    while (byClient.size() > KEPT && oldest.hasNext()) {
      Work work = oldest.next();
      oldest.remove();
      cancel(work);
    }
  }

  private void cancel(Work work) {
    work.cancel();
    workers.remove(work);
  }

  synchronized Optional<Work> find(String id) {
    return byClient.values().stream().filter(work -> work.id().equals(id)).findFirst();
  }

  /** Cancels a work; what it has found until then is kept. */
  synchronized void stop(Work work) {
    cancel(work);
  }

  @Override
  public synchronized void close() {
    byClient.values().forEach(this::cancel);
    workers.shutdownNow();
    closing.shutdownNow();
  }
}
