package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sharp tips that cross like an X: no corner of either piece lies in the other, and at the tip they
 * are thinner than any two points along their edges are apart.
 */
class OverlapTipsTest {

  private static final int CASES = 20_000;
  private static final double SPACING = 0.02;

  /** Two polygons, the first where it is drawn, with 0.02 mm to keep between them. */
  private static final class Two {
    final List<Piece> pieces;
    final double[] poses;
    final Overlap overlap;

    Two(List<Point> first, List<Point> second, double x, double y, double turn) {
      pieces =
          List.of(
              Piece.of("A", "first", FreeShape.polygon(first)),
              Piece.of("B", "second", FreeShape.polygon(second)));
      poses = new double[] {5000, 5000, 0, 5000 + x, 5000 + y, turn};
      overlap = fresh();
    }

    Overlap fresh() {
      Cutting cutting =
          Cutting.leaving(Length.ofMillimetres(SPACING), Length.ZERO, Length.ofMillimetres(0));
      return new Overlap(
          new Arena(Sheets.inches(400, 400), cutting), pieces.stream().map(Body::new).toList());
    }

    double energy() {
      return overlap.evaluate(poses, new double[6]);
    }

    double clearance() {
      return Clearance.between(outline(0), outline(1));
    }

    private Outline outline(int i) {
      Pose pose = new Pose(poses[3 * i], poses[3 * i + 1], poses[3 * i + 2]);
      return pieces.get(i).shape().outline().at(pose);
    }
  }

  /** A triangle with its tip at the origin. */
  private static List<Point> pointed(double length, double base) {
    return List.of(new Point(0, 0), new Point(length, -base / 2), new Point(length, base / 2));
  }

  /** The tip of the second stands {@code beyond} past the axis of the first, {@code along} it. */
  @ParameterizedTest
  @CsvSource({"300, 30, 4, 4", "300, 30, 1, 1", "300, 60, 0.5, 0.7", "900, 20, 40, 55"})
  void evaluate_thinTipsThatCross_isPositive(
      double length, double base, double along, double beyond) {
    List<Point> thin = pointed(length, base);

    Two crossed = new Two(thin, thin, along, -beyond, Math.PI / 2);

    assertThat(crossed.clearance()).isNegative();
    assertThat(crossed.energy()).isPositive();
    assertThat(crossed.overlap.weigh(1, crossed.poses, Double.POSITIVE_INFINITY)).isPositive();
  }

  /** The corner of a square needs only one sharp tip to be crossed by. */
  @ParameterizedTest
  @CsvSource({"0.05, 1", "0.15, 2", "0.02, 0.3"})
  void evaluate_aThinTipThroughTheCornerOfASquare_isPositive(double deep, double beyond) {
    List<Point> square =
        List.of(new Point(0, 0), new Point(200, 0), new Point(200, 200), new Point(0, 200));

    // Down along the diagonal's normal, its axis just beneath the corner.
    double r = Math.sqrt(0.5);
    Two crossed =
        new Two(
            square, pointed(300, 20), r * (deep + beyond), r * (deep - beyond), 3 * Math.PI / 4);

    assertThat(crossed.clearance()).isNegative();
    assertThat(crossed.energy()).isPositive();
  }

  /** Thin triangles and quadrilaterals, one with a corner near a corner or an edge of the other. */
  private static Two random(long seed) {
    RandomPacking random = new RandomPacking(seed);
    List<Point> first = thin(random);
    List<Point> second = thin(random);
    Point on = first.get(random.upTo(first.size()) - 1);
    double turn = random.between(-Math.PI, Math.PI);
    Point corner = second.get(random.upTo(second.size()) - 1);
    double reach = Math.pow(10, random.between(-2, 1.7));
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new Two(
        first,
        second,
        on.x() - cos * corner.x() + sin * corner.y() + random.between(-reach, reach),
        on.y() - sin * corner.x() - cos * corner.y() + random.between(-reach, reach),
        turn);
  }

  private static List<Point> thin(RandomPacking random) {
    double length = random.between(50, 600);
    double base = random.between(0.01, 0.5) * length;
    if (random.upTo(2) == 1) {
      return List.of(
          new Point(0, 0),
          new Point(length, -base * random.between(0, 1)),
          new Point(length * random.between(0.5, 1), base));
    }
    return List.of(
        new Point(0, 0),
        new Point(length * random.between(0.1, 0.9), -base),
        new Point(length, base * random.between(-0.3, 0.3)),
        new Point(length * random.between(0.1, 0.9), base));
  }

  @Test
  void evaluate_randomThinPieces_isZeroOnlyWhereTheGapHolds() {
    int zero = 0;
    List<Long> missed = new ArrayList<>();
    for (long seed = 1; seed <= CASES; seed++) {
      Two two = random(seed);
      if (two.energy() == 0) {
        zero++;
        if (two.clearance() < SPACING - 1e-6) {
          missed.add(seed);
        }
      }
    }
    assertThat(missed).as("%d of %d seeds", missed.size(), CASES).isEmpty();
    assertThat(zero).isGreaterThan(CASES / 10);
  }

  /** What a pair remembers of its clearance never hides a crossing. */
  @Test
  void evaluate_randomThinPiecesThatMove_isWhatItIsAfresh() {
    int broken = 0;
    for (long seed = 1; seed <= 400; seed++) {
      Two two = random(seed);
      RandomPacking random = new RandomPacking(-seed);
      double[] slope = new double[6];
      double[] expected = new double[6];
      for (int step = 0; step < 30; step++) {
        double size = Math.pow(10, random.between(-3, 0.5));
        for (int k = 3; k < 6; k++) {
          two.poses[k] += random.between(-size, size) / (k == 5 ? 200 : 1);
        }
        double energy = two.overlap.evaluate(two.poses, slope);

        assertThat(energy)
            .as("seed %d, step %d", seed, step)
            .isEqualTo(two.fresh().evaluate(two.poses, expected));
        assertThat(slope).isEqualTo(expected);
        broken += energy > 0 ? 1 : 0;
      }
    }
    assertThat(broken).isBetween(1000, 11_000);
  }
}
