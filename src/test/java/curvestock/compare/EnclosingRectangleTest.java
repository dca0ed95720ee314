package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.answer.DemoPlans;
import curvestock.geometry.Point;
import curvestock.job.Job;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.MinimumDiameter;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/** The least rectangle about a piece, against JTS, a general-purpose geometry library. */
class EnclosingRectangleTest {

  private static final Job JOB = DemoPlans.job(Path.of("demo-data", "default.yaml"));

  private static Piece piece(String id) {
    return JOB.demands().stream()
        .map(Demand::piece)
        .filter(piece -> piece.id().equals(id))
        .findFirst()
        .orElseThrow();
  }

  /** R1 and R3 are a straight of 32 in and the same arc, the one the mirror image of the other. */
  @Test
  void mirrorImages_lieInTheSameRectangle() {
    EnclosingRectangle first = EnclosingRectangle.of(piece("R1"));
    EnclosingRectangle last = EnclosingRectangle.of(piece("R3"));

    assertThat(first.length().millimetres()).isCloseTo(last.length().millimetres(), within(0.05));
    assertThat(first.width().millimetres()).isCloseTo(last.width().millimetres(), within(0.05));
  }

  @Test
  void anyPiece_isNotLargerThanTheLeastRectangleOfJts() {
    for (String id : List.of("R1", "R3")) {
      Geometry points =
          new GeometryFactory()
              .createMultiPointFromCoords(
                  piece(id).shape().blank().outline().edges().stream()
                      .flatMap(
                          edge ->
                              java.util.stream.IntStream.range(1, 2000)
                                  .mapToObj(i -> edge.part(0, i / 2000.0).end()))
                      .map((Point point) -> new Coordinate(point.x(), point.y()))
                      .toArray(Coordinate[]::new));
      double least = MinimumDiameter.getMinimumRectangle(points).getArea();

      assertThat(EnclosingRectangle.of(piece(id)).area()).isCloseTo(least, within(0.001 * least));
    }
  }
}
