package curvestock.cli;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;

/**
 * What Ctrl-C does while there is an answer to save: the first one asks the work to end with the
 * best so far and leaves the machine running, so that libraries which refuse to work once it shuts
 * down can still draw; the second one ends everything at once.
 *
 * <p>By {@code sun.misc.Signal}, named at run time only, as compilers warn of it; where it is
 * missing, Ctrl-C ends the program as usual.
 */
final class Interrupt implements AutoCloseable {

  /** What shells report of a program that was interrupted. */
  private static final int INTERRUPTED = 130;

  private static final String[] SIGNALS = {"INT", "TERM"};

  private final Runnable first;
  private final Object[] before = new Object[SIGNALS.length];
  private boolean again;

  Interrupt(Runnable first) {
    this.first = first;
    for (int i = 0; i < SIGNALS.length; i++) {
      before[i] = handle(SIGNALS[i], handler());
    }
  }

  private Object handler() {
    try {
      Class<?> type = Class.forName("sun.misc.SignalHandler");
      return Proxy.newProxyInstance(
          type.getClassLoader(),
          new Class<?>[] {type},
          (proxy, method, arguments) -> answer(proxy, method, arguments));
    } catch (ClassNotFoundException e) {
      return this;
    }
  }

  private Object answer(Object proxy, Method method, Object... arguments) {
    return switch (method.getName()) {
      case "equals" -> proxy == arguments[0];
      case "hashCode" -> System.identityHashCode(proxy);
      case "toString" -> "finish first";
      default -> {
        interrupted();
        yield null;
      }
    };
  }

  private synchronized void interrupted() {
    if (again) {
      Runtime.getRuntime().halt(INTERRUPTED);
    }
    again = true;
    first.run();
  }

  /** The handler until now; this object where signals cannot be handled. */
  private Object handle(String name, Object handler) {
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Class<?> type = Class.forName("sun.misc.SignalHandler");
      return signal
          .getMethod("handle", signal, type)
          .invoke(null, signal.getConstructor(String.class).newInstance(name), handler);
    } catch (InvocationTargetException | IllegalArgumentException taken) {
      // The machine was started with its signals kept for itself (-Xrs).
      return this;
    } catch (ReflectiveOperationException missing) {
      return this;
    }
  }

  @Override
  public void close() {
    for (int i = 0; i < SIGNALS.length; i++) {
      if (before[i] != this) {
        handle(SIGNALS[i], before[i]);
      }
    }
  }
}
