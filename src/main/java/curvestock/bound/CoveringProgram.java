package curvestock.bound;

import java.util.Arrays;
import java.util.List;

/**
 * Least-cost weights such that every row's weighted sum is at least 1, where rows are too many to
 * list and are handed in as they are found to be short: the revised simplex method on the dual
 * (find row multipliers of greatest sum whose combination of rows stays within the costs), which
 * starts from no rows at all.
 *
 * <p>Whoever uses the weights must check them: this class only finds good ones.
 */
final class CoveringProgram {

  private static final double SHORT = 1e-7;

  private final double[][] inverse;
  private final double[] level;
  private final double[] weights;

  CoveringProgram(double[] costs) {
    int n = costs.length;
    inverse = new double[n][n];
    level = new double[n];
    weights = new double[n];
    for (int i = 0; i < n; i++) {
      inverse[i][i] = 1;
      // Costs that are alike make ties; a little off each breaks them.
      level[i] = costs[i] * (1 + 1e-5 * (i + 1) / n);
    }
  }

  /** The weights so far; one that is a little below zero stands for zero. */
  double[] weights() {
    return weights;
  }

  /** Betters the weights until these rows are covered; false if that fails. */
  boolean cover(List<double[]> rows) {
    for (int turn = 0; turn < 20 * weights.length; turn++) {
      double most = SHORT;
      double[] worst = null;
      double gain = 0;
      for (int j = 0; j < weights.length; j++) {
        if (-weights[j] > most) {
          most = -weights[j];
          worst = new double[weights.length];
          worst[j] = 1;
        }
      }
      for (double[] row : rows) {
        double missing = 1;
        for (int j = 0; j < row.length; j++) {
          missing -= row[j] * weights[j];
        }
        if (missing > most) {
          most = missing;
          worst = row;
          gain = 1;
        }
      }
      if (worst == null) {
        return true;
      }
      if (!enter(worst, gain)) {
        return false;
      }
    }
    return false;
  }

  private boolean enter(double[] row, double gain) {
    int n = level.length;
    double[] along = new double[n];
    int leaving = -1;
    double shortest = Double.POSITIVE_INFINITY;
    double missing = gain;
    for (int i = 0; i < n; i++) {
      missing -= weights[i] * row[i];
      for (int j = 0; j < n; j++) {
        along[i] += inverse[i][j] * row[j];
      }
      if (along[i] > 1e-9 && level[i] / along[i] < shortest) {
        shortest = level[i] / along[i];
        leaving = i;
      }
    }
    if (leaving < 0) {
      return false;
    }
    double[] pivot = inverse[leaving];
    for (int j = 0; j < n; j++) {
      pivot[j] /= along[leaving];
      weights[j] += missing * pivot[j];
    }
    level[leaving] = shortest;
    for (int i = 0; i < n; i++) {
      if (i != leaving && along[i] != 0) {
        double times = along[i];
        level[i] = Math.max(0, level[i] - times * shortest);
        for (int j = 0; j < n; j++) {
          inverse[i][j] -= times * pivot[j];
        }
      }
    }
    return Arrays.stream(weights).allMatch(Double::isFinite);
  }
}
