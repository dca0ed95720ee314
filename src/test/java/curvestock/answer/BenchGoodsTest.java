package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.BlockScrews;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Braces;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.job.DefaultJob;
import curvestock.job.JobReader;
import curvestock.piece.Demand;
import curvestock.piece.Strip;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small figures that go to the shop and to the bench. All helixes are invented. */
class BenchGoodsTest {

  private static final String JOB =
      """
      curvestock: 2
      title: Goods (invented)
      invented: true
      units: in
      sheets: [{name: ply, size: 4x8 ft, thickness: 1/2, price: 68}]
      cutting: {kerf: 1/8, margin: 1/4}
      helix: {scale: HO, turns: 3, radius: 29, width: 4, rise-per-turn: 4 1/2,
              segments-per-turn: 4, supports: {foot-height: 2}}
      """;

  private static Answer answer(String text) {
    var job = JobReader.read(text, "goods.yaml");
    return Answer.ofHelix(job, job.structure().orElseThrow(), Optional.empty(), true);
  }

  private static HelixPlan plan(String text) {
    return answer(text).building().orElseThrow().plan();
  }

  /** Strips of 1/4 in stand out beyond the edge, so the ring is half an inch wider there. */
  @Test
  void floorSpace_countsTheEdgeStrips() {
    HelixPlan plan = plan(JOB);

    assertThat(plan.stations().bridges())
        .anyMatch(bridge -> bridge.form() == Bridge.Form.STRIP && bridge.outer());
    assertThat(new HelixWords(answer(JOB).building().orElseThrow(), answer(JOB).figures()).size())
        .anyMatch(line -> line.startsWith("Floor space 62 1/2 in across"));
  }

  /**
   * The first job by hand: 5.25 turns of 2π × 26 in and two leads of 32 in are 921.7 in of track,
   * 76.8 ft; its floor space with the leads is 60 1/2 × 60 1/2 in, and so much base it needs.
   */
  @Test
  void trackUnderlayAndBase_areToldThoughNotOnTheList() {
    Answer answer = answer(DefaultJob.text());
    Building helix = answer.building().orElseThrow();

    assertThat(new HelixWords(helix, answer.figures()).notListed())
        .isEqualTo(
            "Not on this list: track and underlay for about 76.8 ft (leads included), and the base.");
    assertThat(new BenchWords(helix, answer.figures()).base())
        .contains("at least 60 1/2 x 60 1/2 in (leads included)");
  }

  /** A rectangle that is shorter than the saw's stop makes a support too low. */
  @ParameterizedTest
  @CsvSource({"in, 1, 16", "mm, 25.4, 1"})
  void blocksFromSheets_areLongerThanTheyAreSawn(String unit, double step, double steps) {
    String text =
        """
        curvestock: 2
        title: Sawn (invented)
        invented: true
        units: %s
        sheets: [{name: ply, size: 4x8 ft, thickness: %s, price: 68}]
        cutting: {kerf: %s, margin: %s}
        helix: {scale: HO, turns: 2, radius: %s, width: %s, rise-per-turn: %s,
                segments-per-turn: 4, joint: {half-lap: %s},
                supports: {foot-height: %s, blocks: {width: %s, along: %s, from-sheets: true}}}
        """
            .formatted(
                unit,
                step / 2,
                step / 4,
                step / 4,
                29 * step,
                4 * step,
                4.5 * step,
                2 * step,
                2 * step,
                step / 2,
                2 * step);
    HelixPlan plan = plan(text);
    Length spare = Length.ofInches(1.0 / 16);

    assertThat(plan.supports().blocks().orElseThrow().blocks())
        .hasSizeGreaterThan(4)
        .allSatisfy(
            block -> {
              Demand rectangle =
                  plan.demands().stream()
                      .filter(demand -> demand.piece().id().equals(block.id()))
                      .findFirst()
                      .orElseThrow();
              double length = ((Strip) rectangle.piece().shape()).length().millimetres();
              assertThat(length)
                  .isGreaterThanOrEqualTo(block.longSide().plus(spare).millimetres() - 1e-6);
              // A size that can be set on a fence: whole sixteenths, or millimetres.
              double whole = unit.equals("in") ? length / 25.4 * steps : length * steps;
              assertThat(whole).isCloseTo(Math.rint(whole), within(1e-6));
            });
    assertThat(answer(text).building().orElseThrow().assumed().rows())
        .noneMatch(row -> row.toString().contains("saw kerf"));
    assertThat(answer(DefaultJob.text()).building().orElseThrow().assumed().rows())
        .anyMatch(row -> row.toString().contains("saw kerf"));
  }

