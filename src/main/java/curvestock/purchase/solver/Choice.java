package curvestock.purchase.solver;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The integer problem: use each layout a whole number of times so that every demand is covered.
 * Kinds, layouts, panels, breakdowns and products are indices. Arrays are taken over without a copy
 * and never written.
 */
public final class Choice {

  final int[] demand;
  final int[][] counts;
  final int[] panelOf;
  final int[] breakdownOf;
  final int[] perSheet;
  final int[][] panelsOf;
  final int[] productOf;
  final long[] cutting;
  final int[] available;
  final long[][] cost;
  final List<List<Tier>> tiers;
  final long[] pieceArea;
  final long[] panelArea;

  /** Area of a sheet of each product, carried whole or not; below zero if it costs nothing. */
  final long[] wood;

  /** A sheet that is not in stock weighs more than all pieces, so that shortage shows as pieces. */
  final long overrun;

  /**
   * What a panel costs about, its share of the sheet and its cuts; one more, so that among free
   * ones the fullest wins.
   */
  final double[] rate;

  /** For each layout the kinds that it holds, so that sums skip the zeros. */
  final int[][] kindsIn;

  /**
   * @param demand pieces wanted of each kind
   * @param counts for each layout, pieces of each kind
   * @param panelOf for each layout, the panel it lies on
   * @param panels the panels, those of a breakdown in a row
   * @param breakdowns the ways in which sheets are broken down into panels
   * @param available for each product, most sheets
   * @param cost for each product, money by number of sheets used, from 0 to at least the sum of the
   *     demands or the number available
   * @param tiers for each product, its price tiers; empty if none can be had
   * @param pieceArea area of each kind, in the unit of the panels' areas
   */
  public Choice(
      int[] demand,
      int[][] counts,
      int[] panelOf,
      List<PanelSupply> panels,
      List<BreakdownSupply> breakdowns,
      int[] available,
      long[][] cost,
      List<List<Tier>> tiers,
      long[] pieceArea) {
    this.demand = demand;
    this.counts = counts;
    this.panelOf = panelOf;
    this.breakdownOf = panels.stream().mapToInt(PanelSupply::breakdown).toArray();
    this.perSheet = panels.stream().mapToInt(PanelSupply::perSheet).toArray();
    this.panelArea = panels.stream().mapToLong(PanelSupply::area).toArray();
    this.productOf = breakdowns.stream().mapToInt(BreakdownSupply::product).toArray();
    this.cutting = breakdowns.stream().mapToLong(BreakdownSupply::cutting).toArray();
    this.panelsOf = new int[breakdowns.size()][];
    Arrays.setAll(
        panelsOf,
        b -> IntStream.range(0, panels.size()).filter(q -> breakdownOf[q] == b).toArray());
    this.available = available;
    this.cost = cost;
    this.tiers = tiers.stream().map(List::copyOf).toList();
    this.pieceArea = pieceArea;
    this.overrun = 1 + IntStream.of(demand).asLongStream().sum();
    this.rate = new double[panels.size()];
    for (int q = 0; q < rate.length; q++) {
      rate[q] = leastCost(q) + 1;
    }
    this.wood = new long[available.length];
    for (int q = 0; q < rate.length; q++) {
      int product = productOf[breakdownOf[q]];
      long area = Math.max(Math.abs(wood[product]), Math.round(panelArea[q] / share(q)));
      wood[product] = leastCostEach(product) > 0 ? area : -area;
    }
    this.kindsIn = new int[counts.length][];
    for (int j = 0; j < counts.length; j++) {
      int[] layout = counts[j];
      kindsIn[j] = IntStream.range(0, demand.length).filter(i -> layout[i] > 0).toArray();
    }
  }

  int layouts() {
    return counts.length;
  }

  /** Most panels that one sheet gives. */
  int mostPanels() {
    return IntStream.range(0, breakdowns())
        .map(b -> IntStream.of(panelsOf[b]).map(q -> perSheet[q]).sum())
        .max()
        .orElse(1);
  }

  int breakdowns() {
    return productOf.length;
  }

  int products() {
    return available.length;
  }

  /** The panel's share, by area, of what its sheet costs at the best quantity and its cuts cost. */
  private double leastCost(int panel) {
    return leastCostOfSheet(panel) * share(panel);
  }

  /** What a sheet broken down into such panels costs at the best quantity, with its cuts. */
  double leastCostOfSheet(int panel) {
    int breakdown = breakdownOf[panel];
    return leastCostEach(productOf[breakdown]) + cutting[breakdown];
  }

  /** The panel's share of its sheet, by area. */
  double share(int panel) {
    double all = 0;
    for (int q : panelsOf[breakdownOf[panel]]) {
      all += (double) perSheet[q] * panelArea[q];
    }
    return panelArea[panel] / all;
  }

  /** Money for each sheet of the product at the best quantity. */
  private double leastCostEach(int product) {
    double least = Double.POSITIVE_INFINITY;
    for (int n = 1; n < cost[product].length; n++) {
      least = Math.min(least, (double) cost[product][n] / n);
    }
    return least;
  }

  /** How good it is to use each layout so many times. */
  public Levels levels(int[] uses) {
    Tally tally = new Tally(this);
    tally.add(uses);
    return tally.levels();
  }
}
