package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Loops, outlines and their polygons. Figures by hand unless it is said. */
class LoopTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-9);

  /** A circle of radius 5 about (10, 20), cut into arcs at every multiple of an angle. */
  private static Loop circle(double step, double first) {
    List<Edge> arcs = new ArrayList<>();
    int count = (int) Math.round(360 / step);
    for (int i = 0; i < count; i++) {
      arcs.add(
          new Arc(new Point(10, 20), 5, Math.toRadians(first + i * step), Math.toRadians(step)));
    }
    return new Loop(arcs);
  }

  /** The rule of the circle, (x − 10)² + (y − 20)² < 25, whatever its arcs and their direction. */
  @ParameterizedTest
  @CsvSource({"360, 0", "360, 90", "360, 37", "180, 0", "180, 90", "120, 80", "90, 0", "45, 10"})
  void encloses_circleOfAnyArcs_followsTheRuleOfTheCircle(double step, double first) {
    Loop loop = circle(step, first);
    for (double x = 3.9; x < 17; x += 0.6) {
      for (double y = 13.9; y < 27; y += 0.6) {
        boolean inside = Math.hypot(x - 10, y - 20) < 5;
        assertThat(loop.encloses(new Point(x, y))).as("%s, %s", x, y).isEqualTo(inside);
        assertThat(loop.reversed().encloses(new Point(x, y))).as("%s, %s", x, y).isEqualTo(inside);
      }
    }
  }

  /** Heights of corners, tops and bottoms, where a crossing may be counted twice or not at all. */
  @ParameterizedTest
  @CsvSource({"360, 0", "360, 90", "360, 37", "180, 0", "180, 90", "120, 90", "90, 0", "45, 0"})
  void encloses_atTheHeightOfEnds_isStillRight(double step, double first) {
    Loop loop = circle(step, first);
    for (double y : new double[] {15, 20, 25, 17.5, 22.5}) {
      assertThat(loop.encloses(new Point(4.999, y))).isFalse();
      assertThat(loop.encloses(new Point(15.001, y))).isFalse();
    }
    assertThat(loop.encloses(new Point(10, 20))).isTrue();
    assertThat(loop.encloses(new Point(10, 17.5))).isTrue();
  }

  @ParameterizedTest
  @CsvSource({
    // The W (0,0) (8,0) (8,6) (6,2) (4,6) (2,2) (0,6).
    "1, 1, true",
    "4, 3, true",
    "4, 5.9, true",
    "2, 3, false",
    "6, 3, false",
    "6, 2.5, false",
    "-1, 6, false",
    "-1, 2, false",
    "-1, 0, false",
    "3, 6, false",
    "9, 2, false",
    "7.9, 5, true",
    "0.1, 5, true"
  })
  void encloses_zigzag_countsEachCrossingOnce(double x, double y, boolean inside) {
    Loop loop =
        Loop.polygon(
            List.of(
                new Point(0, 0),
                new Point(8, 0),
                new Point(8, 6),
                new Point(6, 2),
                new Point(4, 6),
                new Point(2, 2),
                new Point(0, 6)));

    assertThat(loop.encloses(new Point(x, y))).isEqualTo(inside);
    assertThat(loop.reversed().encloses(new Point(x, y))).isEqualTo(inside);
  }

  @Test
  void loop_measures_areThoseByHand() {
    Loop loop = circle(90, 0);

    assertThat(loop.signedArea()).isCloseTo(25 * Math.PI, CLOSE);
    assertThat(loop.reversed().signedArea()).isCloseTo(-25 * Math.PI, CLOSE);
    assertThat(loop.perimeter()).isCloseTo(10 * Math.PI, CLOSE);
    assertThat(loop.reversed().edges().get(0).start()).isEqualTo(loop.edges().get(3).end());
    assertThat(loop.at(new Pose(1, 2, 0)).box().minX()).isCloseTo(6, CLOSE);
    assertThat(loop.at(new Pose(1, 2, 0)).box().maxY()).isCloseTo(27, CLOSE);
  }

  @Test
  void loop_withoutEdges_isRefused() {
    assertThatThrownBy(() -> new Loop(List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("a loop must have at least one edge");
  }

  /** The slack is a billionth of the coordinates: at 10 m some 1e-5 of a millimetre, not more. */
  @ParameterizedTest
  @CsvSource({"0, 5e-10, true", "0, 5e-8, false", "10000, 5e-6, true", "10000, 1e-4, false"})
  void loop_endsApart_areToleratedByTheSizeOfTheirNumbers(double at, double gap, boolean closed) {
    Segment there = new Segment(new Point(at, 0), new Point(at, 10));
    Segment aside = new Segment(new Point(at, 10), new Point(at + 10, 10));
    Segment back = new Segment(new Point(at + 10, 10), new Point(at + gap, 0));
    List<Edge> edges = List.of(there, aside, back);

    if (closed) {
      assertThat(new Loop(edges).edges()).hasSize(3);
    } else {
      assertThatThrownBy(() -> new Loop(edges)).hasMessageStartingWith("edge 2 must end where");
    }
  }

  @Test
  void outline_refusedForItsDirection_saysTheArea() {
    Loop square = Outline.rectangle(10, 10).outer();

    assertThatThrownBy(() -> Outline.of(square.reversed()))
        .hasMessage("the outer loop must run counter-clockwise, but its area was -100.0 mm²");
    assertThatThrownBy(() -> new Outline(square, List.of(square)))
        .hasMessage("a hole must run clockwise, but its area was 100.0 mm²");
    Loop flat = Loop.polygon(List.of(new Point(0, 0), new Point(1, 0)));
    assertThatThrownBy(() -> Outline.of(flat)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Outline(square, List.of(flat)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void outline_withAHole_hasBothInItsMeasures() {
    Outline plate =
        new Outline(
            Outline.rectangle(40, 30).outer(),
            List.of(Loop.circle(new Point(20, 15), 5).reversed()));

    assertThat(plate.area()).isCloseTo(1200 - 25 * Math.PI, CLOSE);
    assertThat(plate.perimeter()).isCloseTo(140 + 10 * Math.PI, CLOSE);
    assertThat(plate.edges()).hasSize(6);
    assertThat(plate.box()).isEqualTo(new Box(0, 0, 40, 30));
    assertThat(plate.contains(new Point(20, 15))).isFalse();
    assertThat(plate.contains(new Point(20, 25))).isTrue();
    assertThat(plate.contains(new Point(41, 15))).isFalse();
  }

  /** The widest part of an L of unequal legs is the square at its heel, off the box's middle. */
  @Test
  void roomiest_isWhereAPointLiesDeepest() {
    Outline heel =
        Outline.of(
            Loop.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(100, 0),
                    new Point(100, 20),
                    new Point(40, 20),
                    new Point(40, 60),
                    new Point(0, 60))));
    Point found = heel.roomiest(60);

    // By hand: deepest is (20, 40), 20 from three sides; on the line x = 20 so is (20, 20).
    assertThat(found.x()).isCloseTo(20, Offset.offset(100 / 60.0));
    assertThat(found.y()).isBetween(19.0, 41.0);
    assertThat(Outline.rectangle(90, 30).roomiest(9)).isEqualTo(new Point(45, 15));
    assertThat(Outline.rectangle(90, 30).at(new Pose(7, 5, 0)).roomiest(2))
        .isEqualTo(new Point(52, 20));
  }

  @Test
  void roomiest_boxMiddleOutside_isInTheMaterialAllTheSame() {
    Outline ring = RandomShapes.ring(50, 10);
    Point found = ring.roomiest(24);

    assertThat(ring.contains(found)).isTrue();
    assertThat(found.norm()).isCloseTo(50, Offset.offset(2.6));
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void flattening_toleranceNotAboveZero_isRefused(double tolerance) {
    assertThatThrownBy(() -> new Flattening(tolerance))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("tolerance must be above zero, but was " + tolerance + " mm");
  }

  /** Corners of the chords lie on the circle, those of the tangents off it by the tolerance. */
  @ParameterizedTest
  @CsvSource({"0.5, 0", "0.01, 0", "20, 0", "0.5, 1", "0.01, 1"})
  void flattening_ring_cornersLieOnTheStatedSide(double tolerance, double turn) {
    Outline ring = RandomShapes.ring(300, 40).at(new Pose(5, 7, turn));
    Polygon around = new Flattening(tolerance).around(ring);
    Polygon inside = new Flattening(tolerance).inside(ring);

    assertRadii(inside.getExteriorRing().getCoordinates(), 340, 340);
    assertRadii(around.getExteriorRing().getCoordinates(), 340, 340 + tolerance);
    assertRadii(around.getInteriorRingN(0).getCoordinates(), 260, 260);
    assertRadii(inside.getInteriorRingN(0).getCoordinates(), 260, 260 + tolerance);
    assertThat(around.getNumInteriorRing()).isEqualTo(1);
    // Not finer than asked: at most one step more a half circle than r(1/cos(s/2) − 1) needs.
    double step = 2 * Math.acos(340 / (340 + tolerance));
    int most = 2 * Math.max((int) Math.ceil(Math.PI / step), 4) + 3;
    assertThat(inside.getExteriorRing().getNumPoints()).isLessThanOrEqualTo(most);
    // A coarse tolerance still leaves eighths.
    assertThat(inside.getExteriorRing().getNumPoints()).isGreaterThanOrEqualTo(9);
  }

  private static void assertRadii(Coordinate[] corners, double least, double most) {
    for (Coordinate corner : corners) {
      assertThat(Math.hypot(corner.x - 5, corner.y - 7)).isBetween(least - 1e-9, most + 1e-9);
    }
  }

  @Test
  void boundingCircle_ofASector_holdsItTightly() {
    // By hand: of a half ring of radius 340 the circle about the origin; of a 60 x 80 plate its
    // diagonal's, 50.
    BoundingCircle half = BoundingCircle.of(RandomShapes.sector(300, 40, Math.PI));
    BoundingCircle plate = BoundingCircle.of(Outline.rectangle(60, 80));

    assertThat(half.radius()).isBetween(340.0, 340.7);
    assertThat(half.centre().norm()).isLessThan(30);
    assertThat(plate.radius()).isBetween(50.0, 50.0 + 1e-8);
    assertThat(plate.centre().distance(new Point(30, 40))).isLessThan(1e-9);
  }
}
