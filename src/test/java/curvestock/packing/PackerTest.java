package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.bound.Bound;
import curvestock.check.Finding;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.layout.TrueGaps;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Grain;
import curvestock.piece.Piece;
import curvestock.piece.Strip;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Counts that must be reached, tight fits, and that results repeat. */
class PackerTest {

  private static final SheetStock FOUR_BY_EIGHT = Sheets.inches(96, 48);

  /**
   * Counts on 48×96 in with 1/8 in spacing and 1/4 in margin that an independent search of this
   * project found; no published source. Stopped at the count asked for.
   */
  @ParameterizedTest
  @CsvSource({
    "27.5, 32.5, 90, 13",
    "27.5, 32.5, 120, 7",
    "27.5, 32.5, 60, 20",
    "27.5, 32.5, 180, 2",
  })
  void most_ofTheCheckValues_isReachedAndPassesTheCheck(
      double inner, double outer, double degrees, int count) {
    Piece piece = Sheets.sector(inner, outer, degrees);

    assertThat(Sheets.most(piece, FOUR_BY_EIGHT, Sheets.USUAL, Effort.NORMAL, count))
        .isEqualTo(count);
  }

  /** Common practice, no source: two rings of nearly 48 in diameter come from a 4×8 ft sheet. */
  @Test
  void most_ofFullRingsOfNearlyTheSheetsWidth_isTwo() {
    Piece ring = Sheets.sector(19, 23.7, 360);

    assertThat(Sheets.most(ring, FOUR_BY_EIGHT, Sheets.USUAL, Effort.QUICK, 100)).isEqualTo(2);
  }

  /** Common practice, no source: by hand, nine half turns of a small helix from a 4×8 ft sheet. */
  @ParameterizedTest
  @CsvSource({"21.5, 2.5, QUICK", "22.5, 2.5, NORMAL", "21.5, 3, NORMAL"})
  void most_ofHalfTurnsOfASmallHelix_isAsManyAsByHand(double outer, double width, Effort effort) {
    Piece half = Sheets.sector(outer - width, outer, 180);

    assertThat(Sheets.most(half, FOUR_BY_EIGHT, Sheets.USUAL, effort, 9)).isEqualTo(9);
  }

  /**
   * Common practice, no source: a builder got 10 quarter turns (outer radius 20.5 in, 4.5 in wide)
   * from a 48×48 in sheet, kerf not stated; here with 1/8 in between and no margin.
   */
  @Test
  void most_ofABuildersQuarterTurns_isMoreThanByHand() {
    Piece quarter = Sheets.sector(16, 20.5, 90);

    int count =
        Sheets.most(quarter, Sheets.inches(48, 48), Sheets.cutting(0.125, 0), Effort.QUICK, 11);

    assertThat(count).isEqualTo(11);
  }

  @Test
  void most_ofARingWiderThanTheSheet_isNoneWithAProof() {
    Piece ring = Sheets.sector(27.5, 32.5, 360);

    assertThat(Sheets.most(ring, FOUR_BY_EIGHT, Sheets.USUAL, Effort.QUICK, 100)).isZero();
    assertThat(Bound.quick(ring, FOUR_BY_EIGHT, Sheets.USUAL).count()).isZero();
  }

  /**
   * Friedman, Packing Unit Squares in Squares, dynamic survey DS7 of the Electronic Journal of
   * Combinatorics: five unit squares need a side of 2.7071, ten need 3.7071 (both proved least,
   * both with squares at 45°). Here with 0.3 % of slack and no gap but 1e-4 of a unit.
   */
  @ParameterizedTest
  @CsvSource({"5, 2.7071", "10, 3.7071"})
  void most_ofUnitSquares_reachesThePublishedSideWithLittleSlack(int count, double side) {
    double unit = 10;
    SheetStock square = Sheets.inches(side * unit * 1.003, side * unit * 1.003);

    int found =
        Sheets.most(
            Sheets.strip("Q", unit, unit),
            square,
            Sheets.cutting(unit * 1e-4, 0),
            Effort.NORMAL,
            count);

    assertThat(found).isEqualTo(count);
  }

