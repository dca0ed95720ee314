package curvestock.bound;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.packing.atlas.Atlas;
import curvestock.packing.atlas.Chart;
import curvestock.packing.atlas.Proportions;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The steps of the proof by edge weights, each attacked by random placements, and the bound. */
class EdgeWeightBoundTest {

  private static final double INCH = 25.4;
  private static final Cutting USUAL = Cutting.leaving(mm(INCH / 8), Length.ZERO, mm(INCH / 4));

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  private static AnnularSector sector(double radius, double width, double degrees) {
    return new AnnularSector(mm(radius), mm(width), Angle.ofDegrees(degrees));
  }

  private static SheetStock rectangle(double length, double width) {
    return SheetStock.rectangle("sheet", mm(length), mm(width), mm(12), new Money(1));
  }

  private static double[] radii(AnnularSector sector) {
    return new double[] {sector.innerRadius().millimetres(), sector.outerRadius().millimetres()};
  }

  // ---- areas left of a line ----

  /** A half disc of radius 2 open to the right: all of its left quarter disc's mirror at x = 0. */
  @Test
  void area_byHand() {
    SectorProfile disc = SectorProfile.disc(2);
    disc.cutAt(0);
    assertThat(disc.area()).isCloseTo(2 * Math.PI, Offset.offset(1e-12));
    disc.cutAt(1);
    // Whole less the segment beyond x = 1, which spans 120°: 4/2·(2π/3 − sin 120°).
    assertThat(disc.area())
        .isCloseTo(4 * Math.PI - 2 * (2 * Math.PI / 3 - Math.sqrt(3) / 2), Offset.offset(1e-12));
    disc.cutAt(5);
    assertThat(disc.area()).isCloseTo(4 * Math.PI, Offset.offset(1e-12));
    // Once up and once down the right half, once the left: 2·(2 + 2).
    assertThat(disc.rise()).isCloseTo(8, Offset.offset(1e-12));

    SectorProfile quarter =
        SectorProfile.widened(new double[] {1, 3}, 0, Math.PI / 4, Math.PI / 4, 0);
    quarter.cutAt(1);
    // x ≤ 1 of the quarter ring 1..3: ∫0..1 (√(9−x²) − √(1−x²)) dx.
    double outer = (Math.sqrt(8) + 9 * Math.asin(1.0 / 3)) / 2;
    assertThat(quarter.area()).isCloseTo(outer - Math.PI / 4, Offset.offset(1e-12));
    quarter.cutAt(4);
    assertThat(quarter.area()).isCloseTo(2 * Math.PI, Offset.offset(1e-12));
    // Both arcs once (3 and 1) and the upright end face (2).
    assertThat(quarter.rise()).isCloseTo(6, Offset.offset(1e-9));
  }

  /**
   * The part that the proof counts lies in the piece, widened, whatever the direction in a cell.
   */
  @Test
  void area_ofTheCore_isWhatRandomPointsOfThePieceSay() {
    for (long seed = 1; seed <= 40; seed++) {
      Random random = new Random(seed);
      AnnularSector sector = anySector(random);
      double gap = (seed % 4 == 0 ? 300 : 8) * random.nextDouble();
      double half = sector.sweep().radians() / 2;
      double range = half * 0.2 * random.nextDouble() * random.nextInt(2);
      double direction = Math.PI / 2 * random.nextDouble();
      SectorProfile profile = SectorProfile.widened(radii(sector), gap, half, direction, range);
      double reach = radii(sector)[1] + gap;
      double line = reach * (2 * random.nextDouble() - 1);
      int within = 0;
      int tries = 20_000;
      for (int k = 0; k < tries; k++) {
        double x = reach * (2 * random.nextDouble() - 1);
        double y = reach * (2 * random.nextDouble() - 1);
        boolean left = x <= line;
        if (left
            && isNear(sector, x, y, direction - range, gap)
            && isNear(sector, x, y, direction + range, gap)) {
          within++;
        }
      }
      profile.cutAt(line);
      double sampled = 4 * reach * reach * within / tries;
      double scatter = 4 * reach * reach * 4 * Math.sqrt(within + 10.0) / tries;
      assertThat(profile.area())
          .as("seed %d, %s turned %f", seed, sector, direction)
          .isBetween(
              sampled - scatter - 4 * gap * gap - (gap > 8 ? 1 : 0.02) * sampled,
              sampled + scatter);
    }
  }

  private static AnnularSector anySector(Random random) {
    double width = 30 + 120 * random.nextDouble();
    return sector(width / 2 + 400 * random.nextDouble(), width, 20 + 300 * random.nextDouble());
  }

