package curvestock.helix.course;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.GroundPlan;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class ClimbSolverTest {

  /** Bends of the grade at the ring's ends: climb = turns × rise, as in the textbook. */
  private static SpecBuilder level(double radius, Ascent ascent) {
    return new SpecBuilder()
        .circle(radius, 5)
        .ends(EndPlan.level(inches(24), inches(12)))
        .ascent(ascent);
  }

  private static Climb solve(SpecBuilder builder) {
    return new ClimbSolver(builder.spec(), LengthStyle.METRIC).solve();
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/curvestock/helix/worked-grades.csv", numLinesToSkip = 1)
  void grade_workedExamples_agree(double radius, double rise, double percent) {
    Climb climb = solve(level(radius, Ascent.ofTurnsAndRise(3, inches(rise))));

    assertThat(climb.grade().percent()).isCloseTo(percent, within(0.0006));
  }

  /** Worked example, recomputed: R 36 in: 226.195 in a turn; 24 in at 2 % = 5.305 turns. */
  @Test
  void turns_24InchesAt2Percent_are5Point305() {
    Climb climb = solve(level(36, Ascent.ofClimbAndSteepest(inches(24), Grade.ofPercent(2))));

    assertThat(climb.runPerTurn().inches()).isCloseTo(226.195, within(0.0005));
    assertThat(climb.turns()).isCloseTo(5.305, within(0.0005));
  }

  /** Worked example, recomputed: two turns at R 30 in are 376.99 in long. */
  @Test
  void ringLength_twoTurnsAt30Inches_is376Point99() {
    Climb climb = solve(level(30, Ascent.ofTurnsAndRise(2, inches(4))));

    assertThat(climb.ringLength() / 25.4).isCloseTo(376.99, within(0.005));
  }

  /**
   * Invented scenario, computed by hand: R 500/561 mm, straights 600, 90 mm in a turn: 4341.6 and
   * 4724.9 mm a turn, 2.073 and 1.905 %.
   */
  @Test
  void oval_twoTracks_runAndGradeOfEach() {
    GroundPlan ground =
        SpecBuilder.twoTracks(
            Length.ofMillimetres(500),
            Length.ofMillimetres(61),
            Length.ofMillimetres(40),
            Length.ofMillimetres(600),
            Direction.COUNTER_CLOCKWISE);
    Climb climb =
        solve(
            level(28, Ascent.ofTurnsAndRise(4.5, Length.ofMillimetres(90)))
                .ground(ground)
                .segment(90));
    Length inner = ground.runPerTurn(ground.innerTrack());
    Length outer = ground.runPerTurn(ground.outerTrack());

    assertThat(inner.millimetres()).isCloseTo(4341.6, within(0.05));
    assertThat(outer.millimetres()).isCloseTo(4724.9, within(0.06));
    assertThat(climb.gradeOver(inner).percent()).isCloseTo(2.073, within(0.0006));
    assertThat(climb.gradeOver(outer).percent()).isCloseTo(1.905, within(0.0006));
    assertThat(climb.climb().millimetres()).isCloseTo(405, within(1e-6));
  }

  @Test
  void anyTwo_ofTurnsClimbAndRise_giveTheThird() {
    Climb one = solve(level(30, Ascent.ofTurnsAndClimb(6, inches(24))));
    Climb two = solve(level(30, Ascent.ofTurnsAndRise(6, inches(4))));
    Climb three = solve(level(30, Ascent.ofClimbAndRise(inches(24), inches(4))));

    assertThat(one.risePerTurn().inches()).isCloseTo(4, within(1e-9));
    assertThat(two.climb().inches()).isCloseTo(24, within(1e-9));
    assertThat(three.turns()).isCloseTo(6, within(1e-9));
  }

  @Test
  void threeThatContradict_saysWhichWouldFit() {
    Ascent ascent =
        new Ascent(
            OptionalDouble.of(5),
            Optional.of(inches(24)),
            Optional.of(inches(4)),
            Optional.empty(),
            Optional.empty());

    assertThatThrownBy(() -> solve(level(30, ascent)))
        .hasMessage(
            "turns, climb and rise per turn contradict each other: 5.000 turns of 101.6 mm climb"
                + " 508 mm, not 609.6 mm; leave out one of them: 121.92 mm a turn, or 6.000 turns,"
                + " would fit");
  }

  @ParameterizedTest
  @CsvSource({"COUNTER_CLOCKWISE, 90, 5.25", "CLOCKWISE, 90, 5.75", "CLOCKWISE, 0, 6"})
  void exit_fixed_takesTheFewestTurnsThatEndThere(Direction direction, double exit, double turns) {
    GroundPlan ground =
        new GroundPlan(
            inches(36), Optional.empty(), inches(2.5), Length.ZERO, direction, Angle.ofDegrees(0));
    Ascent ascent =
        Ascent.ofClimbAndSteepest(inches(23), Grade.ofPercent(2)).leavingAt(Angle.ofDegrees(exit));

    Climb climb = solve(level(36, ascent).ground(ground));

    assertThat(climb.turns()).isCloseTo(turns, within(1e-9));
    assertThat(climb.grade().percent()).isLessThanOrEqualTo(2);
    assertThat(climb.climb().inches()).isCloseTo(23, within(1e-9));
  }

  @Test
  void exit_notWhereTheTurnsEnd_namesTheNearestTurns() {
    Ascent ascent = Ascent.ofTurnsAndRise(6, inches(4)).leavingAt(Angle.ofDegrees(90));

    assertThatThrownBy(() -> solve(level(30, ascent)))
        .hasMessageContaining("turns must end at the exit (90°, entry 0°), but were 6.000")
        .hasMessageContaining("5.250 or 6.250 turns would");
  }

  @Test
  void verticalCurves_longerThanTheHelix_areRefused() {
    SpecBuilder short1 =
        new SpecBuilder()
            .circle(10, 2)
            .ends(EndPlan.level(inches(60), inches(12)).withClimbLead(Length.ZERO))
            .ascent(Ascent.ofTurnsAndRise(1.5, inches(4)));

    assertThatThrownBy(() -> solve(short1))
        .hasMessageContaining("vertical curves must fit the ring and their leads");
  }

  @Test
  void turnsOfAnOval_quarter_areRefused() {
    GroundPlan ground =
        new GroundPlan(
            inches(28),
            Optional.empty(),
            inches(2),
            inches(20),
            Direction.COUNTER_CLOCKWISE,
            Angle.ofDegrees(0));

    assertThatThrownBy(
            () -> solve(level(28, Ascent.ofTurnsAndRise(4.25, inches(4))).ground(ground)))
        .hasMessageContaining("must be whole or half turns, but were 4.250; 4.0 or 4.5 would do");
  }
}