  /** Below the proved least side nothing may be found, whatever the search believes. */
  @Test
  void most_ofUnitSquaresBelowTheProvedSide_isNeverReached() {
    SheetStock square = Sheets.inches(27.06, 27.06);

    int found =
        Sheets.most(Sheets.strip("Q", 10, 10), square, Sheets.cutting(0, 0), Effort.QUICK, 5);

    assertThat(found).isEqualTo(4);
  }

  // ---- tight fits ----

  @ParameterizedTest
  @CsvSource({"0, 0", "0.125, 0", "0, 0.25", "0.125, 0.25"})
  void most_ofAStripExactlyAsLargeAsTheUsableSheet_isOne(double spacing, double margin) {
    Piece strip = Sheets.strip("T", 30 - 2 * margin, 7 - 2 * margin);

    Layout layout =
        Sheets.pack(strip, Sheets.inches(30, 7), Sheets.cutting(spacing, margin), Effort.QUICK, 10);

    assertThat(layout.placements()).hasSize(1);
    Sheets.requireRight(layout);
  }

  @Test
  void most_ofStripsThatFillTheSheetExactlyWithoutSpacing_isAllOfThem() {
    Layout layout =
        Sheets.pack(
            Sheets.strip("T", 10, 3),
            Sheets.inches(30, 12),
            Sheets.cutting(0, 0),
            Effort.QUICK,
            100);

    assertThat(layout.placements()).hasSize(12);
    Sheets.requireRight(layout);
  }

  @Test
  void most_ofStripsThatFillTheSheetExactlyWithSpacing_isAllOfThem() {
    Layout layout =
        Sheets.pack(
            Sheets.strip("T", 10, 3),
            Sheets.inches(30.25, 12.375),
            Sheets.cutting(0.125, 0),
            Effort.QUICK,
            100);

    assertThat(layout.placements()).hasSize(12);
    Sheets.requireRight(layout);
  }

  @Test
  void most_ofARingExactlyAsWideAsTheSheet_isOne() {
    Layout layout =
        Sheets.pack(
            Sheets.sector(8, 10, 360),
            Sheets.inches(20, 20),
            Sheets.cutting(0.125, 0),
            Effort.QUICK,
            100);

    assertThat(layout.placements()).hasSize(1);
    Sheets.requireRight(layout);
  }

  @Test
  void most_ofDiscsWithoutHole_areLaidWithoutOverlap() {
    Layout layout =
        Sheets.pack(
            Sheets.sector(0, 4, 360),
            Sheets.inches(17, 17),
            Sheets.cutting(0.125, 0.25),
            Effort.QUICK,
            100);

    assertThat(layout.placements()).hasSize(4);
    Sheets.requireRight(layout);
  }

  /** Zero spacing: touching is allowed, sharing wood is not. */
  @ParameterizedTest
  @ValueSource(doubles = {20, 90, 180, 300})
  void most_withoutSpacing_neverSharesWood(double degrees) {
    Layout layout =
        Sheets.pack(
            Sheets.sector(6, 9, degrees),
            Sheets.inches(36, 24),
            Sheets.cutting(0, 0),
            Effort.QUICK,
            30);

    assertThat(layout.placements()).isNotEmpty();
    Sheets.requireRight(layout);
  }

  @ParameterizedTest
  @ValueSource(doubles = {12, 12.5, 24, 1000})
  void most_withAMarginThatLeavesNoSheet_isNone(double margin) {
    Layout layout =
        Sheets.pack(
            Sheets.sector(6, 9, 60),
            Sheets.inches(36, 24),
            Sheets.cutting(0.125, margin),
            Effort.QUICK,
            30);

    assertThat(layout.placements()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"27.5, 32.5, 0.1", "1, 30, 0.1", "1, 1.5, 90"})
  void most_ofSliversAndTinyPieces_passesTheCheck(double inner, double outer, double degrees) {
    Layout layout =
        Sheets.pack(
            Sheets.sector(inner, outer, degrees),
            Sheets.inches(36, 24),
            Sheets.USUAL,
            Effort.QUICK,
            10);

    assertThat(layout.placements()).hasSize(10);
    Sheets.requireRight(layout);
  }

  @Test
  void most_onASheetCoveredByADefect_isNone() {
    Outline all = Outline.rectangle(36 * 25.4, 24 * 25.4);
    SheetStock sheet = with(Sheets.inches(36, 24), List.of(all));

    assertThat(Sheets.most(Sheets.sector(6, 9, 60), sheet, Sheets.USUAL, Effort.QUICK, 5)).isZero();
  }

