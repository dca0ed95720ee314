package curvestock.bench;

import java.lang.management.ManagementFactory;

/** What a run spends itself, however busy the machine. */
final class ProcessorTime {

  private ProcessorTime() {}

  /**
   * Processor seconds of the calling thread so far: what the program's own work takes, where all of
   * it is done on one thread ({@code java.util.concurrent.ForkJoinPool.common.parallelism=0}).
   */
  static double seconds() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }

  /**
   * Processor seconds of the whole process so far, native threads, compilers and collectors
   * included; in steps of a hundredth of a second.
   */
  static double ofProcess() {
    java.lang.management.OperatingSystemMXBean system =
        ManagementFactory.getOperatingSystemMXBean();
    return ((com.sun.management.OperatingSystemMXBean) system).getProcessCpuTime() / 1e9;
  }
}
