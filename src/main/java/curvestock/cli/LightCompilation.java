package curvestock.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Keeps HotSpot's optimising compiler from what runs for a few seconds only. In one command it took
 * as much of the processor as all else together: it paid for loops that were over by then. What it
 * leaves out runs as the first compiler made it. The loops that searches live on are compiled as
 * ever where a search may last; one that ends within some seconds does not earn that back.
 *
 * <p>By a compiler directive (JDK Enhancement Proposal 165), which the JVM takes at run time
 * through its diagnostic commands. A JVM that knows no such command goes on as ever, and no result
 * hangs on how code is compiled.
 */
final class LightCompilation {

  /** Where a long search spends its time, then all else; the first that names a method holds. */
  static final String DIRECTIVE =
      """
      [{match: ["curvestock/packing/Encounter.*", "curvestock/packing/Overlap.*",
                "curvestock/packing/*Field.*", "curvestock/packing/Minimiser.*",
                "curvestock/packing/Relaxation.*", "curvestock/packing/Walls.*",
                "curvestock/packing/Rotation.*", "curvestock/packing/Contact.*",
                "curvestock/packing/BroadPhase.*", "curvestock/bound/ThickArc.*",
                "curvestock/bound/Cell*.*", "curvestock/geometry/Flat*.*"],
        c2: {Exclude: false}},
       {match: ["*.*"], c2: {Exclude: true}}]
      """;

  /** Laid over the other, which it then hides. */
  static final String SHORT = "[{match: [\"*.*\"], c2: {Exclude: true}}]";

  /** Ends when the first directive was given; none in a process that does not end soon. */
  private static Optional<Thread> begun = Optional.empty();

  private LightCompilation() {}

  /**
   * Compiles lightly from now on; beside the caller, who need not wait. For a process that ends
   * with its command; without this call {@link #forShortSearch} does nothing. To be called first of
   * all: what makes lambdas at the start is else compiled for half a second.
   */
  static void begin() {
    begun = Optional.of(beside(() -> direct(DIRECTIVE)));
  }

  /** The search to come ends within some seconds: no loop of it is worth the second compiler. */
  static void forShortSearch() {
    begun.ifPresent(
        first ->
            beside(
                () -> {
                  first.join();
                  return direct(SHORT);
                }));
  }

  private static Thread beside(Callable<Boolean> work) {
    FutureTask<Boolean> task = new FutureTask<>(work);
    Thread thread = new Thread(task, "compiler directive");
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  /** Whether the JVM took it. */
  static boolean direct(String directive) {
    try {
      Path file = Files.createTempFile("curvestock", ".json");
      try {
        Files.writeString(file, directive);
        Object said =
            ManagementFactory.getPlatformMBeanServer()
                .invoke(
                    new ObjectName("com.sun.management:type=DiagnosticCommand"),
                    "compilerDirectivesAdd",
                    new Object[] {new String[] {file.toString()}},
                    new String[] {String[].class.getName()});
        return said.toString().contains("directives added");
      } finally {
        Files.deleteIfExists(file);
      }
    } catch (JMException | IOException | RuntimeException unknownHere) {
      return false;
    }
  }
}