  /**
   * S12's outer block is left out for the approach, and a strip bridges from S11 to S1. The helix
   * is three turns, so nothing stands at S1 above the third: the strip ends on the exit's lead. By
   * hand: each vertical curve of 350 mm counts half, so the climb is 78 mm / (2π × 430 mm) × (3 ×
   * 2π × 430 mm - 2 × 50 mm + 2 × 175 mm) = 241.22 mm, over blocks of 60 mm.
   */
  @Test
  void stripOnTheTopTurn_endsOnTheLead_whoseHeightIsTold() {
    String text =
        """
        curvestock: 2
        title: Top turn (invented)
        invented: true
        units: mm
        print: {unit: mm}
        sheets: [{name: ply, size: 1250x2500 mm, thickness: 9.7, price: 36}]
        cutting: {kerf: 3.2, margin: 10}
        helix: {scale: TT, turns: 3, radius: 430, width: 80, rise-per-turn: 78,
                segments-per-turn: 4, direction: clockwise, entry: 90,
                joint: {side-plates: {length: 120, height: 40}},
                bottom: {vertical-curve: 350, climb-lead: 300, lead-in: 320, easement: 160},
                top: {vertical-curve: 350, climb-lead: 300, lead-in: 320, easement: 160},
                supports: {per-turn: 12, foot-height: 60, blocks: {width: 18, along: 36}}}
        """;
    Answer answer = answer(text);
    Building helix = answer.building().orElseThrow();

    assertThat(String.join(" ", new BenchWords(helix, answer.figures()).bridgeRemarks()))
        .contains("On the top turn nothing stands at S1");
    assertThat(new HelixWords(helix, answer.figures()).checks(State.MARGINAL))
        .anyMatch(
            line ->
                line.contains(
                        "rest its end on the benchwork, its underside 301.2 mm above the base")
                    && line.contains("(an eighth of the overhang, rule of thumb)"));
    // The first job ends a quarter turn past S1, which stands on every turn.
    Answer first = answer(DefaultJob.text());
    assertThat(
            new BenchWords(first.building().orElseThrow(), first.figures()).bridgeRemarks().get(0))
        .doesNotContain("On the top turn");
  }

  /** Only what is printed follows the unit of print: not what is bought, nor what a board loses. */
  @Test
  void unitOfPrint_changesNeitherScrewsNorBoards() {
    String metric = JOB.replace("units: in", "units: in\nprint: {unit: mm}");

    assertThat(names(metric)).anyMatch(name -> name.equals("screws No. 8 × 1 1/2 in"));
    assertThat(boards(metric)).isEqualTo(boards(JOB));
  }

  private static List<String> names(String text) {
    return plan(text).shopping().items().stream().map(ShoppingItem::name).toList();
  }

  /**
   * A screw bites 3/4 in (20 mm) into the block at least: common practice, no source. No plate lies
   * between. By hand: 0.5 in of roadbed and 3/4 in in the block are 1 1/4 in, so the usual 1 1/2 in
   * does; with a cross piece of 0.75 in 2 in. In metric 12 + 15 + 20 = 47 mm asks for 50 mm, and 40
   * mm bit only 13 mm.
   */
  @ParameterizedTest
  @CsvSource({
    "in, 0.5, 0, 'No. 8 × 1 1/2 in'",
    "in, 0.5, 0.75, 'No. 8 × 2 in'",
    "mm, 12, 0, '4 × 40 mm'",
    "mm, 12, 15, '4 × 50 mm'",
    "mm, 18, 15, '4 × 60 mm'",
    "mm, 24, 40, '5 × 90 mm'"
  })
  void screwsOfBlocks_biteTheBlockThroughACrossPiece(
      String unit, double thickness, double cross, String size) {
    boolean inches = unit.equals("in");
    double step = inches ? 1 : 25.4;
    String text =
        """
        curvestock: 2
        title: Screws (invented)
        invented: true
        units: %s
        sheets: [{name: ply, size: 4x8 ft, thickness: %s, price: 68}]
        cutting: {kerf: %s, margin: %s}
        helix: {scale: HO, turns: 3, radius: %s, width: %s, rise-per-turn: %s,
                segments-per-turn: 4, joint: {half-lap: %s},
                supports: {foot-height: %s, blocks: {cross-piece: %s}}}
        """
            .formatted(
                unit, thickness, step / 8, step / 4, 29 * step, 4 * step, 6 * step, 2 * step,
                6 * step, cross);
    Answer answer = answer(text);
    // One block at one edge alone carries no cross piece.
    Length between = plan(text).spec().supports().riser().crossPiece();
    long usual =
        plan(text).supports().blocks().orElseThrow().blocks().stream()
            .filter(block -> block.between().equals(between))
            .mapToLong(BlockPlan.Block::count)
            .sum();

    assertThat(usual).isPositive();
    assertThat(plan(text).shopping().items())
        .filteredOn(item -> item.name().equals("screws " + size))
        .singleElement()
        .satisfies(item -> assertThat(item.quantity()).isGreaterThanOrEqualTo(usual));
    assertThat(
            String.join(
                " ", new FixingWords(answer.building().orElseThrow(), answer.figures()).all()))
        .contains("drive one " + size + " screw down into each block")
        .contains(cross == 0 ? "through the roadbed, " : "through the roadbed and the cross piece");
  }

