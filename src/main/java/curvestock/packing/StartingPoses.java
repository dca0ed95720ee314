package curvestock.packing;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Where searches begin: known layouts with the missing pieces thrown in, some of them with one or
 * two other pieces thrown in as well, and pieces scattered, nearly parallel or anyhow.
 *
 * <p>By few trials (14 half turns, R 13.5 to 16.5 in, on 48 × 96 in) about one start in ten leads
 * to a solution if it is the best known layout gently shaken, one in thirty if all are scattered;
 * none of twenty did from a regular layout that holds fewer. So most starts are from the best known
 * one. But 46 eighths of R 26 in, 4 in wide, were found from three of five regular layouts of 45 as
 * they are, and from none of them shaken. More trials may differ.
 */
final class StartingPoses {

  private static final int CYCLE = 6;
  private static final int SCATTERED = 3;

  /** So many of the best known layouts, if they hold equally many, are starts as they are. */
  private static final int MOST_UNSHAKEN = 6;

  private final Arena arena;
  private final Body[] bodies;
  private final boolean[] frozen;
  private final List<double[]> known;
  private final int equallyGood;

  /**
   * @param known poses of the first pieces of the set, in order, the best layout first; the rest is
   *     thrown in
   */
  StartingPoses(Arena arena, List<Body> bodies, boolean[] frozen, List<double[]> known) {
    this.arena = arena;
    this.bodies = bodies.toArray(Body[]::new);
    this.frozen = frozen.clone();
    this.known = List.copyOf(known);
    this.equallyGood =
        (int)
            known.stream()
                .limit(MOST_UNSHAKEN)
                .takeWhile(layout -> layout.length == known.get(0).length)
                .count();
  }

  /** The start of that number; the first are the best known layouts as they are, each once. */
  double[] next(int number, SplittableRandom random) {
    Poses poses = new Poses(arena, bodies, random);
    double[] start = new double[3 * bodies.length];
    if (number < equallyGood) {
      from(number, start, poses, random, 0);
      return start;
    }
    return later(number - equallyGood, start, poses, random);
  }

  private double[] later(int number, double[] start, Poses poses, SplittableRandom random) {
    int round = number / CYCLE;
    switch (known.isEmpty() ? SCATTERED : number % CYCLE) {
      case 0 -> from(round % known.size(), start, poses, random, 0);
      case 1, 4 -> from(0, start, poses, random, 0);
      case 2 -> from(0, start, poses, random, 2);
      case SCATTERED -> {
        if (hasFrozen() && !known.isEmpty()) {
          from(0, start, poses, random, 4);
        } else if (round % 2 == 0) {
          poses.scatterParallel(start, frozen);
        } else {
          poses.scatter(start, frozen);
        }
      }
      default -> from(random.nextInt(known.size()), start, poses, random, random.nextInt(3));
    }
    if (number % CYCLE != SCATTERED) {
      poses.jiggle(start, frozen, 0.15);
    }
    return start;
  }

  /** A known layout, the missing pieces and as many others thrown in anywhere. */
  private void from(int which, double[] start, Poses poses, SplittableRandom random, int thrown) {
    double[] layout = known.get(which);
    int laid = Math.min(layout.length, start.length) / 3;
    poses.scatterParallel(start, new boolean[bodies.length]);
    boolean[] moved = new boolean[bodies.length];
    for (int k = 0; k < thrown; k++) {
      moved[random.nextInt(bodies.length)] = true;
    }
    for (int i = 0; i < laid; i++) {
      if (frozen[i] || !moved[i]) {
        System.arraycopy(layout, 3 * i, start, 3 * i, 3);
      }
    }
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
