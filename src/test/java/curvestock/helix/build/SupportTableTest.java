package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Riser;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.StockBoard;
import curvestock.helix.spec.SupportPlan;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SupportTableTest {

  /** R 30 in (derived, recomputed independently): 8 a turn 2.284 in, 12 1.022, 16 0.576. */
  @ParameterizedTest
  @CsvSource({"8, 2.284, true", "12, 1.022, false", "16, 0.576, false"})
  void bulge_30Inches_agreesWithTheDerivedFigures(int perTurn, double bulge, boolean both) {
    SupportBulge between = new SupportBulge(inches(30), perTurn, inches(5), 0.25);

    assertThat(between.bulge().inches()).isCloseTo(bulge, within(0.0005));
    assertThat(between.needsBothEdges()).isEqualTo(both);
  }

  /** Invented scenario, by hand: 8 supports a turn at 4 in a turn step 0.5 in. */
  @Test
  void steps_onTheSteadyGrade_areHalfAnInch() {
    List<SupportRow> rows = new SpecBuilder().plan().supports().ofTurn(3);

    assertThat(rows).hasSize(8);
    for (int i = 1; i < rows.size(); i++) {
      Length step = rows.get(i).underside().minus(rows.get(i - 1).underside());
      assertThat(step.inches()).isCloseTo(0.5, within(1e-9));
    }
  }

  /**
   * After whole turns the ring ends over the station it began at: that height is one more to check,
   * four turns of 4 in above the first of the steady ones.
   */
  @Test
  void endOfWholeTurns_isATurnOfItsOwn() {
    HelixPlan plan = new SpecBuilder().ascent(Ascent.ofTurnsAndRise(5, inches(4))).plan();

    List<SupportRow> first =
        plan.supports().rows().stream()
            .filter(row -> row.station().name().equals("S1"))
            .filter(row -> row.part() == SupportRow.Part.RING)
            .toList();
    assertThat(first).extracting(SupportRow::turn).containsExactly(1, 2, 3, 4, 5, 6);
    Length step = first.get(4).underside().minus(first.get(3).underside());
    assertThat(step.inches()).isCloseTo(4, within(1e-9));
    assertThat(plan.supports().ofTurn(6)).containsExactly(first.get(5));
  }

  /** All blocks between steady turns are rise less plywood: 4 − 0.483 in. */
  @Test
  void gap_betweenSteadyTurns_isRiseLessPlywood() {
    HelixPlan plan = new SpecBuilder().plan();

    assertThat(plan.supports().ofTurn(3))
        .allSatisfy(row -> assertThat(row.gap().inches()).isCloseTo(3.517, within(1e-9)));
  }

  /** Gaps and plywood stacked up from the base reach each turn's underside. */
  @Test
  void gaps_stackedUpAtAStation_reachTheUndersides() {
    HelixPlan plan = new SpecBuilder().plan();
    double plywood = plan.spec().plywood().millimetres();

    for (Station station : plan.stations().all()) {
      double height = -plywood;
      for (SupportRow row : plan.supports().rows()) {
        if (row.station().equals(station)) {
          height += plywood + row.gap().millimetres();
          assertThat(row.underside().millimetres()).isCloseTo(height, within(1e-6));
        }
      }
    }
  }

  /**
   * Invented scenario, by hand: 16 rod pairs, 8 turns: 576 nuts, two at the base of each rod
   * included.
   */
  @Test
  void nuts_16PairsAnd8Turns_are576() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(
                SpecBuilder.twoTracks(
                    inches(30), inches(2.5), inches(2.5), Length.ZERO, Direction.COUNTER_CLOCKWISE))
            .segment(45)
            .construction(new Construction.TwoLayers())
            .supports(SpecBuilder.rods(16, Optional.empty()))
            .ends(EndPlan.level(inches(24), Length.ZERO))
            .ascent(Ascent.ofTurnsAndRise(8, inches(2)))
            .plan();
    RodPlan rods =
        new RodPlan(
            plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());

    assertThat(rods.count()).isEqualTo(32);
    assertThat(rods.nuts()).isEqualTo(576);
    assertThat(plan.shopping().items())
        .anySatisfy(
            item -> {
              assertThat(item.name()).isEqualTo("nuts M8");
              assertThat(item.quantity()).isEqualTo(576);
            });
  }

  /** A rod longer than the stock is joined: every rod of about 1.3 m takes a second length. */
  @Test
  void rods_longerThanTheStock_areJoined() {
    HelixPlan plan =
        new SpecBuilder()
            .supports(SpecBuilder.rods(8, Optional.empty()))
            .ends(EndPlan.level(inches(24), Length.ZERO))
            .ascent(Ascent.ofTurnsAndRise(12, inches(4)))
            .plan();
    RodPlan rods =
        new RodPlan(
            plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());

    assertThat(rods.couplings()).isEqualTo(rods.count()).isEqualTo(16);
    assertThat(rods.cuts()).allMatch(cut -> cut.length().compareTo(mm(1000)) <= 0);
    assertThat(plan.shopping().items()).anyMatch(item -> item.name().equals("coupling nuts M8"));
  }

  /**
   * A coupling nut M8 is 24 mm high (DIN 6334, from memory), a nut 6.8 mm and its washer 1.6 mm
   * (ISO 4032, ISO 7089, as quoted elsewhere). Every rise and foot: rods of any length.
   */
  @ParameterizedTest
  @CsvSource({"24, 12, 4", "3, 9, 4", "2, 10, 4.1", "14, 8, 5.5", "30, 12, 3.7", "1, 30, 4"})
  void rods_areJoinedBetweenTurns_byPartsThatReachTheMiddleOfTheNut(
      double foot, double turns, double rise) {
    HelixPlan plan =
        new SpecBuilder()
            .supports(SpecBuilder.rods(8, Optional.empty()))
            .ends(EndPlan.level(inches(foot), Length.ZERO))
            .ascent(Ascent.ofTurnsAndRise(turns, inches(rise)))
            .plan();
    Riser.ThreadedRods riser = (Riser.ThreadedRods) plan.spec().supports().riser();
    RodPlan rods = new RodPlan(plan.spec(), riser, plan.supports());

    assertThat(rods.couplings()).isPositive();
    double ply = plan.spec().plywood().millimetres();
    double below = rods.belowBaseTop().millimetres();
    for (RodPlan.Rods rod : rods.rods()) {
      double last = 0;
      for (Length joint : rod.joints()) {
        double middle = joint.millimetres();
        assertThat(middle - last).isBetween(12 + 1.25 - 1e-6, 1000 + 1e-6);
        last = middle;
        double above = middle - below;
        assertThat(above - 12).isGreaterThan(6.8 + 1.6 - 1e-6);
        for (SupportRow row : plan.supports().rows()) {
          if (row.station().equals(rod.station())) {
            double under = row.underside().millimetres();
            boolean clear =
                above + 12 <= under - 8.4 + 1e-6 || above - 12 >= under + ply + 8.4 - 1e-6;
            assertThat(clear).as(rod.station().name() + " at " + above).isTrue();
          }
        }
      }
      assertThat(rod.length().millimetres() - last).isGreaterThanOrEqualTo(13.25 - 1e-6);
      double parts =
          rods.cuts().stream()
              .filter(cut -> cut.part().startsWith(rod.station().name() + " inner"))
              .mapToDouble(cut -> cut.length().millimetres())
              .sum();
      assertThat(parts).isCloseTo(rod.length().millimetres(), within(1e-6));
    }
  }

  /** M8 rises 1.25 mm in a turn of the nut (ISO 261, as quoted elsewhere). */
  @Test
  void nutTurns_m8Over100Millimetres_are80() {
    HelixPlan plan =
        new SpecBuilder()
            .supports(SpecBuilder.rods(8, Optional.empty()))
            .ascent(Ascent.ofTurnsAndRise(3, inches(4)))
            .plan();
    RodPlan rods =
        new RodPlan(
            plan.spec(), (Riser.ThreadedRods) plan.spec().supports().riser(), plan.supports());

    assertThat(rods.nutTurns(mm(100))).isCloseTo(80, within(1e-9));
  }

  /** Each turn's first lap differs; above it all blocks are alike where the grade is steady. */
  @Test
  void blocks_ofAHelix_growOnTheFirstTurnAndAreAlikeAbove() {
    EndPlan steady = EndPlan.level(inches(24), inches(24)).withClimbLead(inches(24));
    HelixPlan plan = new SpecBuilder().ends(steady).plan();
    BlockPlan blocks = plan.supports().blocks().orElseThrow();

    assertThat(blocks.blocks().stream().filter(block -> !block.onBase())).hasSize(1);
    assertThat(blocks.blocks().stream().filter(BlockPlan.Block::onBase))
        .filteredOn(block -> block.rows().get(0).part() == SupportRow.Part.RING)
        .hasSize(8);
    assertThat(blocks.count()).isEqualTo(2 * plan.supports().rows().size());
    assertThat(blocks.cuts()).hasSize(blocks.count());
  }

  /** Plane geometry of each block: sides at half its length either way, ends on two slopes. */
  @Test
  void blocks_whereTheGradeChanges_areSawnToTheirLongerSide() {
    HelixPlan plan = new SpecBuilder().plan();
    SupportTable table = plan.supports();
    BlockPlan blocks = table.blocks().orElseThrow();
    double half = ((Riser.WoodBlocks) plan.spec().supports().riser()).along().millimetres() / 2;

    for (BlockPlan.Block block : blocks.blocks()) {
      SupportRow row = block.rows().get(0);
      double below =
          table.rows().stream()
              .filter(r -> r.station().equals(row.station()) && r.turn() == row.turn() - 1)
              .mapToDouble(SupportRow::slope)
              .findFirst()
              .orElse(0);
      double uphill = blocks.heightUnder(row).millimetres() + half * (row.slope() - below);
      double downhill = blocks.heightUnder(row).millimetres() - half * (row.slope() - below);
      assertThat(block.longSide().millimetres())
          .isCloseTo(Math.max(uphill, downhill), within(0.05));
      assertThat(block.stockLength().millimetres())
          .isCloseTo(uphill + 2 * half * below, within(0.05));
    }
    assertThat(blocks.blocks()).anyMatch(BlockPlan.Block::isUneven);
  }

  @Test
  void blocks_whereTheRoadbedLiesOnTheBase_areNotCut() {
    HelixPlan plan =
        new SpecBuilder()
            .supports(
                new SupportPlan(
                    new Riser.WoodBlocks(
                        inches(0.483),
                        inches(2),
                        Length.ZERO,
                        inches(0.125),
                        Optional.empty(),
                        true),
                    8,
                    Optional.empty(),
                    Length.ZERO,
                    0.25))
            .plan();
    BlockPlan blocks = plan.supports().blocks().orElseThrow();

    // The ring's foot, and the lead before it.
    assertThat(blocks.withoutRoom()).hasSize(2);
    assertThat(plan.demands()).anyMatch(demand -> demand.piece().name().startsWith("riser block"));
    assertThat(
            plan.demands().stream()
                .filter(demand -> demand.piece().name().startsWith("riser block"))
                .mapToInt(demand -> demand.count())
                .sum())
        .isEqualTo(blocks.count());
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
  void boards_anyLengths_holdEachOnceAndNeverTooMuch(long seed) {
    Random random = new Random(seed);
    List<Length> cuts = random.ints(60, 50, 900).mapToObj(length -> mm(length)).sorted().toList();
    BoardCutting cutting =
        new BoardCutting(new StockBoard("board", mm(2400), Optional.empty()), mm(3), named(cuts));

    assertThat(
            cutting.boards().stream()
                .flatMap(board -> board.cuts().stream())
                .map(BoardCutting.Cut::length)
                .sorted()
                .toList())
        .isEqualTo(cuts);
    for (BoardCutting.Board board : cutting.boards()) {
      double used = board.cuts().stream().mapToDouble(cut -> cut.length().millimetres() + 3).sum();
      assertThat(used).isLessThanOrEqualTo(2400 + 1e-6);
      assertThat(board.left().millimetres()).isCloseTo(Math.max(0, 2400 - used), within(1e-6));
    }
    assertThat(cutting.boards().size()).isGreaterThanOrEqualTo(cutting.leastPossible());
  }

  /**
   * By hand: 50 + 29 + 21, 39 + 30 + 26 and 48 + 47 take three boards of 100, where the longest
   * first, each where it leaves the least, takes four. Of five over a third no board holds three.
   */
  @ParameterizedTest
  @CsvSource({
    "'50 48 47 39 30 29 26 21', 100, 3",
    "'34 34 34 34 34', 100, 3",
    "'70 60 50 40 40 40', 100, 4"
  })
  void boards_fewLengths_areTheFewestAndProvenSo(String lengths, double board, int boards) {
    BoardCutting cutting =
        new BoardCutting(
            new StockBoard("board", mm(board), Optional.empty()),
            Length.ZERO,
            named(
                Stream.of(lengths.split(" "))
                    .map(Double::parseDouble)
                    .map(SpecBuilder::mm)
                    .toList()));

    assertThat(cutting.boards()).hasSize(boards);
    assertThat(cutting.leastPossible()).isEqualTo(boards);
  }

  private static List<BoardCutting.Cut> named(List<Length> lengths) {
    return lengths.stream().map(length -> new BoardCutting.Cut("part", length)).toList();
  }

  /** Hand sum: 500 + 3 + 500 + 3 = 1006; with 1005 the second cut would have nothing to cut off. */
  @ParameterizedTest
  @CsvSource({"1006, 2", "1005, 4"})
  void boards_lastLengthToo_takesAKerf(double board, int boards) {
    BoardCutting cutting =
        new BoardCutting(
            new StockBoard("board", mm(board), Optional.of(new Money(450))),
            mm(3),
            named(Collections.nCopies(4, mm(500))));

    assertThat(cutting.boards()).hasSize(boards).noneMatch(BoardCutting.Board::whole);
    assertThat(cutting.leastPossible()).isEqualTo(boards);
  }

  @ParameterizedTest
  @CsvSource({"1000", "999", "991"})
  void boards_lengthThatLeavesNoRoomToSquare_takesAWholeBoard(double length) {
    BoardCutting cutting =
        new BoardCutting(
            new StockBoard("board", mm(1000), Optional.empty()),
            mm(3),
            mm(12),
            UnaryOperator.identity(),
            named(List.of(mm(length), mm(50))));

    assertThat(cutting.boards()).hasSize(2);
    assertThat(cutting.boards().get(0).whole()).isTrue();
    assertThat(cutting.boards().get(1).whole()).isFalse();
    assertThat(cutting.leastPossible()).isEqualTo(2);
  }

  @Test
  void boards_lengthTooLong_saysWhichStock() {
    StockBoard stock = new StockBoard("short board", mm(300), Optional.empty());

    assertThatThrownBy(() -> new BoardCutting(stock, mm(3), named(List.of(mm(301)))))
        .hasMessageContaining("every length cut from short board must be at most its length");
  }

  /** Birch data sheet (second hand): a 12 mm sheet 1220 × 2440 mm weighs 24.8 kg at 695 kg/m³. */
  @Test
  void weight_birchSheet_is24Point8Kilograms() {
    assertThat(new Weight(695).ofWood(1220.0 * 2440, mm(12))).isCloseTo(24.8, within(0.05));
  }

  /** Invented scenario, by hand: about 62 kg of two-layer birch. */
  @Test
  void weight_ofATwoLayerHelix_isAbout62Kilograms() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(
                SpecBuilder.twoTracks(
                    inches(30), inches(2.5), inches(2.5), Length.ZERO, Direction.COUNTER_CLOCKWISE))
            .segment(45)
            .stack(new RoadbedStack(inches(0.236), Length.ZERO, inches(0.075), inches(0.1)))
            .construction(new Construction.TwoLayers())
            .ends(EndPlan.level(inches(24), Length.ZERO))
            .ascent(Ascent.ofTurnsAndRise(8, inches(3.75)))
            .plan();

    assertThat(plan.woodWeight()).isCloseTo(62, within(1.5));
  }

  /**
   * By hand: stations 21.99 in apart; a lead of 40 in ends in a block of 1.5 in, so that 39.25 in
   * take two spans of 19.625 in.
   */
  @Test
  void lead_ofTheEntry_isHeldInEvenSpansToItsEnd() {
    HelixPlan plan = new SpecBuilder().ends(EndPlan.level(inches(24), inches(40))).plan();

    assertThat(plan.stations().entry()).extracting(Station::name).containsExactly("E1", "E2");
    assertThat(plan.stations().entry().get(0).lowest()).isCloseTo(-39.25 * 25.4, within(1e-9));
    assertThat(plan.stations().entry().get(1).lowest()).isCloseTo(-19.625 * 25.4, within(1e-9));
    assertThat(plan.supports().of(SupportRow.Part.ENTRY))
        .allSatisfy(row -> assertThat(row.standsOnBase()).isTrue());
  }

  /**
   * By hand: the inner edge leaves the ring below at √(31² − 25.25²) = 17.984 in (a quarter inch
   * clear of it), and half a block of 1.5 in more.
   */
  @Test
  void lead_ofTheExit_isHeldWhereItHasLeftTheTurnBelow() {
    HelixPlan plan = new SpecBuilder().ends(EndPlan.level(inches(24), inches(40))).plan();
    double ring = plan.climb().ringLength();

    assertThat(plan.stations().exit()).extracting(Station::name).containsExactly("X1", "X2");
    assertThat((plan.stations().exit().get(0).lowest() - ring) / 25.4)
        .isCloseTo(18.734, within(0.0005));
    assertThat((plan.stations().exit().get(1).lowest() - ring) / 25.4)
        .isCloseTo(39.25, within(1e-9));
  }

  @Test
  void lead_shorterThanHalfASpan_needsNoSupportOfItsOwn() {
    HelixPlan plan = new SpecBuilder().ends(EndPlan.level(inches(24), inches(10))).plan();

    assertThat(plan.stations().entry()).isEmpty();
    assertThat(plan.stations().exit()).isEmpty();
  }

  /** Two at every station that carries a turn above; in the middle only where nothing does. */
  @Test
  void singleSupports_standOnlyWhereNothingStandsAbove() {
    HelixPlan plan =
        new SpecBuilder()
            .ends(EndPlan.level(inches(24), Length.ZERO))
            .supports(SpecBuilder.blocks(16))
            .ascent(Ascent.ofTurnsAndRise(1.5, inches(4)))
            .plan();

    for (SupportRow row : plan.supports().rows()) {
      boolean alone = row.station().places().size() == 1;
      assertThat(row.edges()).isEqualTo(alone ? SupportRow.Edges.MIDDLE : SupportRow.Edges.BOTH);
    }
    assertThat(plan.supports().rows()).anyMatch(row -> row.edges() == SupportRow.Edges.MIDDLE);
  }
}
