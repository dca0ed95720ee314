package curvestock.helix.build;

import java.util.List;

/**
 * A number of boards that no nesting of lengths can go below: L2 of S. Martello and P. Toth,
 * Knapsack Problems (1990), chapter 8 (from memory). For a shortest length that is looked at, a
 * length that leaves less than that has a board of its own, one over half a board too, and what is
 * left beside the latter takes the shorter ones; never less than the total length.
 *
 * <p>Nor below the sum of what the lengths count where a board is cut in equal shares: one longer
 * than so many shares counts as so many of one share less (dual feasible functions: S. P. Fekete
 * and J. Schepers, New classes of fast lower bounds for bin packing problems, Math. Programming 91,
 * 2001; from memory). Two over a third of a board, of which no board holds three, count half each.
 */
final class LeastBoards {

  private static final double ROUNDING = 1e-6;

  /** A board in more shares tells hardly more than the total length does. */
  private static final int MOST_SHARES = 20;

  private LeastBoards() {}

  /**
   * @param lengths each with its kerf
   * @param board what a board holds
   */
  static int of(List<Double> lengths, double board) {
    int least = boards(lengths.stream().mapToDouble(Double::doubleValue).sum(), board);
    for (double shortest : lengths.stream().filter(each -> !isLarge(each, board)).toList()) {
      least = Math.max(least, of(lengths, board, shortest));
    }
    for (int shares = 2; shares <= MOST_SHARES; shares++) {
      least = Math.max(least, inShares(lengths, board, shares));
    }
    return Math.max(least, (int) lengths.stream().filter(each -> isLarge(each, board)).count());
  }

  private static int inShares(List<Double> lengths, double board, int shares) {
    double sum = 0;
    for (double each : lengths) {
      double of = each / board * shares;
      double whole = Math.floor(of);
      // What is just so many shares long counts as long as it is.
      sum += of - whole < ROUNDING ? each / board : whole / (shares - 1);
    }
    return (int) Math.ceil(sum - ROUNDING);
  }

  private static int of(List<Double> lengths, double board, double shortest) {
    int own = 0;
    double beside = 0;
    double small = 0;
    for (double each : lengths) {
      if (isLarge(each, board)) {
        own++;
        beside += each > board - shortest + ROUNDING ? 0 : board - each;
      } else if (each >= shortest - ROUNDING) {
        small += each;
      }
    }
    return own + Math.max(0, boards(small - beside, board));
  }

  private static boolean isLarge(double length, double board) {
    return length > board / 2 + ROUNDING;
  }

  private static int boards(double length, double board) {
    return (int) Math.ceil(length / board - 1e-9);
  }
}
