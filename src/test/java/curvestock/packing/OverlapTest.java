package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.piece.FreeShape;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The energy is zero exactly where the rules hold, and its gradient is its slope. */
class OverlapTest {

  private static final int CASES = 1500;

  /** Random pieces at random poses on a random sheet. */
  private static final class Case {
    final SheetStock sheet;
    final Cutting cutting;
    final List<Piece> pieces = new ArrayList<>();
    final double[] poses;
    final Overlap overlap;

    Case(long seed, int most) {
      RandomPacking random = new RandomPacking(seed);
      sheet = random.sheet();
      cutting = random.cutting();
      int count = random.upTo(most);
      poses = new double[3 * count];
      for (int i = 0; i < count; i++) {
        pieces.add(random.piece("P" + i));
        poses[3 * i] = random.between(-100, 1500);
        poses[3 * i + 1] = random.between(-100, 1100);
        poses[3 * i + 2] = random.between(-7, 7);
      }
      overlap = new Overlap(new Arena(sheet, cutting), pieces.stream().map(Body::new).toList());
    }

    Outline outline(int i) {
      return pieces
          .get(i)
          .shape()
          .outline()
          .at(new Pose(poses[3 * i], poses[3 * i + 1], poses[3 * i + 2]));
    }

    /** The worst shortfall (mm) of any gap or margin, by exact clearances. */
    double shortfall() {
      double gap = cutting.spacing().millimetres() + Overlap.ALLOWANCE;
      double margin = cutting.margin().millimetres() + Overlap.ALLOWANCE;
      double worst = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < pieces.size(); i++) {
        worst = Math.max(worst, margin - Clearance.within(outline(i), sheet.outline()));
        for (Outline defect : sheet.defects()) {
          worst = Math.max(worst, gap - Clearance.between(outline(i), defect));
        }
        for (int j = 0; j < i; j++) {
          worst = Math.max(worst, gap - Clearance.between(outline(i), outline(j)));
        }
      }
      return worst;
    }

