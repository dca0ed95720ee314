package curvestock.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.check.Expectation;
import curvestock.drawing.SampleLayouts;
import curvestock.drawing.SheetDrawing;
import curvestock.layout.Layout;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;

/** Whatever comes in, what goes out is a checked result or a plain refusal. */
class NoiseTest {

  private static Map<Outcome, Integer> run(
      String what, int rounds, Supplier<String> noise, Function<String, Outcome> trial) {
    Map<Outcome, Integer> counts = new EnumMap<>(Outcome.class);
    for (int round = 0; round < rounds; round++) {
      String text = noise.get();
      try {
        counts.merge(trial.apply(text), 1, Integer::sum);
      } catch (RuntimeException | AssertionError e) {
        throw new AssertionError(
            what
                + ", round "
                + round
                + ": "
                + e
                + "\n"
                + text.substring(0, Math.min(5000, text.length())),
            e);
      }
    }
    return counts;
  }

  @Test
  void read_ofNoisyJobs_givesJobsOrPlaces() {
    JobNoise noise = new JobNoise(811);

    Map<Outcome, Integer> counts = run("jobs, seed 811", 400, noise::next, Trial::read);

    assertThat(counts.get(Outcome.REFUSED)).isGreaterThan(100);
    assertThat(counts.get(Outcome.GOOD)).isGreaterThan(30);
  }

  @Test
  void plan_ofNoisyJobs_givesCheckedLayoutsOrReasons() {
    JobNoise noise = new JobNoise(812);

    Map<Outcome, Integer> counts = run("plans, seed 812", 30, noise::next, Trial::plan);

    assertThat(counts).containsKey(Outcome.PLANNED);
  }

  @Test
  void parse_ofNoisyLengths_givesLengthsOrReasons() {
    LengthNoise noise = new LengthNoise(813);

    Map<Outcome, Integer> counts = run("lengths, seed 813", 3000, noise::next, Trial::length);

    assertThat(counts.get(Outcome.GOOD)).isGreaterThan(50);
    assertThat(counts.get(Outcome.REFUSED)).isGreaterThan(1000);
  }

  @Test
  void check_ofNoisyDrawings_judgesOrRefuses() {
    Layout layout = SampleLayouts.mixed();
    SvgNoise noise = new SvgNoise(SheetDrawing.clean(layout), 814);
    Expectation expectation = Expectation.of(layout);

    Map<Outcome, Integer> counts =
        run("drawings, seed 814", 150, noise::next, svg -> Trial.check(svg, expectation));

    assertThat(counts.get(Outcome.REFUSED)).isGreaterThan(20);
    assertThat(counts.get(Outcome.ANSWERED_NO)).isGreaterThan(20);
  }
}
