import java.lang.management.ManagementFactory;

/** The yardstick of benchmarks/speed.sh: 1.0/i added 400 million times; prints processor seconds. */
final class Calibrator {

  public static void main(String[] args) {
    double warm = sum(40_000_000);
    long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    double sum = sum(400_000_000);
    long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before;
    // The sums are printed to the error stream so that no compiler leaves them out.
    System.err.println(warm + sum);
    System.out.printf(java.util.Locale.ROOT, "%.3f%n", nanos / 1e9);
  }

  private static double sum(int most) {
    double sum = 0;
    for (int i = 1; i <= most; i++) {
      sum += 1.0 / i;
    }
    return sum;
  }
}
