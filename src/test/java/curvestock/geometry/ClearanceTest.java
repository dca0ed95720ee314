package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Polygon;

/** The closed forms against JTS, a general-purpose geometry library, and against known figures. */
class ClearanceTest {

  private static final double ROUNDING = 1e-9;

  /** Outer polygons are nearer than the shapes, inner ones farther, each by its stated error. */
  @ParameterizedTest
  @CsvSource({"1, 0.5", "2, 0.02"})
  void between_randomShapes_liesBetweenJtsDistancesOfOuterAndInnerPolygons(
      long seed, double tolerance) {
    RandomShapes shapes = new RandomShapes(seed);
    Flattening flattening = new Flattening(tolerance);
    int apart = 0;
    int touching = 0;
    for (int i = 0; i < 600; i++) {
      Outline a = shapes.shape().at(shapes.pose(900));
      Outline b = shapes.shape().at(shapes.pose(900));

      double exact = Clearance.between(a, b);

      double nearer = flattening.around(a).distance(flattening.around(b));
      double farther = flattening.inside(a).distance(flattening.inside(b));
      assertThat(Math.max(0, exact))
          .as("seed %d, case %d", seed, i)
          .isBetween(nearer - ROUNDING, farther + ROUNDING);
      if (exact > 0) {
        assertThat(exact - nearer).as("seed %d, case %d", seed, i).isLessThan(4 * tolerance);
        apart++;
      } else {
        touching++;
      }
    }
    assertThat(apart).isGreaterThan(100);
    assertThat(touching).isGreaterThan(100);
  }

  /** Areas by JTS: polygons inside the shapes that share area make the gap negative. */
  @Test
  void between_randomShapes_isNegativeWhereJtsFindsSharedArea() {
    long seed = 11;
    RandomShapes shapes = new RandomShapes(seed);
    Flattening flattening = new Flattening(0.02);
    int shared = 0;
    for (int i = 0; i < 600; i++) {
      Outline a = shapes.shape().at(shapes.pose(900));
      Outline b = shapes.shape().at(shapes.pose(900));

      double exact = Clearance.between(a, b);

      double most = flattening.around(a).intersection(flattening.around(b)).getArea();
      if (flattening.inside(a).intersection(flattening.inside(b)).getArea() > 1e-3) {
        assertThat(exact).as("seed %d, case %d", seed, i).isNegative();
        // Material shared to that depth has at least a quarter disc of that radius in common.
        assertThat(exact * exact / 4).as("seed %d, case %d", seed, i).isLessThan(most + 1);
        shared++;
      } else if (most == 0) {
        assertThat(exact).as("seed %d, case %d", seed, i).isPositive();
      }
    }
    assertThat(shared).isGreaterThan(100);
  }

  /** By hand. */
  @ParameterizedTest
  @CsvSource({
    "-50, 45, 200, 10, 45, a bar right through: the middles of its sides lie 45 inside",
    "90, 90, 50, 50, 10, corner over corner",
    "20, -30, 60, 50, 20, an end let in by 20",
    "100, 0, 40, 100, 0, side by side",
    "100, 100, 40, 40, 0, tip to tip",
    "120, 10, 40, 40, -20, apart"
  })
  void between_squareAndRectangle_isMinusTheDepth(
      double x, double y, double width, double height, double depth, String what) {
    Outline square = Outline.rectangle(100, 100);
    Outline other = Outline.rectangle(width, height).at(new Pose(x, y, 0));

    double gap = Clearance.between(square, other);

    assertThat(gap).as(what).isCloseTo(-depth, Offset.offset(ROUNDING));
  }

  @Test
  void within_thatTouchesFromInside_isZeroAndFromOutsideNegative() {
    Outline sheet = Outline.rectangle(600, 400);
    Outline strip = Outline.rectangle(200, 50);

    assertThat(Clearance.within(strip.at(new Pose(400, 0, 0)), sheet)).isZero();
    assertThat(Clearance.within(sheet, sheet)).isZero();
    assertThat(Clearance.within(strip.at(new Pose(600, 0, 0)), sheet)).isEqualTo(-200);
    assertThat(Clearance.within(strip.at(new Pose(500, 0, 0)), sheet)).isEqualTo(-100);
    assertThat(Clearance.within(strip.at(new Pose(-300, 100, 0)), sheet)).isEqualTo(-300);
  }

  @Test
  void within_discThatFillsARegionsHole_isNegative() {
    Outline ring = RandomShapes.ring(300, 40);

    assertThat(Clearance.within(Outline.of(Loop.circle(Point.ORIGIN, 260)), ring)).isNegative();
    assertThat(Clearance.between(Outline.of(Loop.circle(Point.ORIGIN, 260)), ring))
        .isCloseTo(0, Offset.offset(ROUNDING));
  }

  @Test
  void between_eitherWayRound_isTheSame() {
    long seed = 3;
    RandomShapes shapes = new RandomShapes(seed);
    for (int i = 0; i < 500; i++) {
      Outline a = shapes.shape().at(shapes.pose(900));
      Outline b = shapes.shape().at(shapes.pose(900));

      assertThat(Clearance.between(a, b))
          .as("seed %d, case %d", seed, i)
          .isCloseTo(Clearance.between(b, a), Offset.offset(ROUNDING));
    }
  }

