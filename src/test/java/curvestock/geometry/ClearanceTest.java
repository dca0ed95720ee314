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
      assertThat(exact)
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
  void between_pieceWithinMaterial_isZero() {
    Outline ring = RandomShapes.ring(300, 40);
    Outline inMaterial = Outline.of(Loop.circle(new Point(0, 300), 20));

    assertThat(Clearance.between(ring, inMaterial)).isZero();
    assertThat(Clearance.between(inMaterial, ring)).isZero();
    assertThat(Clearance.between(ring, ring)).isZero();
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
  @CsvSource({"0, 0, 20", "75, 0, 5", "80, 0, 0", "85, 0, -5", "200, 0, -80"})
  void within_discInASquare_isTheDistanceToTheEdge(double x, double y, double expected) {
    Outline square = Outline.rectangle(200, 200).at(new Pose(-100, -100, 0));
    Outline disc = Outline.of(Loop.circle(new Point(x, y), x == 0 ? 80 : 20));

    double within = Clearance.within(disc, square);

    // A disc over the edge crosses it: the distance of the boundaries is then 0, signed.
    assertThat(within).isCloseTo(x == 85 ? -0.0 : expected, Offset.offset(ROUNDING));
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

      assertThat(Clearance.between(a, b)).as("seed %d, case %d", seed, i).isBetween(0.0, 2e-9);
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
