package curvestock.packing;

/**
 * Limited-memory BFGS with a capped step and backtracking, for energies that fall to zero.
 *
 * <p>After Nocedal and Wright, Numerical Optimization, 2nd ed. (2006), algorithm 7.4 (the two-loop
 * recursion) and 3.1 (backtracking); cited from memory. Works in place; allocates nothing per step.
 */
final class Minimiser {

  /** An energy of n variables with its gradient. */
  interface Energy {
    double at(double[] variables, double[] gradient);
  }

  private static final int HISTORY = 8;
  private static final double SUFFICIENT_DECREASE = 1e-4;

  private final int size;
  private final double[] gradient;
  private final double[] direction;
  private final double[] trial;
  private final double[] trialGradient;
  private final double[][] stepHistory;
  private final double[][] changeHistory;
  private final double[] inverse = new double[HISTORY];
  private final double[] factors = new double[HISTORY];

  Minimiser(int size) {
    this.size = size;
    gradient = new double[size];
    direction = new double[size];
    trial = new double[size];
    trialGradient = new double[size];
    stepHistory = new double[HISTORY][size];
    changeHistory = new double[HISTORY][size];
  }

  /**
   * Lowers the energy from {@code variables}, which hold the best point afterwards.
   *
   * @param goal stop when the energy is at most this
   * @param longestStep no variable moves further in one step
   * @param stall stop when ten steps lower the energy by less than this share
   * @return the energy reached
   */
  double minimise(
      Energy energy, double[] variables, int steps, double goal, double longestStep, double stall) {
    double value = energy.at(variables, gradient);
    int stored = 0;
    double checkpoint = value;
    for (int step = 0; step < steps && value > goal; step++) {
      descend(stored);
      double slope = dot(direction, gradient);
      if (!(slope < 0)) {
        stored = 0;
        for (int i = 0; i < size; i++) {
          direction[i] = -gradient[i];
        }
        slope = -dot(gradient, gradient);
        if (slope == 0) {
          break;
        }
      }
      double length = cap(longestStep);
      double next = Double.NaN;
      boolean lower = false;
      for (int attempt = 0; attempt < 8 && !lower; attempt++) {
        for (int i = 0; i < size; i++) {
          trial[i] = variables[i] + length * direction[i];
        }
        next = energy.at(trial, trialGradient);
        lower = next <= value + SUFFICIENT_DECREASE * length * slope;
        if (!lower) {
          // Least point of the parabola through both values, kept within a sane part of the step.
          double parabola = -slope * length * length / (2 * (next - value - slope * length));
          length = Math.max(0.1 * length, Math.min(0.5 * length, parabola));
        }
      }
      if (!lower) {
        if (stored == 0) {
          break;
        }
        stored = 0;
        continue;
      }
      if (remember(variables, stored)) {
        stored++;
      }
      System.arraycopy(trial, 0, variables, 0, size);
      System.arraycopy(trialGradient, 0, gradient, 0, size);
      value = next;
      if (step % 10 == 9) {
        if (value > checkpoint * (1 - stall)) {
          break;
        }
        checkpoint = value;
      }
    }
    return value;
  }

  private double cap(double longestStep) {
    double largest = 0;
    for (int i = 0; i < size; i++) {
      largest = Math.max(largest, Math.abs(direction[i]));
    }
    return largest > longestStep ? longestStep / largest : 1;
  }

  private void descend(int stored) {
    for (int i = 0; i < size; i++) {
      direction[i] = -gradient[i];
    }
    int oldest = Math.max(0, stored - HISTORY);
    for (int k = stored - 1; k >= oldest; k--) {
      int slot = k % HISTORY;
      factors[slot] = inverse[slot] * dot(stepHistory[slot], direction);
      addScaled(direction, changeHistory[slot], -factors[slot]);
    }
    if (stored > 0) {
      int last = (stored - 1) % HISTORY;
      double scale = 1 / (inverse[last] * dot(changeHistory[last], changeHistory[last]));
      for (int i = 0; i < size; i++) {
        direction[i] *= scale;
      }
    } else {
      // Half the gradient is the full step for one squared shortfall; several act on one piece.
      for (int i = 0; i < size; i++) {
        direction[i] *= 0.25;
      }
    }
    for (int k = oldest; k < stored; k++) {
      int slot = k % HISTORY;
      double back = inverse[slot] * dot(changeHistory[slot], direction);
      addScaled(direction, stepHistory[slot], factors[slot] - back);
    }
  }

  /** Stores the last step and change of gradient, unless they show no curvature. */
  private boolean remember(double[] variables, int stored) {
    int slot = stored % HISTORY;
    double product = 0;
    double squared = 0;
    for (int i = 0; i < size; i++) {
      double moved = trial[i] - variables[i];
      double change = trialGradient[i] - gradient[i];
      product += moved * change;
      squared += change * change;
    }
    if (!(product > 1e-10 * squared)) {
      return false;
    }
    for (int i = 0; i < size; i++) {
      stepHistory[slot][i] = trial[i] - variables[i];
      changeHistory[slot][i] = trialGradient[i] - gradient[i];
    }
    inverse[slot] = 1 / product;
    return true;
  }

  private double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < size; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  private void addScaled(double[] to, double[] what, double factor) {
    for (int i = 0; i < size; i++) {
      to[i] += factor * what[i];
    }
  }
}