  /**
   * A plate of 12 mm lies between roadbed and block at a joint. By hand: 12 + 12 + 20 = 44 mm asks
   * for 45 mm there, and with a cross piece of 15 mm 59 mm asks for 60 mm; elsewhere 40 and 50 mm
   * do. Four joints a turn, and no joint at the ring's ends: 11 on blocks, two blocks each.
   */
  @ParameterizedTest
  @CsvSource({"0, '4 × 40 mm', '4 × 45 mm'", "15, '4 × 50 mm', '4 × 60 mm'"})
  void screwsUnderSplicePlates_biteAsDeepAsElsewhere(double cross, String usual, String more) {
    String text =
        """
        curvestock: 2
        title: Screws under plates (invented)
        invented: true
        units: mm
        sheets: [{name: ply, size: 2500x1250, thickness: 12, price: 60}]
        cutting: {kerf: 4, margin: 10}
        helix: {scale: HO, turns: 3, radius: 750, width: 110, rise-per-turn: 150,
                segments-per-turn: 4, joint: {plate: {length: 120}},
                supports: {per-turn: 8, foot-height: 150, blocks: {cross-piece: %s}}}
        """
            .formatted(cross);
    Answer answer = answer(text);
    HelixPlan plan = plan(text);
    Riser.WoodBlocks wood = (Riser.WoodBlocks) plan.spec().supports().riser();
    long under = 0;
    for (BlockPlan.Block block : plan.supports().blocks().orElseThrow().blocks()) {
      boolean plated = block.rows().get(0).plate().millimetres() > 0;
      assertThat(BlockScrews.down(plan.spec(), wood, block).orElseThrow().name())
          .isEqualTo(plated ? more : usual);
      under += plated ? block.count() : 0;
    }

    assertThat(under).isPositive();
    assertThat(plan.shopping().items())
        .filteredOn(item -> item.name().equals("screws " + more))
        .singleElement()
        .extracting(ShoppingItem::quantity)
        .isEqualTo(2 * under);
    assertThat(
            String.join(
                " ", new FixingWords(answer.building().orElseThrow(), answer.figures()).all()))
        .contains(
            "any splice plate", "A block with a splice plate on it takes a longer screw: block-")
        .contains("a " + more + " screw");
  }

  /** A brace as thick as the block is wide, and as much again in the block. */
  @Test
  void screwsOfBraces_passTheBrace() {
    Riser.WoodBlocks thick =
        new Riser.WoodBlocks(
            Length.ofMillimetres(40),
            Length.ofMillimetres(60),
            Length.ZERO,
            Length.ofMillimetres(3),
            Optional.empty(),
            false);

    assertThat(BlockScrews.brace(thick, false).orElseThrow().name()).isEqualTo("4 × 60 mm");
  }

  /**
   * Nothing comes out of a block. By hand: a strip of 3/4 x 1 1/2 in on the face of 3/4 in is 1 1/2
   * in thick with the block, less 1/8 in 1 3/8 in; wood 6 mm wide is glued. A block of 20 mm below
   * 12 mm of roadbed takes less than 29 mm.
   */
  @Test
  void screws_neverComeOutOfTheBlock() {
    Riser.WoodBlocks common = (Riser.WoodBlocks) plan(JOB).spec().supports().riser();
    Riser.WoodBlocks thin =
        new Riser.WoodBlocks(
            Length.ofMillimetres(6),
            Length.ofMillimetres(18),
            Length.ZERO,
            Length.ofMillimetres(2),
            Optional.empty(),
            false);

    assertThat(BlockScrews.brace(common, false).orElseThrow().name()).isEqualTo("No. 8 × 1 1/2 in");
    assertThat(BlockScrews.brace(common, true).orElseThrow().name()).isEqualTo("No. 8 × 1 1/4 in");
    assertThat(BlockScrews.brace(thin, true)).isEmpty();
    plan(JOB)
        .supports()
        .blocks()
        .orElseThrow()
        .blocks()
        .forEach(block -> assertThat(BlockScrews.down(plan(JOB).spec(), thin, block)).isEmpty());

    HelixPlan low = plan(JOB.replace("rise-per-turn: 4 1/2", "rise-per-turn: 1 1/2"));
    assertThat(low.shopping().items())
        .anyMatch(item -> item.name().equals("screws No. 8 × 1 1/4 in"));
    String words =
        String.join(
            " ",
            new FixingWords(
                    answer(JOB.replace("rise-per-turn: 4 1/2", "rise-per-turn: 1 1/2"))
                        .building()
                        .orElseThrow(),
                    answer(JOB).figures())
                .all());
    assertThat(words).contains("take a No. 8 × 1 1/4 in screw");
  }

