package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.piece.AnnularSector;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Signed distances against boundaries sampled by brute force, and gradients against differences.
 */
class DistanceFieldTest {

  private static final int SHAPES = 300;
  private static final int POINTS = 60;

  private static List<DistanceField> fields(Shape shape) {
    List<DistanceField> fields = new ArrayList<>();
    fields.add(new OutlineField(shape.outline()));
    if (shape instanceof AnnularSector sector) {
      fields.add(new SectorField(sector));
    } else if (shape instanceof Strip strip) {
      fields.add(new StripField(strip));
    }
    return fields;
  }

  /** Points of the boundary, each within {@code half} of the next sample along it. */
  private static List<Point> samples(Outline outline, double half) {
    List<Point> points = new ArrayList<>();
    for (Edge edge : outline.edges()) {
      int parts = (int) Math.ceil(edge.length() / half);
      for (int i = 0; i < parts; i++) {
        double share = (double) i / parts;
        points.add(
            edge instanceof Arc arc
                ? arc.pointAt(arc.startAngle() + share * arc.sweep())
                : edge.start().plus(edge.end().minus(edge.start()).times(share)));
      }
    }
    return points;
  }

  @Test
  void at_anyPoint_isTheDistanceToTheSampledBoundary() {
    for (long seed = 1; seed <= SHAPES; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Shape shape = random.shape();
      double step = shape.outline().perimeter() / 2000;
      List<Point> boundary = samples(shape.outline(), step);
      for (int k = 0; k < POINTS; k++) {
        Point p = new Point(random.between(-700, 700), random.between(-700, 700));
        double sampled = boundary.stream().mapToDouble(p::distance).min().orElseThrow();
        for (DistanceField field : fields(shape)) {
          double distance = Math.abs(field.at(p.x(), p.y()));
          // No sample is nearer than the boundary, and one lies within half a step of the foot.
          assertThat(distance)
              .as("seed %d, %s at %s in %s", seed, field.getClass().getSimpleName(), p, shape)
              .isBetween(sampled - step / 2 - 1e-9, sampled + 1e-9);
        }
      }
    }
  }

  @Test
  void at_anyPoint_isBelowZeroExactlyInTheMaterial() {
    for (long seed = 1; seed <= SHAPES; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Shape shape = random.shape();
      for (int k = 0; k < POINTS; k++) {
        Point p = new Point(random.between(-500, 500), random.between(-500, 500));
        for (DistanceField field : fields(shape)) {
          assertThat(field.at(p.x(), p.y()) < 0)
              .as("seed %d, %s at %s in %s", seed, field.getClass().getSimpleName(), p, shape)
              .isEqualTo(isInside(shape, p));
        }
      }
    }
  }

  /** By the plain definitions for sectors and strips, by parity for the rest. */
  private static boolean isInside(Shape shape, Point p) {
    if (shape instanceof AnnularSector sector) {
      boolean between =
          p.norm() < sector.outerRadius().millimetres()
              && p.norm() > sector.innerRadius().millimetres();
      return between && Math.abs(p.angle()) < sector.sweep().radians() / 2;
    }
    if (shape instanceof Strip strip) {
      return Math.abs(p.x()) < strip.length().millimetres() / 2
          && Math.abs(p.y()) < strip.width().millimetres() / 2;
    }
    return shape.outline().contains(p);
  }

  @Test
  void at_withGradient_isTheSameDistanceAndTheSlopeOfFiniteDifferences() {
    double h = 1e-5;
    int compared = 0;
    for (long seed = 1; seed <= SHAPES; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Shape shape = random.shape();
      for (int k = 0; k < POINTS; k++) {
        double x = random.between(-700, 700);
        double y = random.between(-700, 700);
        for (DistanceField field : fields(shape)) {
          double[] out = new double[2];
          double at = field.at(x, y, out);
          assertThat(at).isEqualTo(field.at(x, y));
          double right = field.at(x + h, y) - at;
          double left = at - field.at(x - h, y);
          double up = field.at(x, y + h) - at;
          double down = at - field.at(x, y - h);
          // On ridges, where two feet are equally near, there is no gradient.
          boolean ridge = Math.abs(right - left) > 0.01 * h || Math.abs(up - down) > 0.01 * h;
          if (!ridge && Math.abs(at) > 1e-3) {
            compared++;
            String what = field.getClass().getSimpleName();
            assertThat(out[0])
                .as("x, seed %d, %s at %s, %s in %s", seed, what, x, y, shape)
                .isCloseTo((right + left) / (2 * h), Offset.offset(1e-3));
            assertThat(out[1])
                .as("y, seed %d, %s at %s, %s in %s", seed, what, x, y, shape)
                .isCloseTo((up + down) / (2 * h), Offset.offset(1e-3));
          }
        }
      }
    }
    assertThat(compared).isGreaterThan(SHAPES * POINTS);
  }

  @ParameterizedTest
  @CsvSource({
    // A disc is a ring without a hole: its middle is as deep as its radius.
    "50, 100, 360, 0, 0, -100",
    "50, 100, 360, 40, 0, -60",
    // A half disc: near its middle the straight side is nearest.
    "50, 100, 180, 10, 30, -10",
    "50, 100, 180, -10, 0, 10",
    // A ring: the middle of its hole is as far out as the inner radius.
    "90, 20, 360, 0, 0, 80",
    "90, 20, 360, -90, 0, -10",
    // Three quarters of a ring: in the gap the end faces are nearest.
    "90, 20, 270, -60, 61, -0.707107",
    "90, 20, 270, -90, 0, 65.708921"
  })
  void sectorField_handValues(
      double radius, double width, double degrees, double x, double y, double distance) {
    SectorField field =
        new SectorField(
            new AnnularSector(
                Length.ofMillimetres(radius),
                Length.ofMillimetres(width),
                Angle.ofDegrees(degrees)));

    assertThat(field.at(x, y)).isCloseTo(distance, Offset.offset(1e-6));
  }
}
