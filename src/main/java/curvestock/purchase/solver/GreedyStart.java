package curvestock.purchase.solver;

/**
 * A complete start: again and again the sheet that brings most wanted area for its money. If stock
 * runs out, pieces stay missing.
 */
final class GreedyStart {

  private GreedyStart() {}

  static int[] uses(Choice choice) {
    double[] price = new double[choice.products()];
    for (int p = 0; p < price.length; p++) {
      // One minor unit more, so that among free sheets the fullest wins.
      price[p] = choice.available[p] > 0 ? choice.leastCostEach(p) + 1 : 1;
    }
    Tally tally = new Tally(choice);
    int best = best(choice, tally, price);
    while (best >= 0) {
      tally.add(best);
      best = best(choice, tally, price);
    }
    return tally.uses();
  }

  private static int best(Choice choice, Tally tally, double[] price) {
    int best = -1;
    double bestRate = 0;
    for (int j = 0; j < choice.columns(); j++) {
      if (tally.inStock(j)) {
        double area = 0;
        for (int kind : choice.kindsIn[j]) {
          area +=
              (double) Math.min(choice.counts[j][kind], tally.wanted(kind))
                  * choice.pieceArea[kind];
        }
        double rate = area / price[choice.productOf[j]];
        if (rate > bestRate) {
          bestRate = rate;
          best = j;
        }
      }
    }
    return best;
  }
}
