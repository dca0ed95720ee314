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
}
