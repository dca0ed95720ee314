package curvestock.bound;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.SearchSettings;
import curvestock.piece.AnnularSector;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Proofs by cases: sharp where the trade's sheets are, and never against a layout that exists. */
class CaseBoundTest {

  private static final double INCH = 25.4;
  private static final Cutting USUAL = Cutting.leaving(mm(INCH / 8), Length.ZERO, mm(INCH / 4));

  private static Length mm(double value) {
    return Length.ofMillimetres(value);
  }

  private static AnnularSector sector(double radius, double width, double degrees) {
    return new AnnularSector(mm(radius), mm(width), Angle.ofDegrees(degrees));
  }

  private static Piece piece(AnnularSector sector) {
    return Piece.of("S", "segment", sector);
  }

  private static SheetStock rectangle(double length, double width) {
    return new SheetStock(
        "sheet",
        Outline.rectangle(length, width),
        List.of(),
        mm(12),
        mm(12),
        new Money(1),
        OptionalInt.empty(),
        Angle.ofDegrees(0));
  }

  /**
   * Half turns on 48 × 96 in, 1/8 in apart, 1/4 in from the edge. Two of R 27.5–32.5 in is what an
   * independent search found (table of the project's tasks). Three of R 25.5–30.5 in do lie on the
   * sheet (found by the engine), so nothing may be claimed there.
   */
  @ParameterizedTest
  @CsvSource({"30, 5, 3, true", "30, 5, 2, false", "28, 5, 3, false"})
  void isImpossible_halfTurnsOnAFullSheet_isProvenWhereNoLayoutExists(
      double radius, double width, int count, boolean proven) {
    AnnularSector half = sector(radius * INCH, width * INCH, 180);

    assertThat(
            CaseBound.isImpossible(
                piece(half),
                rectangle(96 * INCH, 48 * INCH),
                USUAL,
                count,
                2_000_000,
                Control.NONE))
        .isEqualTo(proven);
  }

  @Test
  void byCases_twoHalfTurns_areProvenBest() {
    Piece half = piece(sector(30 * INCH, 5 * INCH, 180));
    SheetStock sheet = rectangle(96 * INCH, 48 * INCH);
    Bound area = Bound.quick(half, sheet, USUAL);

    Bound bound = area.byCases(half, sheet, USUAL, 2, 2_000_000, Control.NONE);

    assertThat(area.count()).isPositive();
    assertThat(bound.count()).isEqualTo(2);
    assertThat(bound.proof()).startsWith("by cases");
  }

  @Test
  void byCases_budgetTooSmall_claimsNothing() {
    Piece half = piece(sector(30 * INCH, 5 * INCH, 180));
    SheetStock sheet = rectangle(96 * INCH, 48 * INCH);
    Bound area = Bound.quick(half, sheet, USUAL);

    assertThat(area.byCases(half, sheet, USUAL, 2, 1000, Control.NONE)).isEqualTo(area);
  }

  /** Whatever the placements in two cells that clash, the true gap is less than the one asked. */
  @Test
  void clashesWith_anyPlacementsInTheCells_areTooNear() {
    int clashes = 0;
    int touching = 0;
    for (long seed = 1; seed <= 4000; seed++) {
      Random random = new Random(seed);
      AnnularSector sector =
          sector(300, 20 + 180 * random.nextDouble(), 15 + 320 * random.nextDouble());
      double gap = 60 * random.nextDouble();
      ThickArc a = cell(sector, random, 0);
      ThickArc b = cell(sector, random, 500);
      if (a == null || b == null || !a.clashesWith(b, gap)) {
        continue;
      }
      clashes++;
      for (int k = 0; k < 12; k++) {
        double distance = Clearance.between(placed(sector, a, random), placed(sector, b, random));
        touching += distance > 0 ? 1 : 0;
        assertThat(distance).as("seed %d, %s", seed, sector).isLessThan(gap);
      }
    }
    assertThat(clashes).isGreaterThan(300);
    assertThat(touching).as("pairs that do not overlap but are too near").isGreaterThan(5);
  }

