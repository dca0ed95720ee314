package curvestock.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.management.JMException;
import javax.management.ObjectName;

/**
 * Keeps HotSpot's optimising compiler from what runs for a few seconds only. In one command it took
 * as much of the processor as all else together: it paid for loops that were over by then. What it
 * leaves out runs as the first compiler made it. The loops that searches live on are compiled as
 * ever, since a search may last.
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

  private static boolean ownProcess;

  private LightCompilation() {}

  /** Says that this process ends with the command; without it nothing is done. */
  static void allow() {
    ownProcess = true;
  }

  /** Compiles lightly from now on; beside the caller, who need not wait. */
  static void begin() {
    if (ownProcess) {
      ownProcess = false;
      Thread thread = new Thread(() -> direct(DIRECTIVE), "compiler directive");
      thread.setDaemon(true);
      thread.start();
    }
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