  private static boolean isNear(
      AnnularSector sector, double x, double y, double direction, double gap) {
    double half = sector.sweep().radians() / 2;
    double off = Math.atan2(y, x) - direction;
    off = Math.abs(off - 2 * Math.PI * Math.rint(off / (2 * Math.PI)));
    double[] radii = radii(sector);
    if (off <= half) {
      double radius = Math.hypot(x, y);
      return radius <= radii[1] + gap && radius >= radii[0] - gap;
    }
    double along = Math.hypot(x, y) * Math.cos(off - half);
    double beside = Math.hypot(x, y) * Math.sin(off - half);
    double beyond = along - Math.max(radii[0], Math.min(radii[1], along));
    return Math.hypot(beyond, beside) <= gap;
  }

  /** A line's length in the sector varies by no more than the border's rise says. */
  @Test
  void rise_ofAnySector_isNoLessThanWhatALinesLengthVariesBy() {
    for (long seed = 1; seed <= 60; seed++) {
      Random random = new Random(seed);
      AnnularSector sector = anySector(random);
      SectorProfile profile =
          SectorProfile.widened(
              radii(sector),
              2,
              sector.sweep().radians() / 2,
              seed % 5 == 0 ? Math.PI / 4 : Math.PI / 2 * random.nextDouble(),
              0.01);
      double reach = radii(sector)[1] + 2;
      double tiny = reach * 1e-5;
      double before = 0;
      double riseBefore = 0;
      for (int k = -200; k <= 200; k++) {
        double line = reach * k / 199.7;
        profile.cutAt(line + tiny);
        double wide = profile.area();
        double rise = profile.rise();
        profile.cutAt(line - tiny);
        // The mean length between two lines that are next to one.
        double length = (wide - profile.area()) / (2 * tiny);
        assertThat(Math.abs(length - before))
            .as("seed %d, line %f of %s", seed, line, sector)
            .isLessThanOrEqualTo(rise - riseBefore + 1e-3);
        before = length;
        riseBefore = profile.rise();
      }
    }
  }

  // ---- weights covered ----