  @Test
  void most_roundADefect_keepsTheSpacingFromIt() {
    Outline knot = Outline.of(Loop.circle(new Point(300, 300), 80));
    SheetStock sheet = with(Sheets.inches(36, 24), List.of(knot));

    int count = Sheets.most(Sheets.sector(6, 9, 120), sheet, Sheets.USUAL, Effort.QUICK, 50);

    assertThat(count).isGreaterThanOrEqualTo(6);
  }

  @Test
  void most_withGrain_turnsNoPieceFurtherThanAllowed() {
    AnnularSector shape =
        new AnnularSector(Length.ofInches(10), Length.ofInches(2), Angle.ofDegrees(60));
    Piece piece =
        new Piece("G", "grained", shape, new Grain(Angle.ofDegrees(90), Angle.ofDegrees(10)));

    Layout layout = Sheets.pack(piece, Sheets.inches(48, 24), Sheets.USUAL, Effort.QUICK, 50);

    assertThat(layout.placements()).hasSizeGreaterThan(8);
    Sheets.requireRight(layout);
    assertThat(layout.placements())
        .allSatisfy(p -> assertThat(piece.grain().allows(p.pose().rotation(), 0)).isTrue());
  }

  @Test
  void most_ofStripsBoundToADiagonalGrain_isStillFound() {
    Piece strip =
        new Piece(
            "D",
            "diagonal",
            new Strip(Length.ofInches(10), Length.ofInches(2)),
            new Grain(Angle.ofDegrees(0), Angle.ofDegrees(0)));
    SheetStock plain = Sheets.inches(36, 24);
    SheetStock diagonal =
        new SheetStock(
            "diagonal",
            plain.outline(),
            List.of(),
            plain.thickness(),
            plain.nominalThickness(),
            Money.ZERO,
            OptionalInt.empty(),
            Angle.ofDegrees(45));

    int count = Sheets.most(strip, diagonal, Sheets.USUAL, Effort.QUICK, 5);

    assertThat(count).isEqualTo(5);
  }

  private static SheetStock with(SheetStock sheet, List<Outline> defects) {
    return new SheetStock(
        sheet.name(),
        sheet.outline(),
        defects,
        sheet.thickness(),
        sheet.nominalThickness(),
        sheet.price(),
        sheet.available(),
        sheet.grain());
  }

  // ---- repeatable, stoppable ----

  private static Layout searched(long seed) {
    SearchSettings settings = new SearchSettings(seed, Effort.QUICK);
    return new Packer(Sheets.inches(40, 30), Sheets.USUAL, settings)
        .fill(
            List.of(
                new Demand(Sheets.sector(10, 13, 120), 9),
                new Demand(Sheets.strip("T", 9, 2.5), 9),
                new Demand(Piece.of("W", "wedge", Sheets.sector(0, 5, 70).shape()), 9)),
            Control.NONE)
        .layout();
  }

  @Test
  void fill_twiceInOneRun_isTheSame() {
    assertThat(searched(5)).isEqualTo(searched(5));
  }

  @Test
  void fill_withOneThreadOrFour_isTheSame() throws Exception {
    Layout common = searched(6);
    for (int threads : new int[] {1, 2, 4}) {
      ForkJoinPool pool = new ForkJoinPool(threads);
      try {
        assertThat(pool.submit(() -> searched(6)).get())
            .as("%d threads", threads)
            .isEqualTo(common);
      } finally {
        pool.shutdown();
      }
    }
  }

  @Test
  void most_stoppedAtAnyTime_isValidAndNeverMoreThanUnstopped() {
    Piece piece = Sheets.sector(10, 13, 100);
    for (int after : new int[] {0, 1, 2, 3, 5}) {
      AtomicInteger asked = new AtomicInteger();
      Layout layout =
          new Packer(Sheets.inches(40, 30), Sheets.USUAL, new SearchSettings(1, Effort.NORMAL))
              .most(piece, 100, () -> asked.getAndIncrement() >= after)
              .layout();

      assertThat(layout.placements()).as("stopped after %d questions", after).isNotEmpty();
      Sheets.requireRight(layout);
    }
  }

