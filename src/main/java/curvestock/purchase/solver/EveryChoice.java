package curvestock.purchase.solver;

import java.util.Arrays;
import java.util.Optional;

/**
 * The best choice of all, by trying every one that could be better: depth first over the layouts,
 * those left out that must cost more. For a few sheets and layouts that is far quicker than a
 * search, and exact; for many it gives up.
 *
 * <p>What a choice costs at least: each use of a layout its share, by area, of the least that its
 * sheet costs; and the pieces still wanted of any kind the least share that a layout asks for each
 * of them.
 */
final class EveryChoice {

  private static final int MOST_STEPS = 200_000;
  private static final double ROUNDING = 1e-6;

  private final Choice choice;
  private final Tally tally;

  /** For each layout its share of a sheet, and of that sheet's least money. */
  private final double[] sheetShare;

  private final double[] moneyShare;

  /** For each layout and kind, the least share for a piece in this layout or those after it. */
  private final double[][] sheetsEach;

  private final double[][] moneyEach;

  private int[] best;
  private Levels least;
  private int steps;

  EveryChoice(Choice choice) {
    this.choice = choice;
    this.tally = new Tally(choice);
    int layouts = choice.layouts();
    sheetShare = new double[layouts];
    moneyShare = new double[layouts];
    for (int j = 0; j < layouts; j++) {
      int panel = choice.panelOf[j];
      sheetShare[j] = choice.share(panel);
      moneyShare[j] = sheetShare[j] * choice.leastCostOfSheet(panel);
    }
    sheetsEach = each(sheetShare);
    moneyEach = each(moneyShare);
  }

  private double[][] each(double[] share) {
    double[][] each = new double[choice.layouts() + 1][choice.demand.length];
    Arrays.fill(each[choice.layouts()], Double.POSITIVE_INFINITY);
    for (int j = choice.layouts() - 1; j >= 0; j--) {
      for (int i = 0; i < choice.demand.length; i++) {
        int count = choice.counts[j][i];
        each[j][i] = count == 0 ? each[j + 1][i] : Math.min(each[j + 1][i], share[j] / count);
      }
    }
    return each;
  }

  /**
   * No choice is better by {@link Levels}; nothing if there are too many to try.
   *
   * @param start a choice that covers the demand from the stock
   */
  Optional<int[]> from(int[] start) {
    best = start;
    least = choice.levels(start);
    steps = 0;
    extend(0, 0, 0);
    return steps > MOST_STEPS ? Optional.empty() : Optional.of(best);
  }

  private void extend(int first, double sheets, double money) {
    if (++steps > MOST_STEPS) {
      return;
    }
    if (tally.isCovered()) {
      Levels levels = tally.levels();
      if (levels.compareTo(least) < 0) {
        least = levels;
        best = tally.uses();
      }
      return;
    }
    for (int j = first; j < choice.layouts() && steps <= MOST_STEPS; j++) {
      if (tally.brings(j) && tally.inStock(j)) {
        tally.add(j);
        if (mayBeBetter(j, sheets + sheetShare[j], money + moneyShare[j])) {
          extend(j, sheets + sheetShare[j], money + moneyShare[j]);
        }
        tally.remove(j);
      }
    }
  }

  /** Whether layouts from {@code first} on may complete it to a choice as cheap as the best. */
  private boolean mayBeBetter(int first, double sheets, double money) {
    double moreSheets = 0;
    double moreMoney = 0;
    for (int i = 0; i < choice.demand.length; i++) {
      int wanted = tally.wanted(i);
      if (wanted > 0) {
        moreSheets = Math.max(moreSheets, wanted * sheetsEach[first][i]);
        moreMoney = Math.max(moreMoney, wanted * moneyEach[first][i]);
      }
    }
    double leastMoney = Math.max((double) tally.money(), Math.ceil(money + moreMoney - ROUNDING));
    double leastSheets = Math.max(tally.sheets(), Math.ceil(sheets + moreSheets - ROUNDING));
    return leastMoney < (double) least.money()
        || (leastMoney == (double) least.money() && leastSheets <= least.sheets());
  }
}
