package curvestock.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;

/**
 * The yardstick of the reports: processor seconds that this machine takes to add 1.0/i 400 million
 * times. Times over it travel better from machine to machine than seconds. Needs no other class, so
 * that scripts can compile it alone.
 */
final class Calibrator {

  private Calibrator() {}

  /** Prints the seconds. */
  public static void main(String[] args) {
    System.out.printf(Locale.ROOT, "%.3f%n", seconds());
  }

  /**
   * Measured once, at the first call: a second time in the same process it takes less than half,
   * since the compiler has learnt the loop by then.
   */
  static double seconds() {
    return Once.SECONDS;
  }

  private static final class Once {
    private static final double SECONDS = measured();
  }

  private static double measured() {
    double warm = sum(40_000_000);
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    double sum = sum(400_000_000);
    long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    if (warm + sum < 0) {
      throw new IllegalStateException("sums are looked at so that no compiler leaves them out");
    }
    return nanos / 1e9;
  }

  private static double sum(int most) {
    double sum = 0;
    for (int i = 1; i <= most; i++) {
      sum += 1.0 / i;
    }
    return sum;
  }
}