  @Test
  void most_askedForFewerThanFit_givesAsManyAndStillPasses() {
    Packer packer = new Packer(FOUR_BY_EIGHT, Sheets.USUAL, new SearchSettings(1, Effort.QUICK));
    Piece piece = Sheets.sector(10, 13, 90);
    int all = packer.most(piece, 40, Control.NONE).layout().placements().size();
    for (int wanted : new int[] {1, 7, all}) {
      Layout layout = packer.most(piece, wanted, Control.NONE).layout();
      assertThat(layout.placements()).hasSize(wanted);
      Sheets.requireRight(layout);
    }
  }

  // ---- the check is a second opinion ----

  /** As if the engine's distance were wrong by the spacing, in the search and in its last word. */
  @ParameterizedTest
  @CsvSource({"90", "180", "60"})
  void check_ofALayoutMadeWithAWrongDistance_findsTheGaps(double degrees) {
    Cutting tooNarrow = Sheets.cutting(0.12, 0.25);
    Layout made =
        Sheets.pack(Sheets.sector(10, 13, degrees), FOUR_BY_EIGHT, tooNarrow, Effort.QUICK, 100);
    Layout claimed = new Layout(made.sheet(), Sheets.USUAL, made.placements());

    assertThat(TrueGaps.hold(made)).isTrue();
    assertThat(Sheets.check(made).findings()).isEmpty();
    assertThat(Sheets.check(claimed).findings())
        .extracting(Finding::kind)
        .contains(Finding.Kind.GAP);
  }

  /** As if arcs were taken for their chords: pieces a little too wide for where they were put. */
  @Test
  void check_ofALayoutMadeForANarrowerPiece_findsOverlapOrGap() {
    Layout made =
        Sheets.pack(Sheets.sector(10, 13, 90), FOUR_BY_EIGHT, Sheets.USUAL, Effort.QUICK, 100);
    Piece wider = Sheets.sector(10, 13.02, 90);
    Layout claimed =
        new Layout(
            made.sheet(),
            made.cutting(),
            made.placements().stream().map(p -> new Placement(wider, p.pose())).toList());

    assertThat(Sheets.check(claimed).findings()).isNotEmpty();
    assertThat(TrueGaps.hold(claimed)).isFalse();
  }

  @Test
  void check_ofALayoutWithOnePieceNudged_failsByAboutTheNudge() {
    Layout made =
        Sheets.pack(
            Sheets.strip("T", 10, 3),
            Sheets.inches(30.75, 12.875),
            Sheets.USUAL,
            Effort.QUICK,
            100);
    assertThat(made.placements()).hasSize(12);
    Placement first = made.placements().get(0);
    List<Placement> nudged = new java.util.ArrayList<>(made.placements());
    nudged.set(0, new Placement(first.piece(), first.pose().movedBy(0.05, 0)));

    Layout wrong = new Layout(made.sheet(), made.cutting(), nudged);

    assertThat(Sheets.check(wrong).passed()).isFalse();
    assertThat(TrueGaps.hold(wrong)).isFalse();
    assertThat(Sheets.check(made).leastGap().orElseThrow().millimetres())
        .isCloseTo(3.175, Offset.offset(1e-3));
  }

  /**
   * Six half turns and 32 strips: a grid of places solved by a general-purpose solver (OR-Tools
   * CP-SAT, benchmarks/report-cases-quick.md) fills 2445 square inches, quick effort filled 2338.
   */
  @Test
  void fill_ofHalvesAndStrips_atQuickEffort_isNotBelowAGrid() {
    List<Demand> wanted =
        List.of(
            new Demand(Sheets.sector(18, 22, 180), 6),
            new Demand(strip("long", 36, 4), 8),
            new Demand(strip("short", 6, 3), 24));

    Layout layout =
        new Packer(FOUR_BY_EIGHT, Sheets.USUAL, new SearchSettings(1, Effort.QUICK))
            .fill(wanted, Control.NONE)
            .layout();

    assertThat(layout.pieceArea() / (25.4 * 25.4)).isGreaterThan(2445);
    assertThat(TrueGaps.hold(layout)).isTrue();
  }

  private static Piece strip(String id, double length, double width) {
    return Piece.of(id, id, new Strip(Length.ofInches(length), Length.ofInches(width)));
  }
}
