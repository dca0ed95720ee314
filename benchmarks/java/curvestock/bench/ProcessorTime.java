package curvestock.bench;

import java.lang.management.ManagementFactory;

/** What a run spends itself, however busy the machine: of use only in runs of one thread. */
final class ProcessorTime {

  private ProcessorTime() {}

  /** Processor seconds of the calling thread so far. */
  static double seconds() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() / 1e9;
  }
}