  /** About as wide as long, so that the spine is a point: opposed they lie 2·25·cos 30° apart. */
  @ParameterizedTest
  @CsvSource({"0", "1", "30", "90", "200"})
  void clashesWith_opposedThroughTheCentre_isNotClaimed(double degrees) {
    AnnularSector wide = sector(100, 150, 60);
    double turn = Math.toRadians(degrees);
    ThickArc a = ThickArc.of(wide, 0, 0, 0, 0, new double[] {turn, 0});
    ThickArc b = ThickArc.of(wide, 0, 0, 0, 0, new double[] {turn + Math.PI, 0});
    double gap =
        Clearance.between(
            wide.outline().at(new Pose(0, 0, turn)),
            wide.outline().at(new Pose(0, 0, turn + Math.PI)));

    assertThat(gap).isCloseTo(50 * Math.cos(Math.toRadians(30)), Offset.offset(1e-9));
    assertThat(a.clashesWith(b, 43)).isFalse();
    assertThat(b.clashesWith(a, 43)).isFalse();
    assertThat(a.clashesWith(a, 0)).isTrue();
  }

  @Test
  void byCases_stopped_claimsNothingAndTestsLittleMore() {
    Piece half = piece(sector(30 * INCH, 5 * INCH, 180));
    SheetStock sheet = rectangle(96 * INCH, 48 * INCH);
    Bound area = Bound.quick(half, sheet, USUAL);
    AtomicInteger asked = new AtomicInteger();

    Bound bound =
        area.byCases(half, sheet, USUAL, 2, 2_000_000, () -> asked.incrementAndGet() > 200);

    assertThat(bound).isEqualTo(area);
    assertThat(asked.get()).isBetween(200, 20_000);
  }

  private static ThickArc cell(AnnularSector sector, Random random, double spread) {
    return ThickArc.of(
        sector,
        spread * (random.nextDouble() - 0.5),
        spread * (random.nextDouble() - 0.5),
        60 * Math.pow(random.nextDouble(), 4),
        60 * Math.pow(random.nextDouble(), 4),
        new double[] {2 * Math.PI * random.nextDouble(), 0.3 * Math.pow(random.nextDouble(), 4)});
  }

  /** A placement in the cell, often in one of its corners. */
  private static Outline placed(AnnularSector sector, ThickArc cell, Random random) {
    return sector
        .outline()
        .at(
            new Pose(
                cell.x + cell.halfX * within(random),
                cell.y + cell.halfY * within(random),
                cell.direction + cell.halfRange * within(random)));
  }

  private static double within(Random random) {
    return random.nextBoolean() ? 2 * random.nextDouble() - 1 : random.nextInt(2) * 2 - 1;
  }

  /** No count that the engine has a layout for is ever proven impossible. */
  @Test
  void isImpossible_countThatWasFound_isNeverClaimed() {
    int proven = 0;
    for (long seed = 1; seed <= 16; seed++) {
      Random random = new Random(seed);
      AnnularSector sector =
          sector(
              250 + 200 * random.nextDouble(),
              30 + 100 * random.nextDouble(),
              100 + 150 * random.nextDouble());
      SheetStock sheet =
          rectangle(600 + 900 * random.nextDouble(), 500 + 500 * random.nextDouble());
      Packer packer = new Packer(sheet, USUAL, new SearchSettings(seed, Effort.QUICK));
      int found = packer.most(piece(sector), 5, Control.NONE).layout().placements().size();
      if (found == 0) {
        continue;
      }
      assertThat(CaseBound.isImpossible(piece(sector), sheet, USUAL, found, 30_000, Control.NONE))
          .as("seed %d, %d of %s", seed, found, sector)
          .isFalse();
      proven +=
          CaseBound.isImpossible(piece(sector), sheet, USUAL, found + 1, 30_000, Control.NONE)
              ? 1
              : 0;
    }
    assertThat(proven).as("counts proven best").isPositive();
  }
}