  @Test
  void between_bothMovedAlike_isTheSame() {
    long seed = 4;
    RandomShapes shapes = new RandomShapes(seed);
    for (int i = 0; i < 500; i++) {
      Outline a = shapes.shape().at(shapes.pose(900));
      Outline b = shapes.shape().at(shapes.pose(900));
      Pose move = shapes.pose(3000);

      assertThat(Clearance.between(a.at(move), b.at(move)))
          .as("seed %d, case %d", seed, i)
          .isCloseTo(Clearance.between(a, b), Offset.offset(1e-8));
    }
  }

  @Test
  void between_pieceInARingsHole_isTheGapToTheHolesEdge() {
    Outline ring = RandomShapes.ring(300, 40);
    Outline disc = Outline.of(Loop.circle(new Point(100, 0), 50));

    assertThat(Clearance.between(ring, disc)).isCloseTo(110, Offset.offset(ROUNDING));
    assertThat(Clearance.between(ring, Outline.of(Loop.circle(Point.ORIGIN, 255))))
        .isCloseTo(5, Offset.offset(ROUNDING));
  }

  @Test
  void between_pieceWithinMaterial_isNegative() {
    Outline ring = RandomShapes.ring(300, 40);
    Outline inMaterial = Outline.of(Loop.circle(new Point(0, 300), 20));

    assertThat(Clearance.between(ring, inMaterial)).isBetween(-40.0, -20.0);
    assertThat(Clearance.between(inMaterial, ring)).isBetween(-40.0, -20.0);
    assertThat(Clearance.between(ring, ring)).isBetween(-40.0, -1.0);
  }

  /**
   * Pitch of an axis stack, inner radius 28, outer 32: derived and recomputed by brute force in the
   * shared figures ('Packing'): 60° 4.5263 at gap 0, 4.8040 at gap 1/4, and so on.
   */
  @ParameterizedTest
  @CsvSource({
    "60, 4.5263, 0",
    "60, 4.8040, 0.25",
    "90, 5.3406, 0",
    "90, 5.6581, 0.25",
    "120, 6.8806, 0",
    "120, 7.2618, 0.25",
    "180, 15.4919, 0",
    "180, 16.0020, 0.25"
  })
  void between_axisStackAtKnownPitch_isTheGap(double degrees, double pitch, double gap) {
    Outline sector = RandomShapes.sector(30, 2, Math.toRadians(degrees));

    double clearance = Clearance.between(sector, sector.at(new Pose(pitch, 0, 0)));

    // The pitch is given to 4 decimals.
    assertThat(clearance).isCloseTo(gap, Offset.offset(1e-4));
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 20", "75, 0, 5", "80, 0, 0", "85, 0, -5", "200, 0, -120"})
  void within_discInASquare_isTheDistanceToTheEdge(double x, double y, double expected) {
    Outline square = Outline.rectangle(200, 200).at(new Pose(-100, -100, 0));
    Outline disc = Outline.of(Loop.circle(new Point(x, y), x == 0 ? 80 : 20));

    double within = Clearance.within(disc, square);

    assertThat(within).isCloseTo(expected, Offset.offset(ROUNDING));
  }

  @Test
  void within_regionsHoleSwallowedByTheShape_isNegative() {
    Outline region = RandomShapes.ring(300, 280);
    Outline around = Outline.of(Loop.circle(Point.ORIGIN, 100));

    assertThat(Clearance.within(around, region)).isCloseTo(-80, Offset.offset(ROUNDING));
  }

  @Test
  void between_nearlyTangentArcs_isNeverAboveTheSampledDistance() {
    long seed = 5;
    RandomShapes shapes = new RandomShapes(seed);
    for (int i = 0; i < 200; i++) {
      // Circles that just touch, from inside or outside, apart by a hair or not at all.
      double radius = shapes.between(100, 800);
      double other = shapes.between(50, 90);
      double hair = shapes.between(-1e-9, 1e-9);
      double direction = shapes.between(0, 6);
      Outline a = Outline.of(Loop.circle(Point.ORIGIN, radius));
      Outline b = Outline.of(Loop.circle(Point.polar(radius + other + hair, direction), other));

      assertThat(Clearance.between(a, b)).as("seed %d, case %d", seed, i).isBetween(-2e-9, 2e-9);
    }
  }

  @Test
  void flattening_randomShapes_areasEncloseTheExactOneWithinTheTolerance() {
    long seed = 6;
    RandomShapes shapes = new RandomShapes(seed);
    double tolerance = 0.05;
    Flattening flattening = new Flattening(tolerance);
    for (int i = 0; i < 200; i++) {
      Outline outline = shapes.shape().at(shapes.pose(500));
      Polygon around = flattening.around(outline);
      Polygon inside = flattening.inside(outline);
      double room = outline.perimeter() * tolerance + ROUNDING * outline.area();

      assertThat(around.isValid() && inside.isValid()).as("seed %d, case %d", seed, i).isTrue();
      assertThat(around.getArea())
          .as("seed %d, case %d", seed, i)
          .isBetween(outline.area() - 1e-6, outline.area() + room);
      assertThat(inside.getArea())
          .as("seed %d, case %d", seed, i)
          .isBetween(outline.area() - room, outline.area() + 1e-6);
      assertThat(around.buffer(1e-6).covers(inside)).as("seed %d, case %d", seed, i).isTrue();
    }
  }
}
