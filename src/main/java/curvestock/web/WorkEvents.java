package curvestock.web;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * What a computation has told so far and tells on. Whoever listens late hears the last event of
 * each name first, in their order, so that nothing but stale news is missed.
 */
final class WorkEvents {

  /** One event: its name and its JSON. */
  record Event(String name, String json) {}

  private final List<Event> told = new ArrayList<>();
  private final List<Consumer<Event>> listeners = new ArrayList<>();
  private Event last;

  synchronized void tell(String name, String json) {
    if (last != null) {
      return;
    }
    Event event = new Event(name, json);
    told.removeIf(before -> before.name().equals(name));
    told.add(event);
    List.copyOf(listeners).forEach(listener -> listener.accept(event));
  }

  /** Tells the last event; nothing is told after it. */
  synchronized void end(String name, String json) {
    if (last != null) {
      return;
    }
    last = new Event(name, json);
    told.add(last);
    List.copyOf(listeners).forEach(listener -> listener.accept(last));
    listeners.clear();
  }

  synchronized void listen(Consumer<Event> listener) {
    told.forEach(listener);
    if (last == null) {
      listeners.add(listener);
    }
  }

  synchronized void leave(Consumer<Event> listener) {
    listeners.remove(listener);
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
