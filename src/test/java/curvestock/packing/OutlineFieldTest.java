package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Box;
import curvestock.geometry.Edge;
import curvestock.geometry.FlatOutline;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import org.junit.jupiter.api.Test;

/** What cells leave out never shows: the field against every edge of the outline, bit for bit. */
class OutlineFieldTest {

  private static final int SHAPES = 200;
  private static final int POINTS = 300;

  private static double byEveryEdge(Outline outline, Point point) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : outline.edges()) {
      least = Math.min(least, edge.distanceTo(point));
    }
    return outline.contains(point) ? -least : least;
  }

  /** A third of the points near the outline, a third round it, a third far off. */
  private static Point point(RandomPacking random, Box box, int k) {
    double reach = (k % 3 == 0 ? 0 : k % 3 == 1 ? 0.7 : 8) * Math.max(box.width(), box.height());
    return new Point(
        random.between(box.minX() - reach, box.maxX() + reach),
        random.between(box.minY() - reach, box.maxY() + reach));
  }

  @Test
  void at_anyPoint_isWhatEveryEdgeGivesToTheLastBit() {
    for (long seed = 1; seed <= SHAPES; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Outline outline = random.shape().outline();
      OutlineField field = new OutlineField(outline);
      double[] out = new double[2];
      for (int k = 0; k < POINTS; k++) {
        Point p = point(random, outline.box(), k);
        double expected = byEveryEdge(outline, p);

        assertThat(field.at(p.x(), p.y())).as("seed %d at %s", seed, p).isEqualTo(expected);
        assertThat(field.at(p.x(), p.y(), out)).as("seed %d at %s", seed, p).isEqualTo(expected);
        assertThat(Math.hypot(out[0], out[1]) - 1)
            .as("seed %d at %s", seed, p)
            .isBetween(-1e-9, 1e-9);
      }
    }
  }

  @Test
  void side_ofTheNearestEdge_isWhatParitySays() {
    int told = 0;
    for (long seed = 1; seed <= SHAPES; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Outline outline = random.shape().outline();
      FlatOutline flat = new FlatOutline(outline);
      for (int k = 0; k < POINTS; k++) {
        Point p = point(random, outline.box(), k);
        double least = flat.depth(p.x(), p.y());
        for (int i = 0; i < flat.count(); i++) {
          if (flat.distance(i, p.x(), p.y()) == least) {
            int side = flat.side(i, p.x(), p.y(), least);
            told += side != 0 ? 1 : 0;
            assertThat(side)
                .as("seed %d at %s by edge %d", seed, p, i)
                .isIn(0, outline.contains(p) ? -1 : 1);
          }
        }
      }
    }
    assertThat(told).isGreaterThan(SHAPES * POINTS * 9 / 10);
  }

  /** What is judged by groups must not be missed between them. */
  @Test
  void groups_ofAnyBody_coverItsBoundary() {
    for (long seed = 1; seed <= SHAPES; seed++) {
      Outline outline = new RandomPacking(seed).shape().outline();
      Body body = new Body(outline);
      for (Edge edge : outline.edges()) {
        for (int part = 1; part < 20; part++) {
          Point p = edge.part(0, part / 20.0).end();
          double off = Double.POSITIVE_INFINITY;
          for (int g = 0; g < body.groupX.length; g++) {
            double apart = p.distance(new Point(body.groupX[g], body.groupY[g]));
            off = Math.min(off, apart - body.groupRadius[g]);
          }
          assertThat(off).as("seed %d at %s", seed, p).isLessThan(1e-6);
        }
      }
    }
  }

  @Test
  void floor_anyPoint_isNeverAboveTheDistanceAndExactBelowEnough() {
    int cheap = 0;
    for (long seed = 1; seed <= SHAPES; seed++) {
      RandomPacking random = new RandomPacking(seed);
      Outline outline = random.shape().outline();
      OutlineField field = new OutlineField(outline);
      for (int k = 0; k < POINTS; k++) {
        Point p = point(random, outline.box(), k);
        double enough = random.between(0, 60);
        double distance = field.at(p.x(), p.y());
        double floor = field.floor(p.x(), p.y(), enough);
        assertThat(floor).as("seed %d at %s", seed, p).isLessThanOrEqualTo(distance);
        if (floor < enough) {
          assertThat(floor).as("seed %d at %s", seed, p).isEqualTo(distance);
        }
        cheap += floor < distance ? 1 : 0;
      }
    }
    assertThat(cheap).isGreaterThan(SHAPES * POINTS / 10);
  }
}
