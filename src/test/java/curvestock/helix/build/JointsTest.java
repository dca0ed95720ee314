package curvestock.helix.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JointsTest {

  private static double degrees(HelixPlan plan, double millimetres) {
    return millimetres / plan.climb().runPerTurn().millimetres() * 360;
  }

  @Test
  void segmentThatDividesATurn_joints_standInLine() {
    Joints joints = new SpecBuilder().segment(60).plan().joints();

    assertThat(joints.stagger()).isZero();
    assertThat(joints.all()).hasSize(35);
    assertThat(joints.ofTurn(2)).hasSize(6);
  }

  @Test
  void segmentThatDoesNotDivide_joints_moveOnEachTurn() {
    HelixPlan plan = new SpecBuilder().segment(80).plan();

    assertThat(degrees(plan, plan.joints().stagger())).isCloseTo(40, within(1e-6));
  }

  @Test
  void starter_firstPiece_isAsLongAsStated() {
    HelixPlan plan = new SpecBuilder().starter(90, 45).plan();

    assertThat(degrees(plan, plan.joints().all().get(0).at())).isCloseTo(45, within(1e-9));
    assertThat(degrees(plan, plan.joints().all().get(1).at())).isCloseTo(135, within(1e-9));
  }

  @Test
  void twoLayers_jointsOfOne_lieInTheMiddleOfTheOthersPieces() {
    HelixPlan plan =
        new SpecBuilder().segment(60).construction(new Construction.TwoLayers()).plan();

    for (Joint upper : plan.joints().ofLayer(2)) {
      double nearest =
          plan.joints().ofLayer(1).stream()
              .mapToDouble(lower -> Math.abs(lower.at() - upper.at()))
              .min()
              .orElseThrow();
      assertThat(degrees(plan, nearest)).isCloseTo(30, within(1e-6));
    }
  }

  /** Supports fall on joints when their number is a multiple of the pieces per turn: practice. */
  @Test
  void blocks_multipleOfThePiecesPerTurn_carryEveryJoint() {
    HelixPlan plan = new SpecBuilder().segment(60).supports(SpecBuilder.blocks(12)).plan();

    assertThat(plan.stations().jointsOnStations(plan.joints(), 1e-6))
        .hasSameSizeAs(plan.joints().all());
  }

  private static HelixPlan rodsOn(double width) {
    return new SpecBuilder()
        .circle(28, width)
        .segment(60)
        .construction(SpecBuilder.plate(4, 0.5, 0.25))
        .supports(SpecBuilder.rods(12, Optional.empty()))
        .ends(EndPlan.level(SpecBuilder.inches(24), SpecBuilder.mm(0)))
        .plan();
  }

  /**
   * Joints at every 60°, rods at every 30°: in the middle they are 15° apart. By hand, on 7.5 in
   * the last outer rod, 15° before the entry, is 794.45 cos 15° - 711.2 = 56 mm from the track that
   * comes in: clear.
   */
  @Test
  void rods_planPlacesThem_farthestFromJoints() {
    HelixPlan plan = rodsOn(7.5);

    assertThat(degrees(plan, plan.stations().leastDistanceToAvoid(plan.joints())))
        .isCloseTo(15, within(1e-6));
  }

  /**
   * On 5.5 in that rod would be 769.05 cos 15° - 711.2 = 31.6 mm from the track, where trains (24
   * mm, half of NEM 102's clear width for H0, second hand) and the washer (8 mm) take 32. The plan
   * tries every half degree: at 14.5° it is 33.35 mm away, clear.
   */
  @Test
  void rods_whereTheMiddleIsInTheApproach_standAsideOfIt() {
    HelixPlan plan = rodsOn(5.5);

    assertThat(degrees(plan, plan.stations().leastDistanceToAvoid(plan.joints())))
        .isCloseTo(14.5, within(1e-6));
  }

  /** A half-lap ends on both sides of its joint: by hand, lap 2 in: 1 in before and behind. */
  @Test
  void placesToAvoid_ofHalfLaps_areTheJointAndBothEnds() {
    HelixPlan plan = new SpecBuilder().segment(90).plan();
    double first = plan.joints().all().get(0).at();

    assertThat(plan.joints().placesToAvoid().subList(0, 4))
        .containsExactly(-12 * 25.4, first, first - 25.4, first + 25.4);
  }

  /** Every joint is the upper end of one piece and the lower end of the next of its layer. */
  @Test
  void joints_ofTheSchedule_eachTieTwoPieces() {
    HelixPlan plan =
        new SpecBuilder().segment(70).construction(new Construction.TwoLayers()).plan();

    for (Joint joint : plan.joints().all()) {
      assertThat(plan.roadbed().pieces())
          .filteredOn(piece -> piece.upper().equals(Optional.of(joint)))
          .hasSize(1)
          .allMatch(piece -> piece.to() == joint.at() && piece.layer() == joint.layer());
      assertThat(plan.roadbed().pieces())
          .filteredOn(piece -> piece.lower().equals(Optional.of(joint)))
          .hasSize(1)
          .allMatch(piece -> piece.from() == joint.at() && piece.layer() == joint.layer());
    }
  }

  /**
   * On an oval too no joint of one layer lies near one of the other: half an arc, half a straight.
   */
  @Test
  void twoLayersOnAnOval_joints_keepHalfAPieceApart() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(
                SpecBuilder.twoTracks(
                    SpecBuilder.mm(500),
                    SpecBuilder.mm(60),
                    SpecBuilder.mm(50),
                    SpecBuilder.mm(400),
                    Direction.COUNTER_CLOCKWISE))
            .segment(60)
            .construction(new Construction.TwoLayers())
            .plan();
    double halfStraight = 200;

    for (Joint upper : plan.joints().ofLayer(2)) {
      for (Joint lower : plan.joints().ofLayer(1)) {
        assertThat(Math.abs(upper.at() - lower.at())).isGreaterThan(halfStraight - 1e-6);
      }
    }
  }
}
