package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Polygon;

/** Growing by half a kerf, against closed forms and against JTS's buffer. */
class OutlineOffsetTest {

  private static Outline grown(Outline outline, double distance) {
    return OutlineOffset.outwards(outline, distance).orElseThrow();
  }

  /** Area A + P·d + π·d² and perimeter P + 2π·d of a widened convex piece (Steiner's formula). */
  @ParameterizedTest
  @ValueSource(doubles = {0.05, 1.5875, 20})
  void outwards_rectangle_hasSteinersAreaAndPerimeter(double d) {
    Outline outline = grown(Outline.rectangle(300, 40), d);

    assertThat(outline.area()).isCloseTo(12000 + 680 * d + Math.PI * d * d, Offset.offset(1e-8));
    assertThat(outline.perimeter()).isCloseTo(680 + 2 * Math.PI * d, Offset.offset(1e-9));
    assertThat(outline.edges()).hasSize(8);
  }

  @Test
  void outwards_ring_growsOutsideAndShrinksTheHole() {
    Outline outline = grown(RandomShapes.ring(300, 45), 2);

    assertThat(outline.area())
        .isCloseTo(Math.PI * (347.0 * 347 - 253.0 * 253), Offset.offset(1e-6));
  }

  /** Hand-made: an L of two 100 x 40 legs; its inside corner stays sharp, at (40 + d, 40 + d). */
  @Test
  void outwards_insideCorner_isWhereTheMovedEdgesMeet() {
    Outline angle =
        Outline.of(
            Loop.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(100, 0),
                    new Point(100, 40),
                    new Point(40, 40),
                    new Point(40, 100),
                    new Point(0, 100))));

    Outline outline = grown(angle, 3);

    assertThat(outline.edges()).hasSize(11);
    assertThat(outline.edges())
        .anySatisfy(edge -> assertThat(edge.end().distance(new Point(43, 43))).isLessThan(1e-9));
  }

  /**
   * JTS's buffer of the flattened outline (a general-purpose reference library, arcs as chords):
   * the exact offset must not differ from it by more than the two flattenings.
   */
  @Test
  void outwards_randomShapes_agreeWithTheBufferOfJts() {
    RandomShapes shapes = new RandomShapes(611);
    for (int i = 0; i < 200; i++) {
      Outline outline = shapes.shape().at(shapes.pose(500));
      double d = shapes.between(0.1, 4);
      Optional<Outline> result = OutlineOffset.outwards(outline, d);
      if (result.isEmpty()) {
        continue;
      }
      Flattening flattening = new Flattening(0.001);
      Polygon exact = flattening.inside(result.get());
      double reference = flattening.inside(outline).buffer(d, 200).getArea();
      double slack = 0.004 * result.get().perimeter() + 1e-3;

      assertThat(exact.getArea())
          .as("shape %d of seed 611", i)
          .isCloseTo(reference, Offset.offset(slack));
    }
  }

  @Test
  void outwards_randomShapes_keepTheDistanceEverywhere() {
    RandomShapes shapes = new RandomShapes(612);
    int grown = 0;
    for (int i = 0; i < 300; i++) {
      Outline outline = shapes.shape().at(shapes.pose(500));
      double d = shapes.between(0.1, 4);
      for (Outline result : OutlineOffset.outwards(outline, d).stream().toList()) {
        grown++;
        for (Edge edge : result.edges()) {
          for (int k = 1; k < 20; k++) {
            Point point = edge.part(0, k / 20.0).end();
            double near =
                outline.edges().stream().mapToDouble(e -> e.distanceTo(point)).min().orElseThrow();
            assertThat(near).as("shape %d of seed 612", i).isCloseTo(d, Offset.offset(1e-6));
          }
        }
      }
    }
    assertThat(grown).isGreaterThan(280);
  }

  @Test
  void outwards_holeNarrowerThanTheTool_isRefused() {
    assertThat(OutlineOffset.outwards(RandomShapes.ring(100, 98), 2.5)).isEmpty();
  }

  /** A slot 4 wide cannot take a tool of 5. */
  @Test
  void outwards_slotNarrowerThanTheTool_isRefused() {
    Outline comb =
        Outline.of(
            Loop.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(100, 0),
                    new Point(100, 50),
                    new Point(52, 50),
                    new Point(52, 20),
                    new Point(48, 20),
                    new Point(48, 50),
                    new Point(0, 50))));

    assertThat(OutlineOffset.outwards(comb, 1.9)).isPresent();
    assertThat(OutlineOffset.outwards(comb, 2.5)).isEmpty();
  }

  @Test
  void outwards_zero_isTheOutlineItself_andLessIsRefused() {
    Outline outline = Outline.rectangle(10, 10);

    assertThat(OutlineOffset.outwards(outline, 0)).contains(outline);
    assertThatThrownBy(() -> OutlineOffset.outwards(outline, -1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("offset must not be negative, but was -1.0 mm");
  }

  /** A plate of 100 x 40 with a bump of radius 20 on it: its circle and top meet at (70, 40). */
  @Test
  void outwards_bumpOnAPlate_isCutOffWhereCircleAndLineCross() {
    Arc bump = new Arc(new Point(50, 40), 20, 0, Math.PI);
    Outline plate =
        Outline.of(
            new Loop(
                List.of(
                    new Segment(new Point(0, 0), new Point(100, 0)),
                    new Segment(new Point(100, 0), new Point(100, 40)),
                    new Segment(new Point(100, 40), new Point(70, 40)),
                    bump,
                    new Segment(new Point(30, 40), new Point(0, 40)),
                    new Segment(new Point(0, 40), new Point(0, 0)))));

    for (double turn : new double[] {0, 2, 4}) {
      Pose pose = new Pose(7, -9, turn);
      Outline outline = grown(plate.at(pose), 3);

      // By Pythagoras the circle of 23 is at the height of 3 at √(23² − 3²) from its middle.
      double half = Math.sqrt(520);
      assertThat(outline.edges())
          .anySatisfy(edge -> assertEnd(edge, pose, 50 + half, 43))
          .anySatisfy(edge -> assertEnd(edge, pose, 50 - half, 43));
      assertThat(outline.edges()).hasSize(10);
      // Steiner's area of the plate, and the segment of the circle above the line.
      double segment = 529 * Math.acos(3.0 / 23) - 3 * half;
      assertThat(outline.area())
          .isCloseTo(4000 + 280 * 3 + 9 * Math.PI + segment, Offset.offset(1e-8));
    }
  }

  /** A notch of 20 with a bottom bent upwards at its ends: inside corners on a hollow arc. */
  @Test
  void outwards_hollowArcBetweenInsideCorners_isCutOffAtBothEnds() {
    double radius = Math.sqrt(200);
    Arc bottom = new Arc(new Point(50, 30), radius, -Math.PI / 4, -Math.PI / 2);
    Outline notched =
        Outline.of(
            new Loop(
                List.of(
                    new Segment(new Point(0, 0), new Point(100, 0)),
                    new Segment(new Point(100, 0), new Point(100, 40)),
                    new Segment(new Point(100, 40), new Point(60, 40)),
                    new Segment(new Point(60, 40), bottom.start()),
                    bottom,
                    new Segment(bottom.end(), new Point(40, 40)),
                    new Segment(new Point(40, 40), new Point(0, 40)),
                    new Segment(new Point(0, 40), new Point(0, 0)))));

    Outline outline = grown(notched, 3);

    // The walls come to x = 57 and 43, the bottom to radius √200 − 3 about (50, 30).
    double y = 30 - Math.sqrt((radius - 3) * (radius - 3) - 49);
    assertThat(outline.edges())
        .anySatisfy(edge -> assertEnd(edge, Pose.HOME, 57, y))
        .anySatisfy(edge -> assertEnd(edge, Pose.HOME, 43, y));
    assertThat(outline.edges())
        .filteredOn(edge -> edge instanceof Arc arc && arc.sweep() < 0)
        .singleElement()
        .satisfies(
            edge ->
                assertThat(Math.abs(((Arc) edge).sweep()))
                    .isCloseTo(2 * Math.asin(7 / (radius - 3)), Offset.offset(1e-9)));
  }

  /** A pocket that widens behind an opening of 4: no edge vanishes, but the tool does not fit. */
  @Test
  void outwards_openingNarrowerThanTheTool_isRefused() {
    Outline pocket =
        Outline.of(
            Loop.polygon(
                List.of(
                    new Point(0, 0),
                    new Point(100, 0),
                    new Point(100, 80),
                    new Point(52, 80),
                    new Point(52, 60),
                    new Point(80, 60),
                    new Point(80, 20),
                    new Point(20, 20),
                    new Point(20, 60),
                    new Point(48, 60),
                    new Point(48, 80),
                    new Point(0, 80))));

    assertThat(OutlineOffset.outwards(pocket, 1.9)).isPresent();
    assertThat(OutlineOffset.outwards(pocket, 2.1)).isEmpty();
  }

  @Test
  void outwards_arcsThatCloseUp_areRefusedOrLeftOut() {
    // A hole of radius 5 exactly as large as the tool, and one a tenth larger.
    Outline ring = RandomShapes.ring(15, 10);

    assertThat(OutlineOffset.outwards(ring, 5)).isEmpty();
    assertThat(OutlineOffset.outwards(ring, 4.9)).isPresent();
    // Inside corners rounded by 2: the hollow arc vanishes, its lines cross at (43, 43).
    Arc round = new Arc(new Point(42, 42), 2, -Math.PI / 2, -Math.PI / 2);
    Outline angle =
        Outline.of(
            new Loop(
                List.of(
                    new Segment(new Point(0, 0), new Point(100, 0)),
                    new Segment(new Point(100, 0), new Point(100, 40)),
                    new Segment(new Point(100, 40), new Point(42, 40)),
                    round,
                    new Segment(new Point(40, 42), new Point(40, 100)),
                    new Segment(new Point(40, 100), new Point(0, 100)),
                    new Segment(new Point(0, 100), new Point(0, 0)))));

    assertThat(grown(angle, 3).edges())
        .hasSize(11)
        .anySatisfy(edge -> assertEnd(edge, Pose.HOME, 43, 43));
    assertThat(grown(angle, 1).edges()).hasSize(12);
  }

  private static void assertEnd(Edge edge, Pose pose, double x, double y) {
    assertThat(edge.end().distance(pose.apply(new Point(x, y)))).isLessThan(1e-8);
  }
}
