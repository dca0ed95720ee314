package curvestock.packing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Looks for valid poses of a fixed set of pieces with several {@link Lane lanes} side by side.
 *
 * <p>All lanes go on by the same number of moves between two meetings; the first meeting at which
 * one has solved ends the search, and the lowest such lane wins. So the result depends on the seed
 * and the budget alone, never on the number of cores or their speed.
 */
final class Search {

  private static final int LANES = 4;
  private static final int MOVES_PER_MEETING = 8;

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
  private final class LaneRunner {
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

    void advance() {
      for (int move = 0; move < MOVES_PER_MEETING && !lane.solved(); move++) {
        if (restarts == 0 || lane.failures() > PATIENCE) {
          lane.start(starts.next(number + LANES * restarts, random));
          restarts++;
        } else {
          lane.step();
        }
      }
    }
  }

  private int samples() {
    return 60;
  }

  /**
   * Valid poses, if found before the lanes have tested {@code budget} pairs together.
   *
   * @param control asked between meetings whether to stop
   */
  Optional<double[]> solve(long budget, Control control) {
    List<LaneRunner> runners = new ArrayList<>();
    for (int number = 0; number < LANES; number++) {
      runners.add(new LaneRunner(number, seeds.split()));
    }
    long work = 0;
    while (work < budget && !control.stopped()) {
      advanceAll(runners);
      for (LaneRunner runner : runners) {
        nearest = Math.min(nearest, runner.lane.bestEnergy());
        if (runner.lane.solved()) {
          return Optional.of(runner.lane.best());
        }
      }
      work = runners.stream().mapToLong(runner -> runner.lane.work()).sum();
      control.worked(work, budget);
    }
    return Optional.empty();
  }

  /** The least overlap at any meeting of the lanes: how near they came. */
  double nearest() {
    return nearest;
  }

  /** The calling thread works too, so that two lanes run on two cores. */
  private static void advanceAll(List<LaneRunner> runners) {
    IntStream.range(0, runners.size()).parallel().forEach(k -> runners.get(k).advance());
  }
}
