package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.layout.Layout;
import curvestock.layout.TrueGaps;
import curvestock.plan.Infeasible;
import curvestock.units.Angle;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/**
 * A comparison stopped before and after every stage: every size that was asked for is there with a
 * whole plan, none dearer than regular patterns make it.
 */
class StoppedComparisonTest {

  private static final Question TWO =
      new Question(List.of(Angle.ofDegrees(120), Angle.ofDegrees(90)), false, OptionalInt.empty());

  /** Stops at one of the questions whether to stop, counted over all threads. */
  private static final class Stopper implements CompareListener {

    private final int at;
    private final List<Integer> roundSteps = new ArrayList<>();
    private int asked;
    private int late;

    Stopper(int at) {
      this.at = at;
    }

    @Override
    public synchronized void step(String what) {
      roundSteps.add(asked);
      roundSteps.add(asked + 1);
      late += asked >= at ? 1 : 0;
    }

    @Override
    public synchronized boolean stopped() {
      asked++;
      return asked >= at;
    }
  }

  private static final int STOPS = 4;

  private static Comparison compared(Stopper stopper) throws Infeasible {
    return new Comparer(TestJobs.small(), TWO, stopper).compare();
  }

  @Test
  void compare_stoppedRoundEveryStage_hasEverySizeNoDearerThanItsPattern() throws Exception {
    Stopper never = new Stopper(Integer.MAX_VALUE);
    compared(never);
    Comparison patterns = compared(new Stopper(1));
    List<Integer> questions = never.roundSteps.stream().distinct().filter(q -> q > 0).toList();
    assertThat(questions).as("stages to stop at").hasSizeGreaterThan(8);

    // Some of them, spread over all: each is a comparison of its own.
    for (int k = 0; k < STOPS; k++) {
      int question = questions.get(k * (questions.size() - 1) / (STOPS - 1));
      Comparison stopped = compared(new Stopper(question));
      String when = "stopped at question " + question;
      assertThat(stopped.recommendation()).as(when).isPresent();
      for (int i = 0; i < TWO.angles().size(); i++) {
        SegmentOption option = stopped.options().get(i);
        assertThat(option.angle()).as(when).isEqualTo(TWO.angles().get(i));
        assertThat(option.sheetCost())
            .as(when)
            .isLessThanOrEqualTo(patterns.options().get(i).sheetCost());
        for (Layout layout : option.plan().layouts()) {
          assertThat(TrueGaps.hold(layout)).as(when).isTrue();
        }
      }
    }
  }

  /** Laying patterns and choosing the sheets, for each size, then nothing more. */
  @Test
  void compare_stoppedAtOnce_onlyLaysPatterns() throws Exception {
    Stopper stopper = new Stopper(1);

    Comparison comparison = compared(stopper);

    assertThat(comparison.stopped()).isTrue();
    assertThat(stopper.late).isLessThanOrEqualTo(2 * TWO.angles().size());
  }
}
