package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.HeightStandard;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.List;
import org.junit.jupiter.api.Test;

class RemediesTest {

  private static SpecBuilder helix() {
    return new SpecBuilder()
        .ends(EndPlan.level(inches(24), inches(32)).withClimbLead(inches(32)))
        .tallest(inches(2.75), HeightStandard.NMRA_S7)
        .supports(SpecBuilder.blocks(12));
  }

  private static List<HelixPlan> remedies(SpecBuilder builder) {
    HelixPlan plan = HelixPlan.of(builder.spec(), LengthStyle.INCH_FRACTIONS);
    assertThat(Remedies.works(plan)).isFalse();
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

    assertThat(remedies).allMatch(Remedies::works);
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

    assertThat(remedies).allMatch(Remedies::works);
    assertThat(remedies)
        .anySatisfy(plan -> assertThat(plan.spec().ground().innerTrack().inches()).isEqualTo(32));
  }

  /** By hand: half of 1.4 in, overhang of some 0.33 in and the block's 0.75 in fill 1.77 in. */
  @Test
  void tooNarrow_namesTheWidthThatClearsTheSupports() {
    Vehicle vehicle = new Vehicle(inches(2.4), inches(11.7), inches(1.4), inches(8.2));
    List<HelixPlan> remedies = remedies(helix().circle(28, 3).longest(vehicle, inches(0.1)));

    assertThat(remedies).allMatch(Remedies::works);
    assertThat(remedies)
        .anySatisfy(
            plan ->
                assertThat(plan.spec().ground().sideMargin().inches())
                    .isGreaterThan(1.77)
                    .isLessThan(2.1));
  }

  @Test
  void steepAndLow_takesTwoChangesTogether() {
    List<HelixPlan> remedies =
        remedies(
            helix()
                .circle(18, 4.5)
                .ascent(Ascent.ofTurnsAndClimb(9, inches(24)).atMost(Grade.ofPercent(2))));

    assertThat(remedies).hasSize(1).allMatch(Remedies::works);
    assertThat(remedies.get(0).climb().turns()).isLessThan(9);
    assertThat(remedies.get(0).spec().ground().innerTrack()).isGreaterThan(inches(18));
  }
}
