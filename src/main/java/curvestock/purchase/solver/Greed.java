package curvestock.purchase.solver;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;

/** Picks the sheet that brings most wanted area for its money, with or without a little chance. */
final class Greed {

  /** A layout may look this much worse than it is, as a share. */
  private static final double CHANCE = 0.3;

  private final Choice choice;
  private final Optional<Random> random;
  private final OptionalInt shunned;

  /** Always the best. */
  Greed(Choice choice) {
    this(choice, Optional.empty(), OptionalInt.empty());
  }

  /**
   * The best for valuations that err at random.
   *
   * @param shunned a breakdown that no further sheet is bought for
   */
  Greed(Choice choice, Random random, OptionalInt shunned) {
    this(choice, Optional.of(random), shunned);
  }

  private Greed(Choice choice, Optional<Random> random, OptionalInt shunned) {
    this.choice = choice;
    this.random = random;
    this.shunned = shunned;
  }

  /** A complete choice; if stock runs out, pieces stay missing. */
  int[] uses() {
    Tally tally = new Tally(choice);
    int best = best(tally);
    while (best >= 0) {
      tally.add(best);
      best = best(tally);
    }
    return tally.uses();
  }

  /** The layout to add next, or -1 if none in stock brings a wanted piece. */
  int best(Tally tally) {
    int best = -1;
    double bestRate = 0;
    for (int j = 0; j < choice.layouts(); j++) {
      if (tally.inStock(j) && !isShunned(tally, j)) {
        // A panel of a sheet that is bought anyway costs nothing more.
        double price = tally.addsSheet(j) ? choice.rate[choice.panelOf[j]] : 1;
        double rate = wantedArea(tally, j) / price;
        if (random.isPresent() && rate > bestRate) {
          rate *= 1 - CHANCE * random.get().nextDouble();
        }
        if (rate > bestRate) {
          bestRate = rate;
          best = j;
        }
      }
    }
    return best;
  }

  private boolean isShunned(Tally tally, int layout) {
    return shunned.isPresent()
        && choice.breakdownOf[choice.panelOf[layout]] == shunned.getAsInt()
        && tally.addsSheet(layout);
  }

  private long wantedArea(Tally tally, int layout) {
    long area = 0;
    for (int kind : choice.kindsIn[layout]) {
      area += Math.min(choice.counts[layout][kind], tally.wanted(kind)) * choice.pieceArea[kind];
    }
    return area;
  }
}
