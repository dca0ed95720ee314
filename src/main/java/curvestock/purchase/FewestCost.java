package curvestock.purchase;

import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.stream.IntStream;

/**
 * Least cost of whole numbers of sheets that meet every {@link DualFeasibleInequality} and the
 * stock: depth first over the products, in whole numbers. If it takes more than {@link #NODES}
 * steps, the answer is what the strongest inequality gives by itself for split sheets, which may be
 * lower but is as true.
 */
final class FewestCost {

  private static final int NODES = 300_000;

  /**
   * Cost of a number of sheets of one product.
   *
   * @param least no number of sheets costs less than this for each
   * @param available most sheets
   */
  record Price(IntToLongFunction total, long least, int available) {}

  private final List<DualFeasibleInequality> inequalities;
  private final List<Price> prices;
  private final List<List<Integer>> cheapestFirst;
  private int nodes;
  private long best;

  FewestCost(List<DualFeasibleInequality> inequalities, List<Price> prices) {
    this.inequalities = List.copyOf(inequalities);
    this.prices = List.copyOf(prices);
    this.cheapestFirst = this.inequalities.stream().map(this::cheapestFirst).toList();
  }

  /**
   * The least cost, or {@code known} if no cheaper numbers exist.
   *
   * @param known cost of a purchase that exists
   */
  long atLeast(long known) {
    long[] open = inequalities.stream().mapToLong(DualFeasibleInequality::wanted).toArray();
    nodes = 0;
    best = known;
    long plain = Math.min(known, remaining(0, open));
    branch(0, open, 0);
    return nodes <= NODES ? best : plain;
  }

  private void branch(int p, long[] open, long sofar) {
    nodes++;
    if (nodes > NODES || sofar >= best) {
      return;
    }
    if (met(open)) {
      best = sofar;
      return;
    }
    long rest = remaining(p, open);
    if (rest == Long.MAX_VALUE || Math.addExact(sofar, rest) >= best) {
      return;
    }
    int most = useful(p, open);
    for (int count = most; count >= 0; count--) {
      long[] left = open.clone();
      for (int m = 0; m < left.length; m++) {
        left[m] -= Math.multiplyExact(inequalities.get(m).perSheet().get(p), (long) count);
      }
      branch(p + 1, left, sofar + prices.get(p).total().applyAsLong(count));
    }
  }

  private static boolean met(long[] open) {
    for (long wanted : open) {
      if (wanted > 0) {
        return false;
      }
    }
    return true;
  }

  /** More sheets of the product than this meet nothing more. */
  private int useful(int p, long[] open) {
    long most = 0;
    for (int m = 0; m < open.length; m++) {
      long each = inequalities.get(m).perSheet().get(p);
      if (open[m] > 0 && each > 0) {
        most = Math.max(most, ceilDiv(open[m], each));
      }
    }
    return (int) Math.min(most, prices.get(p).available());
  }

  /**
   * What the products from {@code p} on cost at least, if sheets could be split and every sheet had
   * its least price: for each inequality the products cheapest for their weight first, as far as
   * the stock goes. {@link Long#MAX_VALUE} if they cannot meet a inequality at all.
   */
  private long remaining(int p, long[] open) {
    long most = 0;
    for (int m = 0; m < open.length; m++) {
      if (open[m] > 0) {
        most = Math.max(most, remaining(p, m, open[m]));
      }
    }
    return most;
  }

  private long remaining(int p, int inequality, long wanted) {
    long left = wanted;
    long cost = 0;
    for (int q : cheapestFirst.get(inequality)) {
      if (q >= p && left > 0) {
        Price price = prices.get(q);
        long each = inequalities.get(inequality).perSheet().get(q);
        if (ceilDiv(left, each) <= price.available()) {
          // Costs are whole numbers, so the sum may be rounded up.
          return Math.addExact(cost, ceilDiv(Math.multiplyExact(left, price.least()), each));
        }
        cost = Math.addExact(cost, Math.multiplyExact(price.least(), (long) price.available()));
        left -= Math.multiplyExact(each, (long) price.available());
      }
    }
    return left > 0 ? Long.MAX_VALUE : cost;
  }

  private List<Integer> cheapestFirst(DualFeasibleInequality inequality) {
    return IntStream.range(0, prices.size())
        .filter(q -> inequality.perSheet().get(q) > 0 && prices.get(q).available() > 0)
        .boxed()
        .sorted(
            (q, r) ->
                Long.compare(
                    Math.multiplyExact(prices.get(q).least(), inequality.perSheet().get(r)),
                    Math.multiplyExact(prices.get(r).least(), inequality.perSheet().get(q))))
        .toList();
  }

  private static long ceilDiv(long a, long b) {
    return -Math.floorDiv(-a, b);
  }
}
