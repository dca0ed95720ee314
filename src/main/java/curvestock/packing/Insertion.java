package curvestock.packing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Puts one more piece into the free wood of a layout without moving any other: many random poses,
 * the least troubled of them relaxed, and of those that fit the one furthest to the lower left, so
 * that the waste gathers at the other end.
 */
final class Insertion {

  private static final int KEPT = 8;

  /** Above any {@link #nearness}, so that poses that fit rank before those that do not. */
  private static final double FAR = 1e6;

  private final Arena arena;
  private final SplittableRandom random;
  private final int samples;

  Insertion(Arena arena, SplittableRandom random, int samples) {
    this.arena = arena;
    this.random = random;
    this.samples = samples;
  }

  /** The poses with that of the new body, put last among {@code bodies}, or nothing. */
  Optional<double[]> add(List<Body> bodies, double[] poses) {
    Overlap overlap = Overlap.ofLast(arena, bodies);
    double[] start = Arrays.copyOf(poses, 3 * bodies.size());
    Poses source = new Poses(arena, overlap.bodies, random);
    overlap.placeAll(start);
    // Square to the sheet or to the other pieces first: a tidy layout is easier to cut.
    Optional<double[]> tidy = best(overlap, source, start, true);
    return tidy.isPresent() ? tidy : best(overlap, source, start, false);
  }

  private Optional<double[]> best(Overlap overlap, Poses source, double[] start, boolean tidy) {
    int last = overlap.count - 1;
    double[] gradient = new double[start.length];
    List<double[]> kept = new ArrayList<>();
    for (int k = 0; k < samples; k++) {
      if (tidy) {
        source.sampleTidy(last, start, start);
      } else {
        source.sample(last, start, start);
      }
      // What is worse than all that are kept need not be known exactly.
      double worst = kept.size() < KEPT ? Double.POSITIVE_INFINITY : kept.get(KEPT - 1)[0] - FAR;
      double energy = overlap.weigh(last, start, Math.max(Lane.GOAL, worst));
      double rank = energy <= Lane.GOAL ? nearness(start, last) : FAR + energy;
      keep(kept, new double[] {rank, start[3 * last], start[3 * last + 1], start[3 * last + 2]});
    }
    Relaxation relaxation = new Relaxation(overlap, new boolean[overlap.count]);
    double[] best = null;
    for (double[] candidate : kept) {
      double[] trial = start.clone();
      System.arraycopy(candidate, 1, trial, 3 * last, 3);
      double energy = relaxation.one(last, trial, 80);
      if (energy <= Lane.GOAL) {
        slide(overlap, trial, last, gradient);
        if (best == null || nearness(trial, last) < nearness(best, last)) {
          best = trial;
        }
      }
    }
    return Optional.ofNullable(best);
  }

  /** Pushes the piece down and left, in ever smaller steps, as far as it goes. */
  private static void slide(Overlap overlap, double[] poses, int i, double[] gradient) {
    for (double step = 64; step >= 0.25; step /= 4) {
      boolean moved = true;
      for (int round = 0; round < 40 && moved; round++) {
        boolean left = push(overlap, poses, i, 3 * i, step);
        boolean down = push(overlap, poses, i, 3 * i + 1, step);
        moved = left || down;
      }
    }
    overlap.evaluateOne(i, poses, gradient);
  }

  private static boolean push(Overlap overlap, double[] poses, int i, int variable, double step) {
    poses[variable] -= step;
    if (overlap.weigh(i, poses, Lane.GOAL) <= Lane.GOAL) {
      return true;
    }
    poses[variable] += step;
    return false;
  }

  private static void keep(List<double[]> kept, double[] candidate) {
    int at = kept.size();
    while (at > 0 && kept.get(at - 1)[0] > candidate[0]) {
      at--;
    }
    if (at < KEPT) {
      kept.add(at, candidate);
      if (kept.size() > KEPT) {
        kept.remove(KEPT);
      }
    }
  }

  private double nearness(double[] poses, int i) {
    return poses[3 * i] - arena.box.minX() + 0.2 * (poses[3 * i + 1] - arena.box.minY());
  }
}
