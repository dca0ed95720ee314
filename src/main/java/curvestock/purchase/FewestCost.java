package curvestock.purchase;

import java.util.List;
import java.util.function.IntToLongFunction;

/**
 * Least cost of whole numbers of sheets that meet every {@link Cover} and the stock: depth first
 * over the products, in whole numbers. If it takes more than {@link #NODES} steps, the answer is
 * the plain bound of the strongest cover, which is lower but as true.
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

  private final List<Cover> covers;
  private final List<Price> prices;
  private int nodes;
  private long best;

  FewestCost(List<Cover> covers, List<Price> prices) {
    this.covers = List.copyOf(covers);
    this.prices = List.copyOf(prices);
  }

  /**
   * The least cost, or {@code known} if no cheaper numbers exist.
   *
   * @param known cost of a purchase that exists
   */
  long atLeast(long known) {
    long[] open = covers.stream().mapToLong(Cover::wanted).toArray();
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
        left[m] -= Math.multiplyExact(covers.get(m).perSheet().get(p), (long) count);
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
      long each = covers.get(m).perSheet().get(p);
      if (open[m] > 0 && each > 0) {
        most = Math.max(most, ceilDiv(open[m], each));
      }
    }
    return (int) Math.min(most, prices.get(p).available());
  }

  /**
   * What the products from {@code p} on cost at least, at their least prices and any stock; {@link
   * Long#MAX_VALUE} if they cannot meet a cover at all.
   */
  private long remaining(int p, long[] open) {
    long most = 0;
    for (int m = 0; m < open.length; m++) {
      if (open[m] > 0) {
        long least = Long.MAX_VALUE;
        for (int q = p; q < prices.size(); q++) {
          long each = covers.get(m).perSheet().get(q);
          if (each > 0 && prices.get(q).available() > 0) {
            least =
                Math.min(least, ceilDiv(Math.multiplyExact(open[m], prices.get(q).least()), each));
          }
        }
        most = Math.max(most, least);
      }
    }
    return most;
  }

  private static long ceilDiv(long a, long b) {
    return -Math.floorDiv(-a, b);
  }
}
