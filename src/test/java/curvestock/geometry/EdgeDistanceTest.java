package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pairs of edges, and where their lines and circles cross. Figures by hand. Each distance is asked
 * in both orders, with each edge run both ways, and laid somewhere else.
 */
class EdgeDistanceTest {

  private static final Pose ELSEWHERE = new Pose(321, -654, 2.1);

  private static void assertDistance(Edge a, Edge b, double distance) {
    for (Pose pose : new Pose[] {Pose.HOME, ELSEWHERE}) {
      for (Edge first : new Edge[] {a.at(pose), a.at(pose).reversed()}) {
        for (Edge second : new Edge[] {b.at(pose), b.at(pose).reversed()}) {
          assertThat(EdgeDistance.between(first, second)).isCloseTo(distance, near());
          assertThat(EdgeDistance.between(second, first)).isCloseTo(distance, near());
        }
      }
    }
  }

  private static Offset<Double> near() {
    return Offset.offset(1e-10);
  }

  private static Segment line(double x1, double y1, double x2, double y2) {
    return new Segment(new Point(x1, y1), new Point(x2, y2));
  }

  private static Arc arc(double x, double y, double radius, double first, double sweep) {
    return new Arc(new Point(x, y), radius, Math.toRadians(first), Math.toRadians(sweep));
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
    "10, 0, 20, 5, 0",
    "-2, 5, 12, -2, 0",
    "11, 1, 9, 3, 1.414213562373095"
  })
  void lines_distance_isByHand(double x1, double y1, double x2, double y2, double distance) {
    assertDistance(line(0, 0, 10, 0), line(x1, y1, x2, y2), distance);
  }

  @ParameterizedTest
  @CsvSource({
    // Against the upper half of the circle of radius 5 about (0, 0).
    "-10, 7, 10, 7, 2, the top to the line",
    "-10, 4, 10, 4, 0, crossed twice",
    "-2, 3, 2, 3, 1.394448724536011, inside; its ends are nearest: 5 − √13",
    "0, -1, 0, -9, 5.0990195135927845, below: the ends are nearest, √26",
    "0, 0, 0, 9, 0, from the centre out",
    "0, 1, 0, 4, 1, from inside",
    "0, 6, 0, 9, 1, from outside",
    "-10, -3, 10, -3, 3, below the ends",
    "7, -10, 7, 10, 2, beside an end",
    "3, 4, 30, 40, 0, touching"
  })
  void arcAndLine_distance_isByHand(
      double x1, double y1, double x2, double y2, double distance, String why) {
    assertThat(why).isNotBlank();
    assertDistance(arc(0, 0, 5, 0, 180), line(x1, y1, x2, y2), distance);
  }

  @Test
  void arcAndLine_footOutsideTheSweep_doesNotCount() {
    // The foot (0, 7) of the centre lies over the top, which this arc leaves out.
    Arc right = arc(0, 0, 5, -60, 120);
    double end = 5 * Math.sin(Math.toRadians(60));

    assertDistance(right, line(-10, 7, 10, 7), 7 - end);
    assertDistance(right, line(-10, -7, 10, -7), 7 - end);
    assertDistance(right, line(7, -10, 7, 10), 2);
    // It would cross the circle's left side, which is not there.
    assertDistance(right, line(-7, 0, -4, 0), Math.hypot(6.5, end));
  }

  @Test
  void arcAndLine_lineThroughTheCentre_isMeasuredFromItsEnds() {
    assertDistance(arc(0, 0, 5, 20, 140), line(0, 0, 0, -3), 5);
    assertDistance(arc(0, 0, 5, 20, 140), line(0, -3, 0, 3), 2);
  }

  @Test
  void arcAndLine_ofNoLength_isThePointsDistance() {
    assertDistance(arc(0, 0, 5, 0, 180), line(0, 8, 0, 8), 3);
    assertDistance(line(-5, 0, 5, 0), line(0, 8, 0, 8), 8);
  }

  @ParameterizedTest
  @CsvSource({
    // The right half of radius 5 about (0, 0) against whole or part circles.
    "13, 0, 4, 90, 180, 4, the bulges face each other",
    "13, 0, 4, -90, 180, 8.601470508735444, its ends: √(13² + 4²) − 5",
    "1, 0, 2, -90, 180, 2, one within the other, to the same side",
    "6, 0, 2, 0, 360, 0, crossing",
    "0, 0, 3, -60, 120, 2, about one centre",
    "0, 0, 3, 30, 60, 2, about one centre, less of it",
    "-9, 0, 3, -90, 180, 7.295630140987001, behind: √(9² + 5²) − 3"
  })
  void arcs_distance_isByHand(
      double x, double y, double radius, double first, double sweep, double distance, String why) {
    assertThat(why).isNotBlank();
    assertDistance(arc(0, 0, 5, -90, 180), arc(x, y, radius, first, sweep), distance);
  }

  @Test
  void arcs_ofWhichOneCrossingIsOnBoth_touch() {
    // Circles of 5 about (0, 0) and (6, 0) cross at (3, ±4).
    assertDistance(arc(0, 0, 5, 0, 90), arc(6, 0, 5, 90, 90), 0);
    assertDistance(arc(0, 0, 5, -90, 90), arc(6, 0, 5, 180, 90), 0);
    // Upper half of one, lower half of the other: (5, 0) lies inside, 4 from the other's (1, 0).
    assertDistance(arc(0, 0, 5, 0, 90), arc(6, 0, 5, 180, 90), 4);
  }

  @Test
  void crossing_isTheNearestToBothPoints() {
    Point right = new Point(9, 0);
    Point left = new Point(-9, 0);
    Arc circle = arc(0, 0, 5, 0, 90);
    Segment level = line(-20, 3, -10, 3);

    assertCrossing(Crossing.nearest(level, circle, right, right), 4, 3);
    assertCrossing(Crossing.nearest(circle, level, left, left), -4, 3);
    assertCrossing(Crossing.nearest(line(4, 20, 4, 30), level, left, left), 4, 3);
    assertCrossing(Crossing.nearest(line(0, 0, 1, 1), line(10, 2, 20, 2), left, left), 2, 2);
    Point above = new Point(3, 9);
    Point below = new Point(3, -9);
    assertCrossing(Crossing.nearest(circle, arc(6, 0, 5, 0, 9), above, above), 3, 4);
    assertCrossing(Crossing.nearest(circle, arc(6, 0, 5, 0, 9), below, below), 3, -4);
    assertCrossing(Crossing.nearest(circle, arc(0, 8, 5, 0, 9), right, right), 3, 4);
    assertCrossing(Crossing.nearest(arc(0, 8, 5, 0, 9), circle, left, left), -3, 4);
    assertCrossing(Crossing.nearest(circle, arc(9, 4, 6, 0, 9), above, above), 3, 4);
  }

  @Test
  void crossing_weighsBothPoints() {
    // (4, 3) is 1 and 9 away, (−4, 3) 9 and 10.05: by the second point alone it would be nearer.
    Segment level = line(-20, 3, -10, 3);

    assertCrossing(
        Crossing.nearest(level, arc(0, 0, 5, 0, 90), new Point(5, 3), new Point(-5, 2)), 4, 3);
  }

  @Test
  void crossing_ofWhatDoesNotCross_isNothing() {
    Arc circle = arc(0, 0, 5, 0, 90);
    Point any = Point.ORIGIN;

    assertThat(Crossing.nearest(line(0, 1, 5, 1), line(0, 2, 7, 2), any, any)).isEmpty();
    assertThat(Crossing.nearest(line(0, 6, 5, 6), circle, any, any)).isEmpty();
    assertThat(Crossing.nearest(line(0, -6, 5, -6), circle, any, any)).isEmpty();
    assertThat(Crossing.nearest(arc(0, 0, 4, 0, 90), circle, any, any)).isEmpty();
    assertThat(Crossing.nearest(arc(20, 0, 4, 0, 90), circle, any, any)).isEmpty();
    assertThat(Crossing.nearest(arc(1, 0, 2, 0, 90), circle, any, any)).isEmpty();
    assertThat(Crossing.nearest(circle, arc(1, 0, 2, 0, 90), any, any)).isEmpty();
  }

  @Test
  void crossing_ofTouchingCircleAndLine_isThePoint() {
    assertCrossing(
        Crossing.nearest(line(0, 5, 9, 5), arc(0, 0, 5, 0, 90), Point.ORIGIN, Point.ORIGIN), 0, 5);
    assertCrossing(
        Crossing.nearest(arc(0, 0, 5, 0, 90), arc(8, 0, 3, 0, 9), Point.ORIGIN, Point.ORIGIN),
        5,
        0);
  }

  private static void assertCrossing(Optional<Point> found, double x, double y) {
    assertThat(found.orElseThrow().distance(new Point(x, y)))
        .as("%s, not (%s, %s)", found, x, y)
        .isLessThan(1e-9);
  }
}
