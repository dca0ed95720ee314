package curvestock.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * What a computation has told so far and tells on. Whoever listens late hears the last event of
 * each name first, in their order, so that nothing but stale news is missed.
 */
final class WorkEvents {

  /** One event: its name and its JSON. */
  record Event(String name, String json) {}

  /** Somebody who listens, with what he has not been told yet. */
  private static final class Listener {

    private final Consumer<Event> hear;
    private final Queue<Event> due = new ConcurrentLinkedQueue<>();
    private final AtomicBoolean hearing = new AtomicBoolean();

    Listener(Consumer<Event> hear) {
      this.hear = hear;
    }

    /**
     * Tells what is due, in order; one thread at a time, the others go on. No lock is held: a slow
     * line must not hold up whoever tells something else.
     */
    void catchUp() {
      while (!due.isEmpty() && hearing.compareAndSet(false, true)) {
        try {
          for (Event event = due.poll(); event != null; event = due.poll()) {
            hear.accept(event);
          }
        } finally {
          hearing.set(false);
        }
      }
    }
  }

  private final List<Event> told = new ArrayList<>();
  private final List<Listener> listeners = new ArrayList<>();
  private Event last;

  void tell(String name, String json) {
    spread(new Event(name, json), false);
  }

  /** Tells the last event; nothing is told after it. */
  void end(String name, String json) {
    spread(new Event(name, json), true);
  }

  private void spread(Event event, boolean isLast) {
    List<Listener> hearers;
    synchronized (this) {
      if (last != null) {
        return;
      }
      told.removeIf(before -> before.name().equals(event.name()));
      told.add(event);
      hearers = List.copyOf(listeners);
      hearers.forEach(listener -> listener.due.add(event));
      if (isLast) {
        last = event;
        listeners.clear();
      }
    }
    hearers.forEach(Listener::catchUp);
  }

  void listen(Consumer<Event> hear) {
    Listener listener = new Listener(hear);
    synchronized (this) {
      listener.due.addAll(told);
      if (last == null) {
        listeners.add(listener);
      }
    }
    listener.catchUp();
  }

  synchronized void leave(Consumer<Event> hear) {
    listeners.removeIf(listener -> listener.hear == hear);
  }

  /** How many listen. */
  synchronized int listening() {
    return listeners.size();
  }

  synchronized boolean isOver() {
    return last != null;
  }

  /** Whether more is to be told and nobody listens. */
  synchronized boolean isUnheard() {
    return last == null && listeners.isEmpty();
  }

  /** Whether nothing follows this event. */
  synchronized boolean isLast(Event event) {
    return event.equals(last);
  }
}
