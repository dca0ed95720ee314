package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RemediesTest {

  private static SpecBuilder helix() {
    return new SpecBuilder()
        .ends(EndPlan.level(inches(24), inches(32)).withClimbLead(inches(32)))
        .tallest(inches(2.75), HeightStandard.NMRA_S7)
        .supports(SpecBuilder.blocks(12));
  }

  private static List<HelixPlan> remedies(SpecBuilder builder) {
    HelixPlan plan = HelixPlan.of(builder.spec(), LengthStyle.INCH_FRACTIONS);
    assertThat(plan.works()).isFalse();
    return Remedies.of(plan);
  }

  @Test
  void helixThatWorks_hasNone() {
    assertThat(Remedies.of(helix().plan())).isEmpty();
  }

  /**
   * By hand: 2.75 in over the rails and 0.8455 in of wood and track take 3.6 in a turn. 24 in of
   * climb are 6.67 times that, and the leads' 40 in of slope take 0.23 turns: at most 6.44 turns,
   * or 6 that leave in the same direction.
   */
  @Test
  void tooManyTurns_namesTheMostThatWork() {
    List<HelixPlan> remedies = remedies(helix().ascent(Ascent.ofTurnsAndClimb(8, inches(24))));

    assertThat(remedies).allMatch(HelixPlan::works);
    assertThat(remedies.stream().map(plan -> plan.climb().turns())).containsExactly(6.0, 6.25);
    assertThat(remedies)
        .allSatisfy(plan -> assertThat(plan.climb().climb().inches()).isCloseTo(24, within(1e-9)));
  }

  /** By hand: 4 in a turn at 2 % take 200 in of run, which is a radius of 31.83 in. */
  @Test
  void tooSteep_namesTheSmallestRadiusOnTheGrid() {
    List<HelixPlan> remedies =
        remedies(
            helix()
                .ends(EndPlan.level(Length.ZERO, inches(32)))
                .ascent(
                    Ascent.ofTurnsAndClimb(6, inches(24))
                        .atMost(Grade.ofPercent(2))
                        .leavingAt(Angle.ofDegrees(0))));

    assertThat(remedies).allMatch(HelixPlan::works);
    assertThat(remedies)
        .anySatisfy(plan -> assertThat(plan.spec().ground().innerTrack().inches()).isEqualTo(32));
  }

  /** By hand: half of 1.4 in, overhang of some 0.33 in and the block's 0.75 in fill 1.77 in. */
  @Test
  void tooNarrow_namesTheWidthThatClearsTheSupports() {
    Vehicle vehicle = new Vehicle(inches(2.4), inches(11.7), inches(1.4), inches(8.2));
    List<HelixPlan> remedies = remedies(helix().circle(28, 3).longest(vehicle, inches(0.1)));

    assertThat(remedies).allMatch(HelixPlan::works);
    assertThat(remedies)
        .anySatisfy(
            plan ->
                assertThat(plan.spec().ground().sideMargin().inches())
                    .isGreaterThan(1.77)
                    .isLessThan(2.1));
  }

  /**
   * Tracks 1.8 in apart on 3.5 in of roadbed, 3.5 in a turn over an 8 in plate: three things that
   * neither turns nor radius mend, and one that they do. By hand: reach of a vehicle 1.4 in wide
   * and 12 in long at 20 in is some 1.1 in to either side.
   */
  @Test
  void tracksAndPlateToo_areMendedFirst() {
    Vehicle vehicle = new Vehicle(inches(2.6), inches(12), inches(1.4), inches(8));
    HelixPlan helix =
        HelixPlan.of(
            helix()
                .ground(
                    SpecBuilder.twoTracks(
                        inches(19.1),
                        inches(1.8),
                        inches(0.85),
                        Length.ZERO,
                        Direction.COUNTER_CLOCKWISE))
                .ascent(Ascent.ofTurnsAndRise(3.5, inches(3.5)))
                .construction(SpecBuilder.plate(8, 0.25, 0.5))
                .longest(vehicle, inches(0.125))
                .spec(),
            LengthStyle.INCH_FRACTIONS);

    List<HelixPlan> remedies = Remedies.of(helix);

    assertThat(remedies).isNotEmpty().allMatch(HelixPlan::works);
    GroundPlan ground = remedies.get(0).spec().ground();
    assertThat(ground.trackSpacing().orElseThrow().inches()).isBetween(2.2, 2.6);
    double eighths = ground.width().inches() * 8;
    assertThat(eighths).isCloseTo(Math.rint(eighths), within(1e-9));
    assertThat(remedies.get(0).climb().climb().inches())
        .isCloseTo(helix.climb().climb().inches(), within(1e-9));
  }

  /** What works only beyond the usual ceiling of 2.5 % is told with a radius that keeps to it. */
  @Test
  void steepRemedies_areFollowedByOneWithinTheUsualCeiling() {
    List<HelixPlan> remedies =
        remedies(helix().circle(20, 4.5).ascent(Ascent.ofTurnsAndClimb(8, inches(24))));

    HelixPlan gentle = remedies.get(remedies.size() - 1);
    assertThat(remedies.get(0).trackGrades().get(0).percent()).isGreaterThan(2.5);
    assertThat(gentle.trackGrades().get(0).percent()).isLessThanOrEqualTo(2.5);
    assertThat(gentle.spec().ground().innerTrack()).isGreaterThan(inches(20));
  }

  /** Turns that the plan found itself need be no odd number. */
  @Test
  void turnsNotStated_areQuarters() {
    List<HelixPlan> remedies =
        remedies(
            helix()
                .circle(18, 4.5)
                .ascent(Ascent.ofClimbAndSteepest(inches(24), Grade.ofPercent(2))));

    assertThat(remedies)
        .isNotEmpty()
        .allSatisfy(
            plan ->
                assertThat(plan.climb().turns() * 4)
                    .isCloseTo(Math.rint(plan.climb().turns() * 4), within(1e-9)));
  }

  /** A rise that is printed as enough is enough when it is taken as printed. */
  @ParameterizedTest
  @ValueSource(doubles = {2.0, 2.5, 3.1, 3.37})
  void riseOfTheAdvice_takenLiterally_isEnough(double rise) {
    LengthStyle coarse = new LengthStyle(LengthUnit.INCH, 8);
    SpecBuilder low = helix().ascent(Ascent.ofTurnsAndRise(4, inches(rise)));
    Verdict verdict = openHeight(HelixPlan.of(low.spec(), coarse));
    assertThat(verdict.state()).isEqualTo(State.FAIL);

    String advice = new VerdictWords(coarse).fix(verdict);
    Matcher told =
        Pattern.compile("make the rise per turn at least ([0-9 /]+ in) \\(now").matcher(advice);
    assertThat(told.find()).as(advice).isTrue();
    Length printed = Length.parse(told.group(1));
    HelixPlan fixed = HelixPlan.of(low.ascent(Ascent.ofTurnsAndRise(4, printed)).spec(), coarse);

    assertThat(openHeight(fixed).state()).isNotEqualTo(State.FAIL);
  }

  private static Verdict openHeight(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.is(Rule.FREE_HEIGHT, Place.OPEN))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void steepAndLow_takesTwoChangesTogether() {
    List<HelixPlan> remedies =
        remedies(
            helix()
                .circle(18, 4.5)
                .ascent(Ascent.ofTurnsAndClimb(9, inches(24)).atMost(Grade.ofPercent(2))));

    assertThat(remedies).hasSize(1).allMatch(HelixPlan::works);
    assertThat(remedies.get(0).climb().turns()).isLessThan(9);
    assertThat(remedies.get(0).spec().ground().innerTrack()).isGreaterThan(inches(18));
  }
}
