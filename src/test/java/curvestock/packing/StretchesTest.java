package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class StretchesTest {

  /** A lane whose work and energies are known beforehand. */
  private static final class Scripted implements Stretches.Runner {
    private final long[] work;
    private final double[] energy;
    private final int solvedIn;
    private int done;

    Scripted(SplittableRandom random, int stretches) {
      work = new long[stretches + 1];
      energy = new double[stretches + 1];
      for (int k = 1; k <= stretches; k++) {
        work[k] = work[k - 1] + random.nextInt(1, 100);
        energy[k] = random.nextDouble();
      }
      solvedIn = random.nextInt(1, 3 * stretches);
    }

    private boolean solvedAt(int stretch) {
      return stretch >= solvedIn;
    }

    private int to(int stretch) {
      return Math.min(stretch, solvedIn);
    }

    @Override
    public void advance() {
      // Some stretches take far longer than others.
      for (long k = 0; k < (work[done + 1] - work[done]) * 20; k++) {
        Thread.onSpinWait();
      }
      done++;
    }

    @Override
    public boolean solved() {
      return solvedAt(done);
    }

    @Override
    public double energy() {
      return energy[done];
    }

    @Override
    public long work() {
      return work[done];
    }
  }

  /** What lanes come to that wait for each other after each stretch. */
  private static List<Object> meeting(List<Scripted> lanes, long budget) {
    double nearest = Double.POSITIVE_INFINITY;
    for (int stretch = 1; ; stretch++) {
      int now = stretch;
      for (Scripted lane : lanes) {
        nearest = Math.min(nearest, lane.energy[lane.to(now)]);
      }
      OptionalInt winner =
          IntStream.range(0, lanes.size()).filter(k -> lanes.get(k).solvedAt(now)).findFirst();
      if (winner.isPresent()
          || lanes.stream().mapToLong(lane -> lane.work[lane.to(now)]).sum() >= budget) {
        return List.of(winner, nearest);
      }
    }
  }

  private static List<Scripted> lanes(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return IntStream.range(0, 4).mapToObj(any -> new Scripted(random, 60)).toList();
  }

  @RepeatedTest(60)
  void endsAsIfAllHadMetAfterEachStretch(RepetitionInfo number) throws Exception {
    long seed = number.getCurrentRepetition();
    int budget = new SplittableRandom(~seed).nextInt(1, 3_000);
    for (int threads : new int[] {1, 2, 4}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      Stretches stretches =
          pool.submit(
                  () -> {
                    Stretches made = new Stretches(lanes(seed), budget, Control.NONE);
                    made.run();
                    return made;
                  })
              .get();
      pool.shutdown();

      assertThat(List.<Object>of(stretches.winner(), stretches.nearest()))
          .isEqualTo(meeting(lanes(seed), budget));
    }
  }

  @Test
  void stopsWithinAFewStretches() {
    AtomicInteger asked = new AtomicInteger();
    List<Integer> stretches = new ArrayList<>();
    Stretches.Runner endless =
        new Stretches.Runner() {
          @Override
          public synchronized void advance() {
            stretches.add(1);
          }

          @Override
          public boolean solved() {
            return false;
          }

          @Override
          public double energy() {
            return 1;
          }

          @Override
          public synchronized long work() {
            return stretches.size();
          }
        };

    Stretches run =
        new Stretches(List.of(endless), Long.MAX_VALUE, () -> asked.incrementAndGet() > 5);
    run.run();

    assertThat(stretches).hasSize(5);
    assertThat(run.winner()).isEmpty();
  }
}
