package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Lines and arcs one at a time. All figures by hand, most of them from 3-4-5 triangles. */
class EdgeTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-12);

  private static Arc arc(double x, double y, double radius, double first, double sweep) {
    return new Arc(new Point(x, y), radius, Math.toRadians(first), Math.toRadians(sweep));
  }

  private static void assertAt(Point point, double x, double y) {
    assertThat(point.distance(new Point(x, y)))
        .as("%s, not (%s, %s)", point, x, y)
        .isLessThan(1e-12);
  }

  @ParameterizedTest
  @CsvSource({
    // centre, radius, first, sweep; left, bottom, right, top
    "10, 20, 5, 10, 60, 11.710100716628344, 20.868240888334652, 14.924038765061041,"
        + " 24.698463103929543",
    "10, 20, 5, -45, 90, 13.535533905932738, 16.464466094067262, 15, 23.535533905932738",
    "10, 20, 5, 45, 90, 6.464466094067262, 23.535533905932738, 13.535533905932738, 25",
    "10, 20, 5, 135, 90, 5, 16.464466094067262, 6.464466094067262, 23.535533905932738",
    "10, 20, 5, 225, 90, 6.464466094067262, 15, 13.535533905932738, 16.464466094067262",
    "10, 20, 5, 315, -90, 6.464466094067262, 15, 13.535533905932738, 16.464466094067262",
    "10, 20, 5, 20, 360, 5, 15, 15, 25"
  })
  void arc_box_reachesTheQuarterPointsWithinTheSweep(
      double x,
      double y,
      double radius,
      double first,
      double sweep,
      double left,
      double bottom,
      double right,
      double top) {
    Box box = arc(x, y, radius, first, sweep).box();

    assertThat(box.minX()).isCloseTo(left, CLOSE);
    assertThat(box.minY()).isCloseTo(bottom, CLOSE);
    assertThat(box.maxX()).isCloseTo(right, CLOSE);
    assertThat(box.maxY()).isCloseTo(top, CLOSE);
  }

  @ParameterizedTest
  @CsvSource({
    // first, sweep, direction, within
    "10, 60, 10, true",
    "10, 60, 40, true",
    "10, 60, 69.9, true",
    "10, 60, 70.1, false",
    "10, 60, 9.9, false",
    "10, 60, 400, true",
    "10, 60, -320, true",
    "10, -60, 9.9, true",
    "10, -60, -49.9, true",
    "10, -60, 310.1, true",
    "10, -60, -50.1, false",
    "10, -60, 10.1, false",
    "0, 360, 123, true"
  })
  void arc_spans_isWithinTheSweep(double first, double sweep, double direction, boolean within) {
    assertThat(arc(3, 4, 2, first, sweep).spans(Math.toRadians(direction))).isEqualTo(within);
  }

  @ParameterizedTest
  @CsvSource({
    // An arc of 90° from 0° about (10, 20), radius 5; the point, its distance.
    "13, 24, 0",
    "16, 28, 5",
    "11.5, 22, 2.5",
    "10, 20, 5",
    "15, 17, 3",
    "18, 16, 5",
    "7, 25, 3",
    "6, 28, 5"
  })
  void arc_distanceTo_isToTheCircleOrToAnEnd(double x, double y, double distance) {
    Point point = new Point(x, y);
    Arc arc = arc(10, 20, 5, 0, 90);

    assertThat(arc.distanceTo(point)).isCloseTo(distance, CLOSE);
    assertThat(arc.reversed().distanceTo(point)).isCloseTo(distance, CLOSE);
  }

  @ParameterizedTest
  @CsvSource({
    // 270° from 90°: all but the first quadrant.
    "9, 8, 8.944271909999159",
    "-6, 8, 5",
    "-1.5, -2, 2.5",
    "6, -8, 5",
    "0, 0, 5"
  })
  void largeArc_distanceTo_leavesOutOneQuarter(double x, double y, double distance) {
    // (9, 8) lies in the quarter that is left out: the nearer end is (5, 0), √(4² + 8²) away.
    Point point = new Point(x, y);

    assertThat(arc(0, 0, 5, 90, 270).distanceTo(point)).isCloseTo(distance, CLOSE);
    assertThat(arc(0, 0, 5, 90, 270).reversed().distanceTo(point)).isCloseTo(distance, CLOSE);
  }

  @Test
  void wholeCircle_distanceTo_isToTheCircleAllAround() {
    for (int degrees = 0; degrees < 360; degrees += 15) {
      Point point = Point.polar(8, Math.toRadians(degrees));
      assertThat(arc(0, 0, 5, 30, 360).distanceTo(point)).isCloseTo(3, CLOSE);
      assertThat(arc(0, 0, 5, 30, -360).distanceTo(point)).isCloseTo(3, CLOSE);
    }
  }

  @Test
  void arc_endsPartsAndDirections_areThoseByHand() {
    Arc arc = arc(10, 20, 5, 0, 90);

    assertAt(arc.start(), 15, 20);
    assertAt(arc.end(), 10, 25);
    assertAt(arc.middle(), 10 + 5 / Math.sqrt(2), 20 + 5 / Math.sqrt(2));
    assertAt(arc.startDirection(), 0, 1);
    assertAt(arc.endDirection(), -1, 0);
    assertAt(arc.reversed().start(), 10, 25);
    assertAt(arc.reversed().startDirection(), 1, 0);
    assertAt(arc.reversed().endDirection(), 0, -1);
    assertThat(arc.length()).isCloseTo(2.5 * Math.PI, CLOSE);
    assertThat(arc.reversed().length()).isCloseTo(2.5 * Math.PI, CLOSE);
    Arc third = arc.part(1 / 3.0, 1);
    assertThat(Math.toDegrees(third.startAngle())).isCloseTo(30, CLOSE);
    assertThat(Math.toDegrees(third.sweep())).isCloseTo(60, CLOSE);
    assertAt(third.end(), 10, 25);
  }

  @Test
  void arc_laidAtAPose_turnsAboutTheShapesOrigin() {
    Arc laid = arc(10, 20, 5, 0, 90).at(new Pose(100, 200, Math.PI / 2));

    assertAt(laid.centre(), 80, 210);
    assertAt(laid.start(), 80, 215);
    assertAt(laid.end(), 75, 210);
    assertThat(laid.radius()).isEqualTo(5);
  }

  @Test
  void arc_areaTerm_isTheClosedForm() {
    // x = 10 + 5 cos t, y = 20 + 5 sin t: ½∫(25 + 50 cos t + 100 sin t) dt from 0 to π/2.
    assertThat(arc(10, 20, 5, 0, 90).areaTerm()).isCloseTo(12.5 * Math.PI / 2 + 75, CLOSE);
    assertThat(arc(10, 20, 5, 0, 90).reversed().areaTerm())
        .isCloseTo(-12.5 * Math.PI / 2 - 75, CLOSE);
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 90",
    "-1, 0, 90",
    "NaN, 0, 90",
    "Infinity, 0, 90",
    "5, 0, 0",
    "5, 0, 360.001",
    "5, 0, -360.001",
    "5, 0, NaN",
    "5, NaN, 90",
    "5, Infinity, 90"
  })
  void arc_impossible_isRefused(double radius, double first, double sweep) {
    assertThatThrownBy(() -> arc(0, 0, radius, first, sweep))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageMatching("arc (radius|sweep) must be above .*, but was .*");
  }

  @Test
  void arc_refused_saysTheSweepInDegrees() {
    assertThatThrownBy(() -> arc(0, 0, 5, 0, 450))
        .hasMessage("arc sweep must be above 0 and at most a full circle, but was 450.0°");
  }

  @Test
  void arcs_areEqual_byAllTheirMeasures() {
    Arc arc = arc(1, 2, 3, 40, 50);

    assertThat(arc)
        .isEqualTo(arc(1, 2, 3, 40, 50))
        .hasSameHashCodeAs(arc(1, 2, 3, 40, 50))
        .isNotEqualTo(arc(1.1, 2, 3, 40, 50))
        .isNotEqualTo(arc(1, 2, 3.1, 40, 50))
        .isNotEqualTo(arc(1, 2, 3, 41, 50))
        .isNotEqualTo(arc(1, 2, 3, 40, 51))
        .isNotEqualTo("arc");
    assertThat(arc.hashCode()).isNotEqualTo(arc(1, 2, 3.1, 40, 50).hashCode());
    assertThat(new Arc(Point.ORIGIN, 2, 0, 1))
        .hasToString("Arc[centre=Point[x=0.0, y=0.0], radius=2.0, startAngle=0.0, sweep=1.0]");
  }

  @Test
  void segment_partsAndDirections_areThoseByHand() {
    Segment segment = new Segment(new Point(10, 20), new Point(13, 24));

    assertThat(segment.length()).isEqualTo(5);
    assertAt(segment.startDirection(), 0.6, 0.8);
    assertAt(segment.endDirection(), 0.6, 0.8);
    assertAt(segment.middle(), 11.5, 22);
    assertAt(segment.part(0.2, 1).start(), 10.6, 20.8);
    assertThat(segment.part(0.2, 1).end()).isEqualTo(segment.end());
    assertThat(segment.areaTerm()).isEqualTo((10 * 24 - 20 * 13) / 2.0);
    assertThat(segment.box()).isEqualTo(new Box(10, 20, 13, 24));
    assertThat(segment.reversed().box()).isEqualTo(new Box(10, 20, 13, 24));
    assertAt(segment.at(new Pose(100, 200, Math.PI / 2)).start(), 80, 210);
    assertAt(segment.at(new Pose(100, 200, Math.PI / 2)).end(), 76, 213);
  }

  @ParameterizedTest
  @CsvSource({
    // The line from (10, 20) to (13, 24); the point, its nearest, the distance.
    "11.5, 22, 11.5, 22, 0",
    "7.5, 25, 11.5, 22, 5",
    "15.5, 19, 11.5, 22, 5",
    "7, 16, 10, 20, 5",
    "16, 28, 13, 24, 5"
  })
  void segment_distanceTo_isToTheFootOrToAnEnd(
      double x, double y, double footX, double footY, double distance) {
    Segment segment = new Segment(new Point(10, 20), new Point(13, 24));
    Point point = new Point(x, y);

    assertAt(segment.nearest(point), footX, footY);
    assertThat(segment.distanceTo(point)).isCloseTo(distance, CLOSE);
  }

  @Test
  void segment_withoutLength_isAPoint() {
    Segment point = new Segment(new Point(1, 2), new Point(1, 2));

    assertThat(point.distanceTo(new Point(4, 6))).isEqualTo(5);
    assertThat(point.nearest(new Point(4, 6))).isEqualTo(new Point(1, 2));
  }

  @ParameterizedTest
  @CsvSource({
    "0, 0, 2, 1, 0",
    "3, 0, 5, 1, 1",
    "-5, 0, -4, 1, 4",
    "0, 4, 2, 5, 3",
    "0, -7, 2, -6, 6",
    "5, 5, 6, 6, 5",
    "-4, -5, -3, -4, 5",
    "2, 1, 3, 3, 0"
  })
  void boxes_distance_isBetweenTheirNearestSidesOrCorners(
      double left, double bottom, double right, double top, double distance) {
    Box box = new Box(0, 0, 2, 1);
    Box other = new Box(left, bottom, right, top);

    assertThat(box.distance(other)).isEqualTo(distance);
    assertThat(other.distance(box)).isEqualTo(distance);
  }

  @Test
  void box_sidesAndUnion_areThoseByHand() {
    Box union = new Box(1, 2, 3, 5).union(new Box(-4, 3, 2, 9));

    assertThat(union).isEqualTo(new Box(-4, 2, 3, 9));
    assertThat(union.width()).isEqualTo(7);
    assertThat(union.height()).isEqualTo(7);
    assertThat(Box.of(new Point(5, 1), new Point(2, 8))).isEqualTo(new Box(2, 1, 5, 8));
  }

  @ParameterizedTest
  @CsvSource({"1, 0, 0, 0", "0, 1, 0, 0", "NaN, 0, 1, 1", "0, 0, 1, NaN"})
  void box_insideOut_isRefused(double left, double bottom, double right, double top) {
    assertThatThrownBy(() -> new Box(left, bottom, right, top))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageStartingWith("box must have min <= max, but was x " + left + ".." + right);
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void pose_notFinite_isRefused(double value) {
    assertThatThrownBy(() -> new Pose(value, 0, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Pose(0, value, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Pose(0, 0, value)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void pose_movedAndTurned_isThatByHand() {
    assertThat(new Pose(1, 2, 3).movedBy(10, 20)).isEqualTo(new Pose(11, 22, 3));
    assertAt(new Pose(10, 20, Math.PI / 2).apply(new Point(3, 4)), 6, 23);
    assertThat(new Pose(1, 2, 0.5).then(new Pose(0, 0, 0.25)).rotation()).isEqualTo(0.75);
  }

  @Test
  void point_products_areThoseByHand() {
    Point p = new Point(3, 4);
    Point q = new Point(-2, 5);

    assertThat(p.dot(q)).isEqualTo(14);
    assertThat(p.cross(q)).isEqualTo(23);
    assertThat(p.norm()).isEqualTo(5);
    assertThat(p.distance(new Point(6, 8))).isEqualTo(5);
    assertThat(new Point(-1, 0).angle()).isEqualTo(Math.PI);
    assertThat(new Point(0, -2).angle()).isEqualTo(-Math.PI / 2);
  }
}
