package curvestock.packing;

import java.util.Arrays;

/**
 * How near the rounds of a search for one piece more came, and so whether another is worth its
 * cost.
 *
 * <p>Rounds that all end at the same overlap have found the one place where the last piece might
 * go, and it is too small: few searches succeed after that. Where one round came far nearer than
 * the others, the next may come nearer still, and so there may be more of them than usual. Both
 * were found by experiment, see {@code benchmarks}.
 */
final class Rounds {

  /** Rounds of a search that is neither stuck nor promising. */
  static final int USUAL = 6;

  /** Rounds of a promising one. */
  private static final int MOST = 12;

  /** Two rounds that end as near as this are stuck. */
  private static final double SAME = 1.01;

  /** Three or more rounds that all end as near as this are stuck. */
  private static final double ALIKE = 1.03;

  /** A search is promising whose nearest round came so much nearer than the middle one. */
  private static final double NEAR = 0.1;

  private double[] overlaps = new double[0];

  /** A round ended without success at this overlap. */
  void vain(double overlap) {
    overlaps = Arrays.copyOf(overlaps, overlaps.length + 1);
    overlaps[overlaps.length - 1] = overlap;
  }

  /** How many rounds were in vain. */
  int inVain() {
    return overlaps.length;
  }

  boolean goOn() {
    int rounds = overlaps.length;
    if (rounds < 2) {
      return true;
    }
    double[] sorted = overlaps.clone();
    Arrays.sort(sorted);
    if (sorted[rounds - 1] <= sorted[0] * (rounds == 2 ? SAME : ALIKE)) {
      return false;
    }
    return rounds < USUAL || (rounds < MOST && sorted[0] < NEAR * sorted[rounds / 2]);
  }
}
