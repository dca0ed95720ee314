package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Known functions whose least value is zero. */
class MinimiserTest {

  /** Rosenbrock's valley (1960), the usual test function; its least value 0 lies at (1, 1). */
  private static double valley(double[] v, double[] gradient) {
    double a = 1 - v[0];
    double b = v[1] - v[0] * v[0];
    gradient[0] = -2 * a - 400 * v[0] * b;
    gradient[1] = 200 * b;
    return a * a + 100 * b * b;
  }

  /** An ellipsoid whose axes differ by a factor of a thousand. */
  private static double ellipsoid(double[] v, double[] gradient) {
    double sum = 0;
    for (int i = 0; i < v.length; i++) {
      double weight = Math.pow(1000, (double) i / (v.length - 1));
      gradient[i] = 2 * weight * (v[i] - i);
      sum += weight * (v[i] - i) * (v[i] - i);
    }
    return sum;
  }

  @Test
  void minimise_rosenbrocksValley_reachesItsFloor() {
    double[] at = {-1.2, 1};

    double reached = new Minimiser(2).minimise(MinimiserTest::valley, at, 500, 1e-14, 1, 0);

    assertThat(reached).isLessThanOrEqualTo(1e-14);
    assertThat(at[0]).isCloseTo(1, Offset.offset(1e-5));
    assertThat(at[1]).isCloseTo(1, Offset.offset(1e-5));
  }

  @Test
  void minimise_stretchedEllipsoid_reachesItsMiddle() {
    double[] at = new double[12];

    double reached = new Minimiser(12).minimise(MinimiserTest::ellipsoid, at, 300, 1e-12, 5, 0);

    assertThat(reached).isLessThanOrEqualTo(1e-12);
    for (int i = 0; i < at.length; i++) {
      assertThat(at[i]).isCloseTo(i, Offset.offset(1e-5));
    }
  }

  @Test
  void minimise_squaredShortfalls_stopsWhereNothingIsShort() {
    // Two points on a line that must keep 10 apart: flat once they do, like the energy of a layout.
    Minimiser.Energy apart =
        (v, gradient) -> {
          double shortfall = Math.max(0, 10 - (v[1] - v[0]));
          gradient[0] = 2 * shortfall;
          gradient[1] = -2 * shortfall;
          return shortfall * shortfall;
        };
    double[] at = {0, 1};

    double reached = new Minimiser(2).minimise(apart, at, 50, 1e-12, 3, 0);

    assertThat(reached).isLessThanOrEqualTo(1e-12);
    assertThat(at[1] - at[0]).isGreaterThanOrEqualTo(10 - 1e-6);
    assertThat(at[0] + at[1]).as("both give way alike").isCloseTo(1, Offset.offset(1e-9));
  }

  @Test
  void minimise_anyStart_neverEndsHigherAndLeavesTheBestPoint() {
    for (long seed = 1; seed <= 50; seed++) {
      RandomPacking random = new RandomPacking(seed);
      double[] at = {random.between(-3, 3), random.between(-3, 3)};
      double[] ignored = new double[2];
      double before = valley(at, ignored);

      double reached = new Minimiser(2).minimise(MinimiserTest::valley, at, 7, 0, 0.5, 0);

      assertThat(reached).as("seed %d", seed).isLessThanOrEqualTo(before);
      assertThat(valley(at, ignored)).as("seed %d", seed).isEqualTo(reached);
    }
  }

  @Test
  void minimise_longestStep_isKept() {
    double[] at = {100};
    Minimiser.Energy parabola =
        (v, gradient) -> {
          gradient[0] = 2 * v[0];
          return v[0] * v[0];
        };

    new Minimiser(1).minimise(parabola, at, 1, 0, 0.25, 0);

    assertThat(at[0]).isBetween(99.75, 100.0);
  }
}
