package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edges, loops and shapes as the check reads them. Figures by hand. */
class TraceTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-12);

  private static Trace.Straight line(double x1, double y1, double x2, double y2) {
    return new Trace.Straight(new Point(x1, y1), new Point(x2, y2));
  }

  private static Trace.Round arc(double x, double y, double radius, double first, double sweep) {
    return new Trace.Round(new Point(x, y), radius, Math.toRadians(first), Math.toRadians(sweep));
  }

  private static void assertAt(Point point, double x, double y) {
    assertThat(point.distance(new Point(x, y)))
        .as("%s, not (%s, %s)", point, x, y)
        .isLessThan(1e-9);
  }

  @Test
  void line_placesAndDirections_areThoseByHand() {
    Trace line = line(10, 20, 13, 24);

    assertAt(line.at(0.2), 10.6, 20.8);
    assertThat(line.end()).isEqualTo(new Point(13, 24));
    assertThat(line.length()).isEqualTo(5);
    assertAt(line.startDirection(), 0.6, 0.8);
    assertAt(line.endDirection(), 0.6, 0.8);
    assertThat(line.areaShare()).isEqualTo((10 * 24 - 20 * 13) / 2.0);
    assertThat(line.stray(0, 1)).isZero();
    assertThat(line.reversed()).isEqualTo(line(13, 24, 10, 20));
  }

  @Test
  void arc_placesAndDirections_areThoseByHand() {
    Trace.Round arc = arc(10, 20, 5, 0, 90);

    assertAt(arc.start(), 15, 20);
    assertAt(arc.at(0.5), 10 + 5 / Math.sqrt(2), 20 + 5 / Math.sqrt(2));
    assertAt(arc.end(), 10, 25);
    assertAt(arc.startDirection(), 0, 1);
    assertAt(arc.endDirection(), -1, 0);
    assertAt(arc.reversed().start(), 10, 25);
    assertAt(arc.reversed().startDirection(), 1, 0);
    assertThat(arc.length()).isCloseTo(2.5 * Math.PI, CLOSE);
    assertThat(arc.reversed().length()).isCloseTo(2.5 * Math.PI, CLOSE);
    assertThat(arc.isWholeCircle()).isFalse();
    assertThat(arc(0, 0, 1, 5, 360).isWholeCircle()).isTrue();
    assertThat(arc(0, 0, 1, 5, -360).isWholeCircle()).isTrue();
  }

  /** The sagitta r(1 − cos(s/2)): of a quarter of radius 5, 5 − 5/√2; of a half turn, 5. */
  @Test
  void arc_stray_isTheSagitta() {
    assertThat(arc(1, 2, 5, 10, 90).stray(0, 1)).isCloseTo(5 - 5 / Math.sqrt(2), CLOSE);
    assertThat(arc(1, 2, 5, 10, -180).stray(0, 1)).isCloseTo(5, CLOSE);
    assertThat(arc(1, 2, 5, 10, 180).stray(0.25, 0.75)).isCloseTo(5 - 5 / Math.sqrt(2), CLOSE);
  }

  /** ½∮(x dy − y dx) by its antiderivative: ½∫(25 + 50 cos t + 100 sin t) dt from 0 to π/2. */
  @Test
  void arc_areaShare_isTheClosedForm() {
    assertThat(arc(10, 20, 5, 0, 90).areaShare()).isCloseTo(12.5 * Math.PI / 2 + 75, CLOSE);
    assertThat(arc(10, 20, 5, 90, -90).areaShare()).isCloseTo(-12.5 * Math.PI / 2 - 75, CLOSE);
  }

  @ParameterizedTest
  @CsvSource({
    // A quarter from 0° about (10, 20), radius 5.
    "13, 24, 0",
    "16, 28, 5",
    "11.5, 22, 2.5",
    "15, 17, 3",
    "18, 16, 5",
    "7, 25, 3",
    "6, 28, 5"
  })
  void arc_distanceTo_isToTheCircleOrToAnEnd(double x, double y, double distance) {
    assertThat(arc(10, 20, 5, 0, 90).distanceTo(new Point(x, y))).isCloseTo(distance, CLOSE);
    assertThat(arc(10, 20, 5, 90, -90).distanceTo(new Point(x, y))).isCloseTo(distance, CLOSE);
  }

  @ParameterizedTest
  @CsvSource({"7.5, 25, 5", "15.5, 19, 5", "7, 16, 5", "16, 28, 5", "11.5, 22, 0"})
  void line_distanceTo_isToTheFootOrToAnEnd(double x, double y, double distance) {
    assertThat(line(10, 20, 13, 24).distanceTo(new Point(x, y))).isCloseTo(distance, CLOSE);
    assertThat(line(1, 1, 1, 1).distanceTo(new Point(4, 5))).isEqualTo(5);
  }

  @Test
  void crossings_ofLines_areByCramer() {
    assertThat(LineCrossings.of(line(0, 0, 1, 1), line(10, 2, 20, 2)))
        .singleElement()
        .satisfies(p -> assertAt(p, 2, 2));
    assertThat(LineCrossings.of(line(5, 0, 5, 1), line(0, 7, 3, 11)))
        .singleElement()
        .satisfies(p -> assertAt(p, 5, 7 + 20 / 3.0));
    assertThat(LineCrossings.of(line(0, 1, 5, 1), line(0, 2, 7, 2))).isEmpty();
  }

  @Test
  void crossings_ofLineAndCircle_areBoth() {
    for (List<Point> found :
        List.of(
            LineCrossings.of(line(-9, 23, -5, 23), arc(10, 20, 5, 7, 8)),
            LineCrossings.of(arc(10, 20, 5, 7, 8), line(-9, 23, -5, 23)))) {
      assertThat(found).hasSize(2);
      assertAt(found.get(0), 6, 23);
      assertAt(found.get(1), 14, 23);
    }
    assertThat(LineCrossings.of(line(-9, 26, -5, 26), arc(10, 20, 5, 7, 8))).isEmpty();
    assertThat(LineCrossings.of(line(-9, 25, -5, 25), arc(10, 20, 5, 7, 8)))
        .hasSize(2)
        .allSatisfy(p -> assertAt(p, 10, 25));
  }

  @Test
  void crossings_ofCircles_areByTheLawOfCosines() {
    List<Point> found = LineCrossings.of(arc(10, 20, 5, 7, 8), arc(19, 24, 6, 7, 8));

    // By hand: (13, 24) lies 5 from the one centre and 6 from the other; the line of centres
    // runs by (9, 4), so the second is its mirror image in it.
    assertThat(found).hasSize(2).anySatisfy(p -> assertAt(p, 13, 24));
    assertThat(found)
        .allSatisfy(p -> assertThat(p.distance(new Point(10, 20))).isCloseTo(5, CLOSE))
        .allSatisfy(p -> assertThat(p.distance(new Point(19, 24))).isCloseTo(6, CLOSE));
    assertThat(found.get(0).distance(found.get(1))).isGreaterThan(1);
    assertThat(LineCrossings.of(arc(0, 0, 5, 7, 8), arc(12, 0, 6, 7, 8))).isEmpty();
    assertThat(LineCrossings.of(arc(0, 0, 5, 7, 8), arc(1, 0, 3, 7, 8))).isEmpty();
    assertThat(LineCrossings.of(arc(0, 0, 5, 7, 8), arc(0, 0, 6, 7, 8))).isEmpty();
    assertThat(LineCrossings.of(arc(0, 0, 5, 7, 8), arc(8, 0, 3, 7, 8)))
        .allSatisfy(p -> assertAt(p, 5, 0));
  }

  private static TraceLoop square(double left, double bottom, double side) {
    return TraceLoop.of(
        Outline.rectangle(side, side).at(new curvestock.geometry.Pose(left, bottom, 0)).outer());
  }

  @Test
  void loop_measures_areThoseByHand() {
    TraceLoop square = square(3, 4, 10);

    assertThat(square.area()).isCloseTo(100, CLOSE);
    assertThat(square.length()).isCloseTo(40, CLOSE);
    assertThat(square.turned(true)).isSameAs(square);
    assertThat(square.turned(false).area()).isCloseTo(-100, CLOSE);
    assertThat(square.turned(false).turned(true)).isEqualTo(square);
    assertThat(square.turned(false).edges().get(0).start()).isEqualTo(new Point(3, 4));
  }

  @Test
  void windings_areCountedWithTheirSign() {
    TraceLoop disc = TraceLoop.of(Loop.circle(new Point(10, 20), 5));
    TraceLoop twice = new TraceLoop(List.of(arc(10, 20, 5, 0, 360), arc(10, 20, 5, 0, 360)));

    assertThat(disc.windings(new Point(10, 24.9))).isEqualTo(1);
    assertThat(disc.turned(false).windings(new Point(10, 24.9))).isEqualTo(-1);
    assertThat(disc.windings(new Point(10, 25.1))).isZero();
    assertThat(twice.windings(new Point(8, 20))).isEqualTo(2);
    assertThat(square(0, 0, 2).windings(new Point(0.1, 1.9))).isEqualTo(1);
    assertThat(square(0, 0, 2).windings(new Point(-0.1, 1.9))).isZero();
  }

  @Test
  void shape_ofLoopsInAnyOrderAndDirection_hasTheLargestOutside() {
    TraceLoop hole = square(2, 2, 2);
    TraceLoop outer = square(0, 0, 10);
    TraceLoop other = square(6, 6, 3);

    for (List<TraceLoop> loops :
        List.of(
            List.of(hole, outer, other),
            List.of(outer.turned(false), hole.turned(false), other),
            List.of(other, hole, outer.turned(false)))) {
      TraceShape shape = TraceShape.of(loops);
      assertThat(shape.outer().area()).isCloseTo(100, CLOSE);
      assertThat(shape.holes()).hasSize(2).allMatch(loop -> loop.area() < 0);
      assertThat(shape.holds(new Point(5, 5))).isTrue();
      assertThat(shape.holds(new Point(3, 3))).isFalse();
      assertThat(shape.holds(new Point(7, 7))).isFalse();
      assertThat(shape.holds(new Point(11, 5))).isFalse();
      assertThat(shape.length()).isCloseTo(40 + 8 + 12, CLOSE);
      assertThat(shape.edges()).hasSize(12);
    }
  }

  @Test
  void bounds_holdTheEdgesAndNotMuchMore() {
    Bounds bounds = Bounds.of(List.of(arc(10, 20, 5, 0, 360), line(0, 20, 3, 22)));

    assertThat(bounds.left()).isBetween(-0.1, 0.0);
    assertThat(bounds.right()).isBetween(15.0, 15.2);
    assertThat(bounds.bottom()).isBetween(14.8, 15.0);
    assertThat(bounds.top()).isBetween(25.0, 25.2);
    Bounds slanted = Bounds.of(List.of(arc(0, 0, 5, 11, 360)));
    assertThat(slanted.right()).isBetween(5.0, 5.2);
    assertThat(slanted.left()).isBetween(-5.2, -5.0);
    assertThat(slanted.top()).isBetween(5.0, 5.2);
    assertThat(slanted.bottom()).isBetween(-5.2, -5.0);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 2, 1, 0",
    "3, 0, 5, 1, 1",
    "-5, 0, -4, 1, 4",
    "0, 4, 2, 5, 3",
    "0, -7, 2, -6, 6",
    "5, 5, 6, 6, 5",
    "-4, -5, -3, -4, 5"
  })
  void bounds_distance_isBetweenTheirNearestSidesOrCorners(
      double left, double bottom, double right, double top, double distance) {
    Bounds one = new Bounds(0, 0, 2, 1);
    Bounds other = new Bounds(left, bottom, right, top);

    assertThat(one.distance(other)).isEqualTo(distance);
    assertThat(other.distance(one)).isEqualTo(distance);
  }

  @ParameterizedTest
  @CsvSource({
    // Against the line from (0, 0) to (10, 0).
    "5, -3, 5, 3, 0",
    "5, 1, 5, 3, 1",
    "5, -4, 5, -2, 2",
    "12, -3, 12, 3, 2",
    "-4, 0, -2, 0, 2",
    "13, 4, 20, 30, 5",
    "2, 7, 8, 7, 7",
    "5, 3, 5, 3, 3",
    "-2, 5, 12, -2, 0",
    "11, 1, 9, 3, 1.414213562373095"
  })
  void chords_distance_isByHand(double x1, double y1, double x2, double y2, double distance) {
    Point a = new Point(0, 0);
    Point b = new Point(10, 0);
    Point c = new Point(x1, y1);
    Point d = new Point(x2, y2);

    for (double found :
        new double[] {
          GapMeasure.chordDistance(a, b, c, d),
          GapMeasure.chordDistance(b, a, c, d),
          GapMeasure.chordDistance(c, d, a, b),
          GapMeasure.chordDistance(d, c, b, a)
        }) {
      assertThat(found).isCloseTo(distance, CLOSE);
    }
  }

  @Test
  void gap_place_isHalfWayBetweenTheNearestPoints() throws Exception {
    GapMeasure.Gap gap =
        GapMeasure.between(List.of(line(0, 0, 0, 10)), List.of(line(9, 5, 4, 3)), 100);

    assertThat(gap.distance()).isCloseTo(4, CLOSE);
    assertAt(gap.at(), 2, 3);
    GapMeasure.Gap round =
        GapMeasure.between(List.of(arc(0, 0, 5, 40, 300)), List.of(arc(-20, 0, 5, 200, 300)), 100);
    assertThat(round.distance()).isBetween(10.0, 10 + GapMeasure.ACCURACY);
    assertThat(round.at().distance(new Point(-10, 0))).isLessThan(0.05);
  }
}