  /** How much is cut from each board: half an inch squares its end in an inch job. */
  private static List<Integer> boards(String text) {
    return plan(text).shopping().riserCutting().orElseThrow().boards().stream()
        .map(board -> board.cuts().size())
        .toList();
  }

  /** By hand: a post of 16 in on 4 in of roadbed takes a diagonal of √(16² + 4²) = 16.49 in. */
  @Test
  void braces_areOnTheCuttingList() {
    HelixPlan plan = plan(JOB.replace("foot-height: 2", "foot-height: 16"));

    List<BoardCutting.Cut> braces =
        plan.shopping().riserCutting().orElseThrow().boards().stream()
            .flatMap(board -> board.cuts().stream())
            .filter(cut -> cut.part().startsWith("brace for "))
            .toList();
    assertThat(braces).isNotEmpty();
    assertThat(braces).anySatisfy(cut -> assertThat(cut.length().inches()).isBetween(16.4, 16.6));
  }

  /** The same rule for blocks from the sheets: 20 times as tall as they are thick, 10 in. */
  @Test
  void bracesOfBlocksFromSheets_areCutFromTheSheets() {
    HelixPlan plan =
        plan(JOB.replace("foot-height: 2", "foot-height: 16, blocks: {from-sheets: true}"));
    long pairs =
        plan.supports().rows().stream()
            .filter(row -> row.edges() == SupportRow.Edges.BOTH)
            .filter(row -> row.gap().inches() > 10)
            .count();

    List<Demand> braces =
        plan.demands().stream()
            .filter(demand -> demand.piece().name().startsWith("brace for block-"))
            .filter(demand -> !demand.piece().name().contains("along"))
            .toList();
    assertThat(pairs).isPositive();
    assertThat(braces.stream().mapToLong(Demand::count).sum()).isEqualTo(pairs);
    // By hand, as above: the lowest is √(16² + 4²) = 16.49 in long.
    assertThat(braces)
        .anySatisfy(
            demand ->
                assertThat(demand.piece().shape().outline().box().width() / 25.4)
                    .isBetween(16.4, 16.6));
  }

  /**
   * Posts under a lead stand in a row and sway along it: a diagonal at each edge, from the top of
   * each to the foot of the next. By hand, from the support table alone.
   */
  @ParameterizedTest
  @CsvSource({"E, 16, 24", "X, 10, 44"})
  void postsOfALead_areBracedAlongIt(String lead, double foot, double straight) {
    Answer answer =
        answer(
            JOB.replace("foot-height: 2", "foot-height: " + foot)
                .replace("turns: 3,", "turns: 3, top: {lead-in: %s},".formatted(straight)));
    HelixPlan plan = answer.building().orElseThrow().plan();
    List<SupportRow> posts =
        plan.supports().rows().stream()
            .filter(row -> row.station().name().startsWith(lead))
            .toList();
    assertThat(posts).isNotEmpty().allMatch(row -> row.gap().inches() > 15);

    List<Braces.Brace> along =
        plan.supports().braces().orElseThrow().all().stream()
            .filter(Braces.Brace::along)
            .filter(brace -> posts.contains(brace.row()))
            .toList();
    assertThat(along).hasSize(2 * Math.max(1, lead.equals("E") ? posts.size() : posts.size() - 1));
    for (Braces.Brace brace : along) {
      double away =
          brace
              .other()
              .map(other -> Math.abs(other.at() - brace.row().at()))
              .orElse(brace.row().gap().millimetres() / 2);
      assertThat(brace.length().millimetres())
          .isCloseTo(Math.hypot(away, brace.row().gap().millimetres()), within(1.0));
    }
    assertThat(
            plan.shopping().riserCutting().orElseThrow().boards().stream()
                .flatMap(board -> board.cuts().stream())
                .filter(cut -> cut.part().startsWith("along-track ")))
        .hasSizeGreaterThanOrEqualTo(along.size());
    BenchWords bench = new BenchWords(answer.building().orElseThrow(), answer.figures());
    assertThat(String.join(" ", bench.blockRemarks())).contains("along the track too");
    Table supports = answer.building().orElseThrow().supports();
    assertThat(
            supports.words(
                plan.supports().rows().indexOf(posts.get(0)), "braces", answer.figures()))
        .contains("1 across, 2 to ");
  }

