package curvestock.packing;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * One thread of the overlap-minimising search for a fixed set of pieces: relax, move the piece that
 * troubles most, relax again, and weigh stubborn pairs heavier until they give way.
 *
 * <p>The weights are guided local search after Voudouris and Tsang (1999), used for overlap
 * minimisation by Egeblad, Nielsen and Odgaard (2007) and Umetani and others (2009); cited from
 * memory. Everything here follows from the seed: a lane knows no other lane and no clock.
 */
final class Lane {

  /** With every shortfall below the allowance, the true gaps hold. */
  static final double GOAL = Overlap.ALLOWANCE * Overlap.ALLOWANCE;

  private static final int RELAX_STEPS = 150;
  private static final int KEPT_SAMPLES = 3;

  private static final double WEIGHT_GROWTH = 0.2;
  private static final double HEAVIEST = 60;

  private final Overlap overlap;
  private final Relaxation relaxation;
  private final Poses poses;
  private final boolean[] frozen;
  private final SplittableRandom random;
  private final int samples;
  private final double[] gradient;

  private double[] current;
  private double currentEnergy;
  private double[] best;
  private double bestEnergy = Double.POSITIVE_INFINITY;
  private int failures;

  Lane(Overlap overlap, Arena arena, boolean[] frozen, SplittableRandom random, int samples) {
    this.overlap = overlap;
    this.relaxation = new Relaxation(overlap, frozen);
    this.poses = new Poses(arena, overlap.bodies, random);
    this.frozen = frozen;
    this.random = random;
    this.samples = samples;
    this.gradient = new double[3 * overlap.count];
    this.current = new double[3 * overlap.count];
    this.best = current.clone();
  }

  /** Begins from the given poses, which are copied. */
  void start(double[] from) {
    overlap.resetWeights();
    current = from.clone();
    relaxation.all(current, 2 * RELAX_STEPS, GOAL);
    currentEnergy = measure(current);
    bestEnergy = Double.POSITIVE_INFINITY;
    keepBest();
    failures = 0;
  }

  boolean solved() {
    return bestEnergy <= GOAL;
  }

  double bestEnergy() {
    return bestEnergy;
  }

  double[] best() {
    return best.clone();
  }

  int failures() {
    return failures;
  }

  long work() {
    return overlap.pairsTested();
  }

  /** One move and what follows from it. */
  void step() {
    double before = weighted();
    double[] trial = current.clone();
    int piece = troubled();
    double choice = random.nextDouble();
    if (choice < 0.5) {
      relocate(piece, trial);
    } else if (choice < 0.65) {
      poses.turnHalfRound(piece, trial);
    } else if (choice < 0.8) {
      swap(piece, trial);
    } else {
      poses.jiggle(trial, frozen, random.nextDouble() < 0.5 ? 0.3 : 0.08);
    }
    double after = relaxation.all(trial, RELAX_STEPS, GOAL);
    double plain = measure(trial);
    if (plain <= GOAL || after < before) {
      current = trial;
      currentEnergy = plain;
      failures = plain < bestEnergy * 0.999 ? 0 : failures + 1;
      keepBest();
    } else {
      failures++;
      measure(current);
    }
    reweigh();
  }

  private void keepBest() {
    if (currentEnergy < bestEnergy) {
      bestEnergy = currentEnergy;
      best = current.clone();
    }
  }

  /** Unweighted energy; leaves the pair energies of these poses in the overlap. */
  private double measure(double[] at) {
    overlap.evaluate(at, gradient);
    double sum = 0;
    for (double energy : overlap.wallEnergy) {
      sum += energy;
    }
    for (double energy : overlap.pairEnergy) {
      sum += energy;
    }
    return sum;
  }

  private double weighted() {
    return overlap.evaluate(current, gradient);
  }

  /** A movable piece, picked in proportion to its weighted energy. */
  private int troubled() {
    int n = overlap.count;
    double[] share = new double[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      share[i] = overlap.wallWeight[i] * overlap.wallEnergy[i];
    }
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        double energy = overlap.pairWeight[i * n + j] * overlap.pairEnergy[i * n + j];
        share[i] += energy;
        share[j] += energy;
      }
    }
    for (int i = 0; i < n; i++) {
      share[i] = frozen[i] ? 0 : share[i];
      sum += share[i];
    }
    double pick = random.nextDouble() * sum;
    for (int i = 0; i < n; i++) {
      pick -= share[i];
      if (pick < 0) {
        return i;
      }
    }
    int any = random.nextInt(n);
    while (frozen[any]) {
      any = random.nextInt(n);
    }
    return any;
  }

  /** Moves the piece to the best of many random poses, each of the best few relaxed alone. */
  private void relocate(int piece, double[] trial) {
    overlap.placeAll(trial);
    double[][] kept = new double[KEPT_SAMPLES][3];
    double[] values = new double[KEPT_SAMPLES];
    Arrays.fill(values, Double.POSITIVE_INFINITY);
    double[] probe = trial.clone();
    for (int k = 0; k < samples; k++) {
      poses.sample(piece, trial, probe);
      double value = overlap.weigh(piece, probe, values[KEPT_SAMPLES - 1]);
      for (int slot = 0; slot < KEPT_SAMPLES; slot++) {
        if (value < values[slot]) {
          for (int later = KEPT_SAMPLES - 1; later > slot; later--) {
            values[later] = values[later - 1];
            System.arraycopy(kept[later - 1], 0, kept[later], 0, 3);
          }
          values[slot] = value;
          System.arraycopy(probe, 3 * piece, kept[slot], 0, 3);
          break;
        }
      }
    }
    double least = Double.POSITIVE_INFINITY;
    for (int slot = 0; slot < KEPT_SAMPLES; slot++) {
      if (values[slot] < Double.POSITIVE_INFINITY) {
        System.arraycopy(kept[slot], 0, probe, 3 * piece, 3);
        double value = relaxation.one(piece, probe, 30);
        if (value < least) {
          least = value;
          System.arraycopy(probe, 3 * piece, trial, 3 * piece, 3);
        }
      }
    }
  }

  private void swap(int piece, double[] trial) {
    int other = random.nextInt(overlap.count);
    if (frozen[other] || overlap.bodies[other] == overlap.bodies[piece]) {
      relocate(piece, trial);
      return;
    }
    poses.exchange(piece, other, trial);
  }

  private void reweigh() {
    double most = 0;
    for (double energy : overlap.pairEnergy) {
      most = Math.max(most, energy);
    }
    for (double energy : overlap.wallEnergy) {
      most = Math.max(most, energy);
    }
    if (most <= 0) {
      return;
    }
    reweigh(overlap.pairWeight, overlap.pairEnergy, most);
    reweigh(overlap.wallWeight, overlap.wallEnergy, most);
  }

  private static void reweigh(double[] weights, double[] energies, double most) {
    for (int k = 0; k < weights.length; k++) {
      double weight = weights[k];
      weight = energies[k] > 0 ? weight * (1 + WEIGHT_GROWTH * energies[k] / most) : weight * 0.97;
      weights[k] = Math.max(1, Math.min(HEAVIEST, weight));
    }
  }
}
