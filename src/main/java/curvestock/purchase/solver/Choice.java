package curvestock.purchase.solver;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The integer problem: use each column a whole number of times so that every demand is covered.
 * Kinds, columns and products are indices. Arrays are taken over without a copy and never written.
 */
public final class Choice {

  final int[] demand;
  final int[][] counts;
  final int[] productOf;
  final int[] available;
  final long[][] cost;
  final List<List<Tier>> tiers;
  final long[] pieceArea;
  final long[] sheetArea;

  /** A sheet that is not in stock weighs more than all pieces, so that shortage shows as pieces. */
  final long overrun;

  /**
   * What a sheet of the product costs about; one more, so that among free sheets the fullest wins.
   */
  final double[] rate;

  /** For each column the kinds that it holds, so that sums skip the zeros. */
  final int[][] kindsIn;

  /**
   * @param demand pieces wanted of each kind
   * @param counts for each column, pieces of each kind
   * @param productOf for each column, its product
   * @param available for each product, most sheets
   * @param cost for each product, money by number of sheets used, from 0 to at least the sum of the
   *     demands or the number available
   * @param tiers for each product, its price tiers; empty if none can be had
   * @param pieceArea area of each kind
   * @param sheetArea area of each product, in the same unit
   */
  public Choice(
      int[] demand,
      int[][] counts,
      int[] productOf,
      int[] available,
      long[][] cost,
      List<List<Tier>> tiers,
      long[] pieceArea,
      long[] sheetArea) {
    this.demand = demand;
    this.counts = counts;
    this.productOf = productOf;
    this.available = available;
    this.cost = cost;
    this.tiers = tiers.stream().map(List::copyOf).toList();
    this.pieceArea = pieceArea;
    this.sheetArea = sheetArea;
    this.overrun = 1 + IntStream.of(demand).asLongStream().sum();
    this.rate = new double[available.length];
    for (int p = 0; p < rate.length; p++) {
      rate[p] = leastCostEach(p) + 1;
    }
    this.kindsIn = new int[counts.length][];
    for (int j = 0; j < counts.length; j++) {
      int[] column = counts[j];
      kindsIn[j] = IntStream.range(0, demand.length).filter(i -> column[i] > 0).toArray();
    }
  }

  int columns() {
    return counts.length;
  }

  int products() {
    return available.length;
  }

  /** Money for each sheet of the product at the best quantity. */
  private double leastCostEach(int product) {
    double least = Double.POSITIVE_INFINITY;
    for (int n = 1; n < cost[product].length; n++) {
      least = Math.min(least, (double) cost[product][n] / n);
    }
    return least;
  }

  /** How good it is to use each column so many times. */
  public Levels levels(int[] uses) {
    Tally tally = new Tally(this);
    tally.add(uses);
    return tally.levels();
  }
}
