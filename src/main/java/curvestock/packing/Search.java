package curvestock.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Looks for valid poses of a fixed set of pieces with several {@link Lane lanes} side by side.
 *
 * <p>Each lane's work is counted in stretches of the same number of moves. The first stretch in
 * which one lane has solved ends the search, and the lowest such lane wins; so does the first at
 * whose end all lanes together have used the budget. So the result depends on the seed and the
 * budget alone, never on the number of cores or their speed. No lane waits for another: {@link
 * Stretches} says which one goes on.
 */
final class Search {

  private static final int LANES = 4;
  private static final int MOVES_PER_STRETCH = 8;

  /** A lane that has not bettered itself in this many moves starts afresh. */
  private static final int PATIENCE = 160;

  private final Arena arena;
  private final List<Body> bodies;
  private final boolean[] frozen;
  private final StartingPoses starts;
  private final SplittableRandom seeds;
  private double nearest = Double.POSITIVE_INFINITY;

  Search(Arena arena, List<Body> bodies, boolean[] frozen, StartingPoses starts, long seed) {
    this.arena = arena;
    this.bodies = bodies;
    this.frozen = frozen.clone();
    this.starts = starts;
    this.seeds = new SplittableRandom(seed);
  }

  /** One lane with its own source of starts. */
  private final class LaneRunner implements Stretches.Runner {
    private final int number;
    private final SplittableRandom random;
    private final Lane lane;
    private int restarts;

    LaneRunner(int number, SplittableRandom random) {
      this.number = number;
      this.random = random;
      Overlap overlap = new Overlap(arena, bodies, frozen);
      this.lane = new Lane(overlap, arena, frozen, random.split(), samples());
    }

    @Override
    public void advance() {
      for (int move = 0; move < MOVES_PER_STRETCH && !lane.solved(); move++) {
        if (restarts == 0 || lane.failures() > PATIENCE) {
          lane.start(starts.next(number + LANES * restarts, random));
          restarts++;
        } else {
          lane.step();
        }
      }
    }

    @Override
    public boolean solved() {
      return lane.solved();
    }

    @Override
    public double energy() {
      return lane.bestEnergy();
    }

    @Override
    public long work() {
      return lane.work();
    }
  }

  private int samples() {
    return 60;
  }

  /**
   * Valid poses, if found before the lanes have tested {@code budget} pairs together.
   *
   * @param control asked between stretches whether to stop
   */
  Optional<double[]> solve(long budget, Control control) {
    List<LaneRunner> runners = new ArrayList<>();
    for (int number = 0; number < LANES; number++) {
      runners.add(new LaneRunner(number, seeds.split()));
    }
    Stretches stretches = new Stretches(runners, budget, control);
    stretches.run();
    nearest = stretches.nearest();
    return stretches.winner().stream()
        .mapToObj(number -> runners.get(number).lane.best())
        .findFirst();
  }

  /** The least overlap at the end of any stretch: how near the lanes came. */
  double nearest() {
    return nearest;
  }
}
