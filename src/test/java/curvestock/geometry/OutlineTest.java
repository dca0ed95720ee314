package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

class OutlineTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-9);

  /** t/2·(R² − r²) and t(R + r) + 2(R − r): derived from sector and arc length. */
  @ParameterizedTest
  @CsvSource({"30, 2, 90", "30, 2, 180", "711.2, 63.5, 47.3", "500, 40, 300", "300, 1, 0.5"})
  void sector_areaAndPerimeter_areTheClosedForms(double radius, double half, double degrees) {
    double sweep = Math.toRadians(degrees);
    double outer = radius + half;
    double inner = radius - half;
    Outline sector = RandomShapes.sector(radius, half, sweep).at(new Pose(300, -70, 2));

    assertThat(sector.area()).isCloseTo(sweep / 2 * (outer * outer - inner * inner), within(1e-9));
    assertThat(sector.perimeter()).isCloseTo(sweep * (outer + inner) + 4 * half, within(1e-9));
  }

  private static Offset<Double> within(double relative) {
    return Offset.offset(relative * 1e5);
  }

  @Test
  void halfDisc_box_reachesTheTopOfItsArc() {
    assertThat(RandomShapes.halfDisc(100).box()).isEqualTo(new Box(-100, 0, 100, 100));
  }

  @Test
  void box_randomShapes_holdsThemTightly() {
    long seed = 11;
    RandomShapes shapes = new RandomShapes(seed);
    Flattening flattening = new Flattening(0.001);
    for (int i = 0; i < 200; i++) {
      Outline outline = shapes.shape().at(shapes.pose(500));
      Box box = outline.box();
      var inner = flattening.inside(outline).getEnvelopeInternal();
      var outer = flattening.around(outline).getEnvelopeInternal();

      assertThat(box.minX())
          .as("seed %d, case %d", seed, i)
          .isBetween(outer.getMinX() - 1e-9, inner.getMinX() + 1e-9);
      assertThat(box.maxX())
          .as("seed %d, case %d", seed, i)
          .isBetween(inner.getMaxX() - 1e-9, outer.getMaxX() + 1e-9);
      assertThat(box.minY())
          .as("seed %d, case %d", seed, i)
          .isBetween(outer.getMinY() - 1e-9, inner.getMinY() + 1e-9);
      assertThat(box.maxY())
          .as("seed %d, case %d", seed, i)
          .isBetween(inner.getMaxY() - 1e-9, outer.getMaxY() + 1e-9);
    }
  }

  @Test
  void contains_randomPoints_agreesWithJts() {
    long seed = 12;
    RandomShapes shapes = new RandomShapes(seed);
    Flattening flattening = new Flattening(0.001);
    GeometryFactory factory = new GeometryFactory();
    int judged = 0;
    int in = 0;
    for (int i = 0; i < 300; i++) {
      Outline outline = shapes.shape().at(shapes.pose(400));
      Polygon around = flattening.around(outline);
      Polygon inside = flattening.inside(outline);
      Box box = outline.box();
      for (int k = 0; k < 20; k++) {
        Point point =
            new Point(
                shapes.between(box.minX(), box.maxX()), shapes.between(box.minY(), box.maxY()));
        var jts = factory.createPoint(new Coordinate(point.x(), point.y()));
        boolean surelyIn = inside.contains(jts);
        if (surelyIn || !around.contains(jts)) {
          judged++;
          in += surelyIn ? 1 : 0;
          assertThat(outline.contains(point))
              .as("seed %d, case %d, %s", seed, i, point)
              .isEqualTo(surelyIn);
        }
      }
    }
    assertThat(judged).isGreaterThan(5900);
    assertThat(in).isBetween(1000, 5000);
  }

  /** Rays through corners and through the tops of arcs are where crossing counts go wrong. */
  @ParameterizedTest
  @CsvSource({
    "-150, 0, false",
    "-150, 100, false",
    "-50, 0.0001, true",
    "0, 50, true",
    "150, 0, false",
    "99.9999, 0.0001, true",
    "0, 99.9999, true",
    "0, 100.0001, false",
    "-100.0001, 0, false"
  })
  void encloses_heightsOfCornersAndTops_areRight(double x, double y, boolean inside) {
    assertThat(RandomShapes.halfDisc(100).contains(new Point(x, y))).isEqualTo(inside);
  }

  @Test
  void encloses_levelWithBottomAndTopOfACircle_isRight() {
    for (int turn = 0; turn < 8; turn++) {
      Loop circle = Loop.circle(Point.ORIGIN, 10).at(new Pose(0, 0, turn * Math.PI / 8));
      assertThat(circle.encloses(new Point(-20, 10))).isFalse();
      assertThat(circle.encloses(new Point(-20, -10))).isFalse();
      assertThat(circle.encloses(new Point(-20, 0))).isFalse();
      assertThat(circle.encloses(new Point(-9.99, 0))).isTrue();
      assertThat(circle.encloses(Point.ORIGIN)).isTrue();
    }
  }

  @Test
  void reversed_loop_hasTheOppositeAreaAndTheSameInside() {
    Loop loop = RandomShapes.sector(300, 40, 2).outer();

    assertThat(loop.reversed().signedArea()).isCloseTo(-loop.signedArea(), CLOSE);
    assertThat(loop.reversed().encloses(new Point(300, 0))).isTrue();
  }

  @Test
  void outlines_brokenOrWrongWayRound_areRefused() {
    Loop square = Outline.rectangle(10, 10).outer();

    assertThatThrownBy(() -> Outline.of(square.reversed()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("counter-clockwise");
    assertThatThrownBy(() -> new Outline(square, List.of(square)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("hole must run clockwise");
    assertThatThrownBy(() -> new Loop(List.of(new Segment(new Point(0, 0), new Point(1, 0)))))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("gap is 1.0 mm");
  }

  @Test
  void pose_takenOneAfterAnother_isThePoseOfBoth() {
    long seed = 13;
    RandomShapes shapes = new RandomShapes(seed);
    for (int i = 0; i < 100; i++) {
      Pose first = shapes.pose(100);
      Pose next = shapes.pose(100);
      Point point = new Point(shapes.between(-50, 50), shapes.between(-50, 50));

      assertThat(first.then(next).apply(point).distance(next.apply(first.apply(point))))
          .as("seed %d, case %d", seed, i)
          .isLessThan(1e-9);
    }
  }
}
