package curvestock.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.util.List;

/** The most that the heap held since this was made, what awaits the collector included. */
final class PeakHeap {

  private final List<MemoryPoolMXBean> pools =
      ManagementFactory.getMemoryPoolMXBeans().stream()
          .filter(pool -> pool.getType() == MemoryType.HEAP)
          .toList();

  PeakHeap() {
    System.gc();
    pools.forEach(MemoryPoolMXBean::resetPeakUsage);
  }

  /** MiB: the sum of the peaks of all pools, at least as large as the true peak. */
  double mebibytes() {
    return pools.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum()
        / (double) (1 << 20);
  }
}