  /** One rule of thumb, in the same words and with the same limit, for the ring and for a lead. */
  @Test
  void spacingOfSupports_isJudgedByOneRule() {
    VerdictWords words = new VerdictWords(LengthStyle.INCH_FRACTIONS);

    assertThat(plan(JOB).verdicts())
        .filteredOn(
            each -> each.rule() == Rule.SUPPORT_SPACING || each.rule() == Rule.LEAD_SUPPORTS)
        .hasSize(3)
        .allMatch(
            each ->
                each.needed()
                    .equals(
                        plan(JOB).verdicts().stream()
                            .filter(other -> other.rule() == Rule.SUPPORT_SPACING)
                            .findFirst()
                            .orElseThrow()
                            .needed()))
        .allSatisfy(
            each ->
                assertThat(words.finding(each))
                    .containsAnyOf(
                        "12 in to 16 in", "an overhang of plywood this thick: 6 in to 8 in"));
  }

  /** A batten of 10 mm hung over the entry, and the report said that nothing did. */
  @Test
  void entry_tellsWhatHangsThere() {
    Answer answer =
        answer(
            """
            curvestock: 2
            title: Batten (invented)
            invented: true
            units: mm
            sheets: [{name: ply, size: 2500x1250, thickness: 12, price: 60}]
            cutting: {kerf: 4, margin: 10}
            helix: {scale: S, turns: 3.25, radius: 900, width: 150, rise-per-turn: 130,
                    segments-per-turn: 6, supports: {per-turn: 18, rods: {thread: M8}},
                    joint: {side-plates: {length: 150, height: 30, thickness: 6, from-sheets: false}}}
            """);

    HeightWords words = new HeightWords(answer.building().orElseThrow(), answer.figures());
    assertThat(words.ends().get(0)).contains("at least 83.8 mm", "10 mm hangs below");
    assertThat(words.ends().get(1)).contains("hangs down there");
  }

  /**
   * The number is what the tightest check has left, less the spare: a train as tall passes, a
   * sixteenth more fails.
   */
  @Test
  void tallestTrainThatClears_isOneNumber_andATallerOneFails() {
    String job = DefaultJob.text();
    String given = "tallest: 2.78";
    assertThat(job).contains(given);
    Answer answer = answer(job);
    Building helix = answer.building().orElseThrow();
    String told = new HeightWords(helix, answer.figures()).tallestThatClears().orElseThrow();
    String clears = told.replaceAll(".*stands (.*) in above the rail.*", "$1");
    double inches = Length.parse(clears, LengthUnit.INCH).inches();

    assertThat(told).contains("at least 1/8 in to spare", "yours stands 2 25/32 in");
    assertThat(failsHeight(job.replace(given, "tallest: " + clears))).isFalse();
    assertThat(failsHeight(job.replace(given, "tallest: " + (inches + 1.0 / 16)))).isTrue();
  }

  private static boolean failsHeight(String text) {
    return answer(text).building().orElseThrow().verdicts().stream()
        .anyMatch(each -> each.rule() == Rule.FREE_HEIGHT && each.state() == State.FAIL);
  }

  /** The report names the base, and that nothing is glued before the heights are right. */
  @Test
  void builder_isToldOfTheBase_andWhenToGlue() {
    Answer answer = answer(JOB.replace("foot-height: 2", "foot-height: 16"));
    BenchWords bench = new BenchWords(answer.building().orElseThrow(), answer.figures());

    assertThat(bench.base()).contains("top of the base", "flat and level", "lb without track");
    assertThat(
            String.join(
                " ", new AssemblyWords(answer.building().orElseThrow(), answer.figures()).order()))
        // By hand: a lap of 2 in at each end carries the turn's last piece past S1, at the ring's
        // entry.
        .containsSubsequence(
            "last piece rests on S1 of the next turn",
            "Dry-fit",
            "Measure up",
            "Get all of them right before you glue",
            "at S1, straight below that piece's upper end: the next turn's blocks go there");
    assertThat(String.join(" ", bench.blockRemarks()))
        .contains(
            "Brace each pair", "3/16 in hole through the brace", "one No. 8 × 1 1/2 in screw");
  }
}
