package curvestock.packing;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Where searches begin: known good layouts with the missing pieces thrown in, pieces scattered
 * nearly parallel, pieces scattered anyhow. Known layouts lead two starts in three: by trial they
 * solve more hard cases than scattered ones.
 */
final class Starts {

  private final Arena arena;
  private final Body[] bodies;
  private final boolean[] frozen;
  private final List<double[]> known;

  /**
   * @param known poses of the first pieces of the set, in order; the rest is thrown in
   */
  Starts(Arena arena, List<Body> bodies, boolean[] frozen, List<double[]> known) {
    this.arena = arena;
    this.bodies = bodies.toArray(Body[]::new);
    this.frozen = frozen.clone();
    this.known = List.copyOf(known);
  }

  double[] next(int number, SplittableRandom random) {
    Poses poses = new Poses(arena, bodies, random);
    double[] start = new double[3 * bodies.length];
    int turn = number % 3;
    if (!known.isEmpty() && (turn < 2 || hasFrozen())) {
      int use = number / 3 * 2 + Math.min(turn, 1);
      poses.scatterParallel(start, new boolean[bodies.length]);
      double[] from = known.get(use % known.size());
      System.arraycopy(from, 0, start, 0, Math.min(from.length, start.length));
      if (use / known.size() % 2 == 1) {
        poses.jiggle(start, frozen, 0.15);
      }
    } else if (number / 3 % 2 == 0) {
      poses.scatterParallel(start, frozen);
    } else {
      poses.scatter(start, frozen);
    }
    return start;
  }

  private boolean hasFrozen() {
    for (boolean is : frozen) {
      if (is) {
        return true;
      }
    }
    return false;
  }
}
