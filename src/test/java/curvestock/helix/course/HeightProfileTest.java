package curvestock.helix.course;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.units.Length;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class HeightProfileTest {

  static Stream<Long> seeds() {
    return Stream.iterate(1L, seed -> seed + 1).limit(60);
  }

  /** A random helix whose vertical curves fit. */
  static HelixPlan randomHelix(long seed) {
    Random random = new Random(seed);
    double radius = 14 + random.nextDouble() * 30;
    double curve = random.nextDouble() * 36;
    EndPlan end =
        new EndPlan(
            inches(curve),
            inches(random.nextDouble() * curve),
            inches(12),
            Grade.ofPercent(random.nextInt(2) * 0.5),
            Length.ZERO,
            Length.ZERO);
    return new SpecBuilder()
        .circle(radius, 3 + random.nextDouble() * 4)
        .segment(30 + random.nextInt(100))
        .ends(end)
        .ascent(
            Ascent.ofTurnsAndClimb(1 + random.nextInt(20) / 4.0, inches(8 + random.nextInt(30))))
        .plan();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void heights_alongAnyHelix_neverFall(long seed) {
    HelixPlan plan = randomHelix(seed);
    double from = plan.profile().foot() - 500;
    double to = plan.profile().head() + 500;

    double last = Double.NEGATIVE_INFINITY;
    for (int i = 0; i <= 2000; i++) {
      double height = plan.profile().heightAt(from + (to - from) * i / 2000);
      assertThat(height).isGreaterThanOrEqualTo(last - 1e-9);
      last = height;
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void climb_footToHead_isTheOneStated(long seed) {
    HelixPlan plan = randomHelix(seed);

    assertThat(plan.profile().climb()).isCloseTo(plan.climb().climb().millimetres(), within(1e-6));
  }

  /** What the pieces rise, and what the approaches rise outside them, is the climb. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void risesOfThePieces_withTheLeads_sumToTheClimb(long seed) {
    HelixPlan plan = randomHelix(seed);
    HeightProfile profile = plan.profile();
    double ofPieces =
        plan.schedule().rows().stream()
            .filter(row -> row.piece().layer() == 1)
            .mapToDouble(row -> row.railTo().minus(row.railFrom()).millimetres())
            .sum();
    double before = profile.heightAt(0) - profile.heightAt(profile.foot());
    double after = profile.heightAt(profile.head()) - profile.heightAt(plan.climb().ringLength());

    assertThat(before + ofPieces + after)
        .isCloseTo(plan.climb().climb().millimetres(), within(1e-6));
  }

  /** The slope is the derivative of the height, checked by differences. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void slope_anywhere_isTheRiseOfAShortStep(long seed) {
    HelixPlan plan = randomHelix(seed);
    HeightProfile profile = plan.profile();
    Random random = new Random(seed);
    for (int i = 0; i < 50; i++) {
      double s = random.nextDouble() * (profile.head() + 200) - 100;
      double difference = (profile.heightAt(s + 0.01) - profile.heightAt(s - 0.01)) / 0.02;
      assertThat(profile.slopeAt(s)).isCloseTo(difference, within(1e-5));
    }
  }

  /** L·A/800 (railway handbooks, read): 24 in, 2 % gives 0.060 in (derived). */
  @Test
  void curve_24InchesAnd2Percent_liesBy0Point060FromTheBreak() {
    VerticalCurve curve = new VerticalCurve(24, Grade.LEVEL, Grade.ofPercent(2));

    assertThat(curve.heightAt(12)).isCloseTo(0.060, within(1e-12));
  }

  /** Approach slack, common practice, no source: 11 ft takes up about 2 in, 30 ft about 6 in. */
  @ParameterizedTest
  @CsvSource({"11, 2", "30, 6"})
  void slack_ofAnApproach_isAboutWhatTheTradeSays(double feet, double about) {
    ApproachSlack slack = new ApproachSlack(inches(feet * 12), Grade.ofPercent(2), inches(24));

    assertThat(slack.height().inches()).isCloseTo(about, within(about * 0.15));
  }

  /** The same fact's sum: about 8 in for both approaches together. */
  @Test
  void slack_ofBothApproaches_isAbout8Inches() {
    ApproachSlack shorter = new ApproachSlack(inches(132), Grade.ofPercent(2), inches(24));
    ApproachSlack longer = new ApproachSlack(inches(360), Grade.ofPercent(2), inches(24));

    assertThat(shorter.height().plus(longer.height()).inches()).isCloseTo(8, within(1.0));
  }

  /** R 30 in, rise 4 in: R + 0.0135 in, 359.92° (derived, recomputed independently). */
  @Test
  void unrolled_30InchesRise4_growsByAHundredth() {
    UnrolledTurn pattern = new UnrolledTurn(inches(30), inches(4));

    assertThat(pattern.growth().inches()).isCloseTo(0.0135, within(0.00005));
    assertThat(pattern.anglePerTurn().degrees()).isCloseTo(359.92, within(0.005));
    assertThat(pattern.isNegligible()).isTrue();
  }
}