    boolean grainHolds() {
      for (int i = 0; i < pieces.size(); i++) {
        if (!pieces.get(i).grain().allows(poses[3 * i + 2], sheet.grain().radians())) {
          return false;
        }
      }
      return true;
    }
  }

  @Test
  void evaluate_anyPoses_isZeroExactlyWhereGapMarginDefectsAndGrainHold() {
    int free = 0;
    int broken = 0;
    for (long seed = 1; seed <= CASES; seed++) {
      Case one = new Case(seed, 3);
      double energy = one.overlap.evaluate(one.poses, new double[one.poses.length]);
      double shortfall = one.shortfall();
      if (shortfall < -1e-7 && one.grainHolds()) {
        free++;
        assertThat(energy).as("seed %d, nothing short", seed).isLessThan(1e-9);
      } else if (shortfall > 1e-6 || !one.grainHolds()) {
        broken++;
        assertThat(energy).as("seed %d, short by %f mm", seed, shortfall).isPositive();
      }
    }
    assertThat(free).isGreaterThan(CASES / 50);
    assertThat(broken).isGreaterThan(CASES / 4);
  }

  /**
   * Where two arcs overlap deeply the point looked at slides along with the other piece and the
   * gradient leaves that out: it is exact for nearest points and a good direction for the rest. So:
   * nearly all partial derivatives must agree, and along the gradient the energy must fall.
   */
  @Test
  void evaluate_gradient_isTheSlopeOfFiniteDifferences() {
    double h = 1e-6;
    int compared = 0;
    int agreed = 0;
    for (long seed = 1; seed <= CASES; seed++) {
      Case one = new Case(seed, 4);
      double[] gradient = new double[one.poses.length];
      double[] ignored = new double[one.poses.length];
      double at = one.overlap.evaluate(one.poses, gradient);
      for (int k = 0; k < one.poses.length; k++) {
        double[] moved = one.poses.clone();
        moved[k] += h;
        double right = (one.overlap.evaluate(moved, ignored) - at) / h;
        moved[k] -= 2 * h;
        double left = (at - one.overlap.evaluate(moved, ignored)) / h;
        double size = 1 + Math.abs(right) + Math.abs(left);
        // Where a nearest point jumps to another edge the energy has a kink or a step.
        if (Math.abs(right - left) < 1e-3 * size && at > 0) {
          compared++;
          agreed += Math.abs(gradient[k] - (right + left) / 2) < 2e-3 * size ? 1 : 0;
        }
      }
    }
    assertThat(compared).isGreaterThan(2 * CASES);
    assertThat(agreed).isGreaterThan((int) (0.97 * compared));
  }

  @Test
  void evaluateOne_ofAPieceAmongOthers_isItsShareOfTheWhole() {
    for (long seed = 1; seed <= 300; seed++) {
      Case one = new Case(seed, 5);
      double[] gradient = new double[one.poses.length];
      one.overlap.evaluate(one.poses, gradient);
      int n = one.pieces.size();
      for (int i = 0; i < n; i++) {
        double expected = one.overlap.wallEnergy[i];
        for (int j = 0; j < n; j++) {
          expected += one.overlap.pairEnergy[Math.min(i, j) * n + Math.max(i, j)];
        }
        Overlap again =
            new Overlap(
                new Arena(one.sheet, one.cutting), one.pieces.stream().map(Body::new).toList());
        again.placeAll(one.poses);
        double[] own = new double[one.poses.length];

        assertThat(again.evaluateOne(i, one.poses, own))
            .as("seed %d, piece %d", seed, i)
            .isCloseTo(expected, Offset.offset(1e-9 * (1 + expected)));
        for (int k = 3 * i; k < 3 * i + 3; k++) {
          assertThat(own[k])
              .as("seed %d, variable %d", seed, k)
              .isCloseTo(gradient[k], Offset.offset(1e-6 * (1 + Math.abs(gradient[k]))));
        }
      }
    }
  }

  /** A pose that is only tried: the same energy, and above a limit no less than the limit. */
  @Test
  void weigh_aTriedPose_isTheEnergyOfThePieceThere() {
    int above = 0;
    for (long seed = 1; seed <= 60; seed++) {
      Case one = new Case(seed, 5);
      double[] gradient = new double[one.poses.length];
      one.overlap.placeAll(one.poses);
      for (int i = 0; i < one.pieces.size(); i++) {
        double[] tried = one.poses.clone();
        System.arraycopy(one.poses, 3 * ((i + 1) % one.pieces.size()), tried, 3 * i, 3);

        double weighed = one.overlap.weigh(i, tried, Double.POSITIVE_INFINITY);
        double limited = one.overlap.weigh(i, tried, weighed / 2);
        double expected = one.overlap.evaluateOne(i, tried, gradient);
        one.overlap.placeAll(one.poses);

        assertThat(weighed)
            .as("seed %d, piece %d", seed, i)
            .isCloseTo(expected, Offset.offset(1e-9 * (1 + expected)));
        assertThat(limited).isGreaterThanOrEqualTo(weighed / 2).isLessThanOrEqualTo(weighed);
        above += weighed > 0 ? 1 : 0;
      }
    }
    assertThat(above).isGreaterThan(100);
  }

  /** The list of near pairs, kept over small moves, must give what all pairs give. */
  @Test
  void evaluate_manyPieces_isTheSameWithAndWithoutTheListOfNearPairs() {
    for (long seed = 1; seed <= 20; seed++) {
      RandomPacking random = new RandomPacking(seed);
      List<Body> bodies = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        bodies.add(new Body(random.piece("P" + i)));
      }
      Arena arena = new Arena(random.sheet(), random.cutting());
      double[] poses = new double[120];
      for (int k = 0; k < poses.length; k++) {
        poses[k] = random.between(0, k % 3 == 2 ? 6 : 1500);
      }
      Overlap walking = new Overlap(arena, bodies);
      for (int step = 0; step < 30; step++) {
        for (int k = 0; k < poses.length; k++) {
          poses[k] += random.between(-1, 1) * (k % 3 == 2 ? 0.02 : 8);
        }
        double listed = walking.evaluate(poses, new double[120]);
        double fresh = new Overlap(arena, bodies).evaluate(poses, new double[120]);

        assertThat(listed)
            .as("seed %d, step %d", seed, step)
            .isCloseTo(fresh, Offset.offset(1e-9 * fresh));
      }
    }
  }

  /** No corner of one lies in the other: only points along the edges can feel that they cross. */
  @ParameterizedTest
  @CsvSource({"500, 8", "2400, 50", "2400, 20", "1000, 10"})
  void evaluate_thinStripsThatCross_isNotZero(double length, double width) {
    Piece strip =
        Piece.of(
            "T",
            "thin",
            new Strip(RandomPacking.millimetres(length), RandomPacking.millimetres(width)));
    SheetStock sheet = Sheets.inches(200, 200);
    Body body = new Body(strip);
    Overlap overlap = new Overlap(new Arena(sheet, Sheets.cutting(0, 0)), List.of(body, body));
    for (int k = 0; k < 40; k++) {
      double off = length * (k - 20) / 50.0;

      double energy =
          overlap.evaluate(
              new double[] {2500, 2500, 0, 2500 + off, 2500 + off / 3, Math.PI / 2}, new double[6]);

      assertThat(energy).as("crossing %f from the middle", off).isPositive();
    }
  }

  /** Thin strips that cross far from any corner must be felt, or the search believes they fit. */
  @ParameterizedTest
  @CsvSource({"20, 30", "20, 60.5", "90, 7", "135, 33.3"})
  void evaluate_ofCrossingStripsAThousandTimesAsLongAsWide_isNotZero(double degrees, double off) {
    Piece thin = Sheets.strip("T", 60, 0.06);
    Arena arena = new Arena(Sheets.inches(200, 200), Sheets.cutting(0, 0));
    Body body = new Body(thin);
    double[] poses = {2000, 2000, 0, 2000 + off, 2000 + off / 3, Math.toRadians(degrees)};

    double energy = new Overlap(arena, List.of(body, body)).evaluate(poses, new double[6]);

    assertThat(energy).isPositive();
  }

  /** What a pair remembers of its last look at each other never changes an energy. */
  @Test
  void evaluate_afterManyMoves_isTheSameAsAfresh() {
    int checked = 0;
    for (long seed = 1; seed <= 40; seed++) {
      Case moved = new Case(seed, 6);
      RandomPacking random = new RandomPacking(seed + 1000);
      double[] gradient = new double[moved.poses.length];
      double[] again = new double[moved.poses.length];
      for (int step = 0; step < 30; step++) {
        double size = step % 7 == 0 ? 300 : 3;
        for (int k = 0; k < moved.poses.length; k++) {
          moved.poses[k] += random.between(-1, 1) * (k % 3 == 2 ? size / 500 : size);
        }
        double energy = moved.overlap.evaluate(moved.poses, gradient);
        Overlap fresh =
            new Overlap(
                new Arena(moved.sheet, moved.cutting),
                moved.pieces.stream().map(Body::new).toList());
        assertThat(energy).isEqualTo(fresh.evaluate(moved.poses, again));
        assertThat(gradient).isEqualTo(again);
        checked += energy > 0 ? 1 : 0;
      }
    }
    assertThat(checked).isGreaterThan(300);
  }

  /** A wheel with so many corners that all bits for its groups are taken, and more. */
  private static Piece cogged(String id, double radius) {
    List<Point> corners = new ArrayList<>();
    for (int k = 0; k < 70; k++) {
      corners.add(Point.polar(k % 2 == 0 ? radius : 0.9 * radius, 2 * Math.PI * k / 70));
    }
    return Piece.of(id, "cogged", FreeShape.polygon(corners));
  }

  /**
   * Neither the groups that a pair leaves out nor the pairs that are left out while their clearance
   * lasts ever change an energy: small moves of pieces that lie near each other, one or all, now
   * and then a leap onto another piece and back.
   */
  @Test
  void evaluate_andEvaluateOne_overSmallMovesAndLeaps_areWhatBruteForceGives() {
    int zero = 0;
    int broken = 0;
    for (long seed = 1; seed <= 60; seed++) {
      RandomPacking random = new RandomPacking(seed);
      List<Body> bodies = new ArrayList<>();
      int count = 5;
      for (int i = 0; i < count; i++) {
        Piece piece =
            seed % 3 == 0 ? cogged("C" + i, random.between(60, 200)) : random.piece("P" + i);
        bodies.add(new Body(piece));
      }
      Arena arena = new Arena(Sheets.inches(80, 60), random.cutting());
      double[] poses = new double[3 * count];
      for (int k = 0; k < poses.length; k++) {
        poses[k] = random.between(0, k % 3 == 2 ? 6 : k % 3 == 1 ? 1000 : 1400);
      }
      Overlap walking = new Overlap(arena, bodies);
      double[] gradient = new double[poses.length];
      double[] expected = new double[poses.length];
      for (int step = 0; step < 80; step++) {
        int one = random.upTo(count) - 1;
        double size = Math.pow(10, random.between(-4, 1.5));
        boolean leap = step % 9 == 0;
        boolean alone = leap || step % 2 == 0;
        for (int k = 0; k < poses.length; k++) {
          if (!alone || k / 3 == one) {
            int other = 3 * ((one + 1) % count) + k % 3;
            poses[k] =
                leap
                    ? poses[other]
                    : poses[k] + random.between(-1, 1) * size / (k % 3 / 2 * 200 + 1);
          }
        }
        Overlap fresh = new Overlap(arena, bodies);
        double energy;
        double brute;
        if (alone) {
          walking.placeAll(poses);
          fresh.placeAll(poses);
          energy = walking.evaluateOne(one, poses, gradient);
          brute = fresh.evaluateOne(one, poses, expected);
        } else {
          energy = walking.evaluate(poses, gradient);
          brute = fresh.evaluate(poses, expected);
        }
        assertThat(energy).as("seed %d, step %d", seed, step).isEqualTo(brute);
        for (int k = alone ? 3 * one : 0; k < (alone ? 3 * one + 3 : poses.length); k++) {
          assertThat(gradient[k]).as("seed %d, step %d", seed, step).isEqualTo(expected[k]);
        }
        zero += brute == 0 ? 1 : 0;
        broken += brute > 0 ? 1 : 0;
      }
    }
    assertThat(zero).isGreaterThan(100);
    assertThat(broken).isGreaterThan(1000);
  }
}
