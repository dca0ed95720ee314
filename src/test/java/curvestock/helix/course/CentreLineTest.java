package curvestock.helix.course;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CentreLineTest {

  private static GroundPlan plan(Direction direction, double straight) {
    return new GroundPlan(
        mm(700), Optional.empty(), mm(60), mm(straight), direction, Angle.ofDegrees(30));
  }

  @ParameterizedTest
  @EnumSource(Direction.class)
  void circle_quarterTurn_movesTheBearingByAQuarter(Direction direction) {
    CentreLine line = new SpecBuilder().ground(plan(direction, 0)).plan().line();
    double quarter = 700 * Math.PI / 2;

    assertThat(line.bearing(0).degrees()).isCloseTo(30, within(1e-9));
    assertThat(line.bearing(quarter).degrees())
        .isCloseTo(direction == Direction.COUNTER_CLOCKWISE ? 120 : 300, within(1e-9));
    assertThat(line.at(quarter).point().norm()).isCloseTo(700, within(1e-9));
  }

  @ParameterizedTest
  @EnumSource(Direction.class)
  void oval_afterEachTurn_isBackWhereItWas(Direction direction) {
    HelixPlan plan =
        new SpecBuilder()
            .ground(plan(direction, 500))
            .ascent(Ascent.ofTurnsAndRise(3, mm(90)))
            .plan();
    double run = plan.climb().runPerTurn().millimetres();

    for (double s = 0; s < run; s += 97) {
      Point lower = plan.line().at(s).point();
      Point upper = plan.line().at(s + run).point();
      assertThat(upper.distance(lower)).isLessThan(1e-8);
    }
  }

  @Test
  void portion_acrossHalfTurns_isOneArcOfItsLength() {
    CentreLine line = new SpecBuilder().ground(plan(Direction.CLOCKWISE, 0)).plan().line();

    List<Edge> part = line.portion(1000, 4000);

    assertThat(part).hasSize(1);
    assertThat(part.get(0).length()).isCloseTo(3000, within(1e-8));
    assertThat(part.get(0).start().distance(line.at(1000).point())).isLessThan(1e-8);
    assertThat(part.get(0).end().distance(line.at(4000).point())).isLessThan(1e-8);
  }

  /** NEM 113 (2016): an easement of length L shifts the tangent by L²/(24R) from the circle. */
  @ParameterizedTest
  @EnumSource(Direction.class)
  void easement_ofPublishedLength_shiftsTheTangentByThePublishedShift(Direction direction) {
    double length = Math.sqrt(24 * 9 * 700.0);
    EndPlan end = EndPlan.level(inches(12), mm(300)).withEasement(mm(length));
    CentreLine line = new SpecBuilder().ground(plan(direction, 0)).ends(end).plan().line();
    Waypoint approach = line.at(-length);
    Point normal = Point.polar(1, approach.heading() + direction.sign() * Math.PI / 2);

    double tangentToCentre = approach.point().times(-1).dot(normal);

    // The arcs end on the spiral; what is left is the formula's own next term.
    assertThat(tangentToCentre).isCloseTo(709, within(0.03));
    assertThat(line.bearing(-length).degrees()).isCloseTo(30, within(1e-9));
  }

  /**
   * What stands at the ring's end stands there on every turn, whatever the rounding of its place.
   */
  @ParameterizedTest
  @EnumSource(Direction.class)
  void bearing_atTheEndsOfAnEasedRing_isTheRings(Direction direction) {
    EndPlan end = EndPlan.level(inches(12), mm(300)).withEasement(mm(400));
    HelixPlan plan = new SpecBuilder().ground(plan(direction, 0)).ends(end).plan();
    double ring = plan.climb().ringLength();

    assertThat(plan.line().bearing(ring + 1e-9)).isEqualTo(plan.line().bearing(ring));
    assertThat(plan.line().bearing(-1e-9).degrees()).isCloseTo(30, within(1e-9));
  }

  /** Curvature and height keep their places: the ring under an easement is where it would be. */
  @Test
  void easement_distances_agreeWithTheCircle() {
    double length = 400;
    EndPlan end = EndPlan.level(inches(12), mm(300)).withEasement(mm(length));
    HelixPlan eased =
        new SpecBuilder().ground(plan(Direction.COUNTER_CLOCKWISE, 0)).ends(end).plan();
    HelixPlan plain = new SpecBuilder().ground(plan(Direction.COUNTER_CLOCKWISE, 0)).plan();

    for (double s = length / 2; s < 20000; s += 531) {
      assertThat(eased.line().at(s).point().distance(plain.line().at(s).point())).isLessThan(1e-6);
    }
    assertThat(eased.climb().turns()).isEqualTo(plain.climb().turns());
    assertThat(eased.line().at(0).point().norm()).isGreaterThan(700);
  }

  @Test
  void turnAt_endOfTheRing_isTheLastTurn() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(plan(Direction.COUNTER_CLOCKWISE, 0))
            .ascent(Ascent.ofTurnsAndRise(4.25, mm(100)))
            .plan();

    assertThat(plan.line().turnAt(-200)).isEqualTo(1);
    assertThat(plan.line().turnAt(plan.climb().runPerTurn().millimetres())).isEqualTo(2);
    assertThat(plan.line().turnAt(plan.climb().ringLength() + 100)).isEqualTo(5);
  }

  @Test
  void width_statedWithSpacing_leavesTheSideMargin() {
    Length margin = GroundPlan.marginOfWidth(inches(7.5), Optional.of(inches(2.5)));

    assertThat(margin.inches()).isCloseTo(2.5, within(1e-12));
  }
}