  /** Whatever the weights, no placement in a cell covers less than the cell's least. */
  @Test
  void least_ofAnyWeights_isCoveredByRandomPlacements() {
    for (long seed = 1; seed <= 60; seed++) {
      Random random = new Random(seed);
      AnnularSector sector = anySector(random);
      double range = 0.01 * random.nextDouble();
      double direction = Math.PI / 2 * random.nextDouble();
      double half = sector.sweep().radians() / 2;
      double size = 2500 + 500 * random.nextDouble();
      int bins = 2 * (4 + random.nextInt(20));
      double[] weights = new double[bins / 2];
      Arrays.setAll(weights, b -> random.nextInt(3) * random.nextDouble());
      double reach = radii(sector)[1] + 2;
      double[] centre = {reach * random.nextDouble(), size - reach * random.nextDouble()};
      AxisProfile side =
          new AxisProfile(
              SectorProfile.widened(radii(sector), 2, half, direction, range),
              reach,
              size,
              bins,
              centre);

      double least = side.least(weights, 0);

      double found = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 60; k++) {
        double x = centre[0] + (centre[1] - centre[0]) * random.nextDouble();
        double turned = direction + range * (2 * random.nextInt(2) - 1);
        double covered = covered(sector, turned, x, size, bins, weights);
        assertThat(covered)
            .as("seed %d, %s at %f", seed, sector, x)
            .isGreaterThanOrEqualTo(least - 1e-6 * sector.area());
        found = Math.min(found, covered);
      }
      assertThat(side.covered(side.worst(weights, 0), weights, 0)).isGreaterThanOrEqualTo(least);
    }
  }

  private static double covered(
      AnnularSector sector, double direction, double x, double size, int bins, double[] weights) {
    SectorProfile exact =
        SectorProfile.widened(radii(sector), 2, sector.sweep().radians() / 2, direction, 0);
    double sum = 0;
    for (int b = 0; b < bins; b++) {
      exact.cutAt(size * (b + 1) / bins - x);
      double area = exact.area();
      exact.cutAt(size * b / bins - x);
      sum += weights[Math.min(b, bins - 1 - b)] * (area - exact.area());
    }
    return sum;
  }

  // ---- the linear program ----

  /** Least 2a + 3b with a + 2b ≥ 1 and 2a + b ≥ 1: by hand a = b = 1/3, 5/3. */
  @Test
  void cover_byHand() {
    CoveringProgram program = new CoveringProgram(new double[] {2, 3});

    assertThat(program.cover(List.of(new double[] {1, 2}, new double[] {2, 1}))).isTrue();

    assertThat(program.weights()[0]).isCloseTo(1.0 / 3, Offset.offset(1e-5));
    assertThat(program.weights()[1]).isCloseTo(1.0 / 3, Offset.offset(1e-5));
  }

  // ---- counts ----

  /**
   * By hand: a ring of R 21 in on 60 × 60 in, margin 1/4 in: centres lie in a square of side 18.5,
   * whose diagonal of 26.2 is less than 42, so no second fits. By area discs leave room for two.
   */
  @Test
  void byEdges_rings_areDiscs() {
    Piece ring = Piece.of("R", "ring", sector(19.5 * INCH, 3 * INCH, 360));
    SheetStock sheet = rectangle(60 * INCH, 60 * INCH);
    Bound area = Bound.quick(ring, sheet, USUAL);

    assertThat(area.count()).isEqualTo(2);
    Bound edges = area.byEdges(ring, sheet, USUAL, false);
    assertThat(edges.count()).isEqualTo(1);
    assertThat(edges.proof()).startsWith("by edge waste");
  }

  /** Kinds of {@code benchmarks/data/cases.csv}, with the best counts known. */
  @ParameterizedTest
  @CsvSource({
    "30, 5, 120, 96, 48, 7, 13, 14",
    "30, 5, 60, 96, 48, 21, 27, 28",
    "30, 5, 180, 96, 48, 2, 8, 9",
    "12, 9, 90, 96, 48, 20, 25, 26",
    "24, 3, 90, 48, 24, 5, 7, 9",
    "22, 3, 60, 48, 24, 12, 14, 15",
    "20, 16, 60, 96, 48, 10, 13, 13",
  })
  void byEdges_usualKinds_isSharperThanByAreaAndNotBelowTheBestKnown(
      double radius,
      double width,
      double degrees,
      double length,
      double height,
      int found,
      int edges,
      int area) {
    Piece piece = Piece.of("S", "segment", sector(radius * INCH, width * INCH, degrees));
    SheetStock sheet = rectangle(length * INCH, height * INCH);

    Bound byArea = Bound.quick(piece, sheet, USUAL);
    Bound byEdges = byArea.byEdges(piece, sheet, USUAL, false);

    assertThat(byArea.count()).isEqualTo(area);
    assertThat(byEdges.count()).isEqualTo(edges).isGreaterThanOrEqualTo(found);
  }

  @Test
  void byEdges_sliver_staysAsItWas() {
    Piece sliver = Piece.of("S", "sliver", sector(90_000, 300, 0.2));
    SheetStock sheet = rectangle(1000, 700);
    Bound area = Bound.quick(sliver, sheet, USUAL);

    assertThat(area.byEdges(sliver, sheet, USUAL, false)).isEqualTo(area);
  }

  @Test
  void byEdges_randomSectors_isNeverBelowALayoutFound() {
    int sharper = 0;
    int nearly = 0;
    for (long seed = 1; seed <= 40; seed++) {
      Random random = new Random(seed);
      Piece piece =
          Piece.of(
              "S",
              "segment",
              sector(
                  100 + 250 * random.nextDouble(),
                  60 + 130 * random.nextDouble(),
                  25 + 200 * random.nextDouble()));
      SheetStock sheet =
          rectangle(450 + 900 * random.nextDouble(), 400 + 500 * random.nextDouble());
      Cutting cutting =
          Cutting.leaving(mm(8 * random.nextDouble()), Length.ZERO, mm(10 * random.nextDouble()));
      Bound area = Bound.quick(piece, sheet, cutting);
      int found =
          new Packer(sheet, cutting, new SearchSettings(seed, Effort.QUICK))
              .most(piece, Math.min(40, area.count()), Control.NONE)
              .layout()
              .placements()
              .size();

      int edges = area.byEdges(piece, sheet, cutting, false).count();

      assertThat(edges).as("seed %d, %s", seed, piece.shape()).isBetween(found, area.count());
      sharper += edges < area.count() ? 1 : 0;
      nearly += edges - found <= 2 ? 1 : 0;
    }
    assertThat(sharper).as("sharper than by area").isGreaterThan(8);
    assertThat(nearly).as("within two of what was found").isPositive();
  }

  /** Layouts found by searches of hours, each for the largest pieces that it was found to take. */
  @Test
  void byEdges_chartsOfTheAtlas_areAllAllowed() {
    Cutting none = Cutting.leaving(Length.ZERO, Length.ZERO, Length.ZERO);
    List<Chart> charts = Atlas.SHIPPED.charts();
    int tight = 0;
    for (int k = 0; k < charts.size(); k += 6) {
      Proportions of = charts.get(k).proportions();
      double outer = 1000 * of.outer();
      double width = 1000 * of.width();
      Piece piece =
          Piece.of("S", "segment", sector(outer - width / 2, width, Math.toDegrees(of.sweep())));
      SheetStock sheet = rectangle(1000 * of.aspect(), 1000);

      Bound area = Bound.quick(piece, sheet, none);
      int edges = area.byEdges(piece, sheet, none, false).count();

      assertThat(edges)
          .as("%s on %s", piece.shape(), of)
          .isBetween(charts.get(k).count(), area.count());
      tight += edges < area.count() ? 1 : 0;
    }
    assertThat(tight).as("sharper than by area").isPositive();
  }
}
