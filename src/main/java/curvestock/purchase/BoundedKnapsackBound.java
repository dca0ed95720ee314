package curvestock.purchase;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Most weight that one sheet can hold under its limits: a bounded knapsack, solved exactly by
 * branch and bound, or from above if that takes more than {@link #NODES} steps. Whole numbers
 * throughout; areas are rounded in favour of the sheet.
 */
final class BoundedKnapsackBound {

  /** Thousandths of a square millimetre: fine enough to lose nothing, coarse enough for longs. */
  private static final double AREA_UNITS = 1000;

  private static final int NODES = 20_000;

  private final long capacity;
  private final long[] weight;
  private final long[] area;
  private final long[] most;
  private int nodes;
  private long best;

  /**
   * @param demand a sheet never needs to hold more of a kind than is wanted
   */
  BoundedKnapsackBound(SheetLimit limit, long[] weights, int[] demand) {
    this.capacity =
        (long) Math.ceil(limit.capacity() * (1 + PackingLimits.AREA_SLACK) * AREA_UNITS);
    long[] areas = limit.areas().stream().mapToLong(BoundedKnapsackBound::roundedDown).toArray();
    List<Integer> heaviestForItsAreaFirst =
        IntStream.range(0, weights.length)
            .filter(i -> weights[i] > 0)
            .boxed()
            .sorted(
                (i, j) ->
                    Long.compare(
                        Math.multiplyExact(weights[j], areas[i]),
                        Math.multiplyExact(weights[i], areas[j])))
            .toList();
    int n = heaviestForItsAreaFirst.size();
    this.weight = new long[n];
    this.area = new long[n];
    this.most = new long[n];
    for (int k = 0; k < n; k++) {
      int i = heaviestForItsAreaFirst.get(k);
      weight[k] = weights[i];
      area[k] = areas[i];
      most[k] = Math.min(demand[i], limit.counts().get(i));
    }
  }

  private static long roundedDown(double area) {
    return Math.max(1, (long) Math.floor(area * (1 - PackingLimits.AREA_SLACK) * AREA_UNITS));
  }

  /** An upper bound on the weight, exact if the branch and bound came to its end. */
  long weight() {
    best = 0;
    nodes = 0;
    branch(0, capacity, 0);
    return nodes <= NODES ? best : atMost(0, capacity);
  }

  private void branch(int k, long room, long sofar) {
    nodes++;
    best = Math.max(best, sofar);
    if (k == weight.length || nodes > NODES || sofar + atMost(k, room) <= best) {
      return;
    }
    for (long count = Math.min(most[k], room / area[k]); count >= 0; count--) {
      branch(k + 1, room - count * area[k], sofar + count * weight[k]);
    }
  }

  /**
   * Weight of the kinds from {@code k} on if pieces could be split, which is never less than the
   * weight of whole ones. Right because the kinds are sorted, exactly, heaviest for its area first.
   */
  private long atMost(int k, long room) {
    long sum = 0;
    long left = room;
    for (int q = k; q < weight.length; q++) {
      long whole = Math.multiplyExact(most[q], area[q]);
      if (whole > left) {
        return sum + share(q, left);
      }
      sum += most[q] * weight[q];
      left -= whole;
    }
    return sum;
  }

  private long share(int q, long left) {
    return Math.multiplyExact(weight[q], left) / area[q];
  }
}
