package curvestock.helix.clearance;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class EndClearanceTest {

  /** Computed by hand: R 28 in, Ro 30.75 in: √(30.75² − 28²) = 12.71 in. */
  @Test
  void overlap_28InchesUnder30Point75_is12Point7() {
    assertThat(EndClearance.tangentUnderRing(inches(28), inches(30.75)).inches())
        .isCloseTo(12.711, within(0.0005));
  }

  /**
   * Trains are as wide as 24 mm either side of H0's track (half the clear width of NEM 102, as
   * quoted elsewhere) where no vehicle is stated. By hand: from 28 - 0.945 in a tangent stays under
   * 30.75 in for 14.615 in; from the track's middle it would be 12.71 in.
   */
  @ParameterizedTest
  @EnumSource(End.class)
  void overlap_noVehicleStated_reachesToTheTrainsInnerSide(End end) {
    assertThat(new SpecBuilder().plan().clearanceAt(end).overlapLength().inches())
        .isCloseTo(14.615, within(0.0006));
  }

  /**
   * Computed by hand: 2.27 %, a vertical curve of 24 in that begins at the ring: 3.155 in between
   * turns, less 2.274 % of 14.615 in and of 12 in: 2.549 in; the same mirrored at the top.
   */
  @ParameterizedTest
  @EnumSource(End.class)
  void free_curveAtTheRing_is2Point549(End end) {
    HelixPlan plan = new SpecBuilder().plan();

    assertThat(plan.budgets().get(0).free().inches()).isCloseTo(3.1545, within(1e-9));
    assertThat(plan.clearanceAt(end).free(Length.ZERO).inches()).isCloseTo(2.549, within(0.0006));
  }

  /** Starting 26.6 in ahead (tangent and half the curve) leaves only the curve's offset. */
  @ParameterizedTest
  @EnumSource(End.class)
  void free_climbStartedTangentAndHalfCurveAhead_losesOnlyTheCurvesOffset(End end) {
    EndClearance clearance = new SpecBuilder().plan().clearanceAt(end);

    Length free = clearance.free(inches(26.615), Length.ZERO);

    assertThat(free.inches()).isCloseTo(3.1545 - 24 * 2.274 / 800, within(0.0006));
  }

  @ParameterizedTest
  @EnumSource(End.class)
  void leadFor_aWantedHeight_givesJustThatHeight(End end) {
    EndClearance clearance = new SpecBuilder().plan().clearanceAt(end);
    Length lead = clearance.leadFor(inches(3), Length.ZERO);

    assertThat(clearance.free(lead, Length.ZERO).inches()).isCloseTo(3, within(1e-6));
    assertThat(clearance.free(lead.minus(mm(1)), Length.ZERO).inches()).isLessThan(3);
  }

  @ParameterizedTest
  @EnumSource(End.class)
  void fullLead_givesBackAllThatTheEndsCost(End end) {
    EndClearance clearance = new SpecBuilder().plan().clearanceAt(end);

    assertThat(clearance.free(clearance.fullLead(), Length.ZERO).inches())
        .isCloseTo(3.1545, within(1e-6));
  }

  @Test
  void applies_lessThanATurn_isFalse() {
    HelixPlan plan = new SpecBuilder().ascent(Ascent.ofTurnsAndRise(0.75, inches(4))).plan();

    assertThat(plan.clearanceAt(End.BOTTOM).applies()).isFalse();
  }

  /** On an oval the approach runs under the whole straight before it is clear. */
  @Test
  void overlap_ofAnOval_addsTheStraightAtTheBottom() {
    GroundPlan oval =
        new GroundPlan(
            inches(28),
            Optional.empty(),
            inches(2.75),
            inches(20),
            Direction.COUNTER_CLOCKWISE,
            Angle.ofDegrees(0));
    HelixPlan plan =
        new SpecBuilder().ground(oval).ends(EndPlan.level(inches(24), inches(12))).plan();

    assertThat(plan.clearanceAt(End.BOTTOM).overlapLength().inches())
        .isCloseTo(34.615, within(0.0006));
    assertThat(plan.clearanceAt(End.TOP).overlapLength().inches())
        .isCloseTo(14.615, within(0.0006));
  }
}
