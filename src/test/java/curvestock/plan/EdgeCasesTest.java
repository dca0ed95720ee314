package curvestock.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.check.Expectation;
import curvestock.check.LayoutCheck;
import curvestock.drawing.SheetDrawing;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Jobs at the edge of what numbers can say: the right count, or a clear no. */
class EdgeCasesTest {

  /** Regular patterns and single pieces only: enough for these, and quick. */
  private static final PlanListener NO_SEARCH =
      new PlanListener() {
        @Override
        public boolean stopped() {
          return true;
        }
      };

  private static Job job(String sheets, String cutting, String wanted) {
    return JobReader.read(
        """
        curvestock: 1
        invented: true
        sheets: [%s]
        cutting: {%s}
        %s
        search: {effort: quick}
        """
            .formatted(sheets, cutting, wanted),
        "edge.yaml");
  }

  private static String sheet(String size) {
    return "{name: ply, size: " + size + ", thickness: 1/2 in, price: 10}";
  }

  private static String pieces(int count, String shape) {
    return "pieces: [{name: piece, count: " + count + ", " + shape + "}]";
  }

  /** Plans, checks every drawing and gives the number of sheets. */
  private static int sheets(Job job, PlanListener listener) throws Exception {
    Plan plan = new Planner(job, listener).plan();
    for (Layout layout : plan.layouts()) {
      assertThat(LayoutCheck.check(SheetDrawing.clean(layout), Expectation.of(layout)).findings())
          .isEmpty();
    }
    return plan.layouts().size();
  }

  /** All by hand. Two lengths and a kerf make the sheet, or they do not. */
  @ParameterizedTest
  @CsvSource({
    "40 x 5 in, kerf: 0 in, 2, 1",
    "40.125 x 5 in, kerf: 1/8 in, 2, 1",
    "40.124 x 5 in, kerf: 1/8 in, 2, 2",
    "40.126 x 5 in, kerf: 1/8 in, 2, 1",
    "40.625 x 5.5 in, 'kerf: 1/8 in, margin: 1/4 in', 2, 1",
    "40.624 x 5.5 in, 'kerf: 1/8 in, margin: 1/4 in', 2, 2",
    "60 x 10 in, kerf: 0 in, 6, 1",
    "20 x 5 in, kerf: 2 in, 1, 1",
  })
  void plan_stripsThatJustFit_takesSheetsByHand(
      String size, String cutting, int count, int expected) throws Exception {
    Job job = job(sheet(size), cutting, pieces(count, "strip: {length: 20 in, width: 5 in}"));

    assertThat(sheets(job, PlanListener.NONE)).isEqualTo(expected);
  }

  /** By hand: a half turn of outer radius 20 in needs 40 x 20 in, however it is turned. */
  @ParameterizedTest
  @CsvSource({
    "40 x 20 in, true",
    "40.001 x 20.001 in, true",
    "39.999 x 20 in, false",
    "40 x 19.999 in, false",
  })
  void plan_chordAsLongAsTheSheet_isCutOrRefused(String size, boolean fits) throws Exception {
    Job job =
        job(
            sheet(size),
            "kerf: 1/8 in",
            pieces(1, "arc: {radius: 18 in, width: 4 in, angle: 180}"));
    if (fits) {
      assertThat(sheets(job, PlanListener.NONE)).isEqualTo(1);
    } else {
      assertThatThrownBy(() -> new Planner(job, PlanListener.NONE).plan())
          .isInstanceOf(Infeasible.class)
          .hasMessageContaining("does not fit");
    }
  }

  /** By hand: outer diameters of 24 in and discs of 10 in. */
  @ParameterizedTest
  @CsvSource({
    "24 x 24 in, 'radius: 11 in, width: 2 in, angle: 360', 1, true",
    "23.999 x 24 in, 'radius: 11 in, width: 2 in, angle: 360', 1, false",
    "24 x 24 in, 'radius: 11 in, width: 2 in, angle: 359.9', 1, true",
    "10 x 10 in, 'radius: 2.5 in, width: 5 in, angle: 360', 1, true",
    "10 x 10 in, 'radius: 2.5 in, width: 5 in, angle: 90', 1, true",
    "24 x 24 in, 'radius: 9 in, width: 6 in, angle: 0.1', 5, true",
  })
  void plan_ringsDiscsAndSlivers_areCutOrRefused(String size, String arc, int count, boolean fits)
      throws Exception {
    Job job = job(sheet(size), "kerf: 1/8 in", pieces(count, "arc: {" + arc + "}"));
    if (fits) {
      assertThat(sheets(job, PlanListener.NONE)).isEqualTo(1);
    } else {
      assertThatThrownBy(() -> new Planner(job, PlanListener.NONE).plan())
          .isInstanceOf(Infeasible.class);
    }
  }

  @Test
  void plan_unitsMixed_isThePlanOfOneUnit() throws Exception {
    String inches = pieces(3, "arc: {radius: 20 in, width: 4 in, angle: 60}");
    String mixed = pieces(3, "arc: {radius: 50.8 cm, width: 101.6 mm, angle: 60}");

    Plan one = new Planner(job(sheet("48 x 24 in"), "kerf: 1/8 in", inches), NO_SEARCH).plan();
    Plan two =
        new Planner(job(sheet("4 ft x 609.6 mm"), "kerf: 3.175 mm", mixed), NO_SEARCH).plan();

    assertThat(two.layouts()).hasSameSizeAs(one.layouts());
    assertThat(two.purchase().sheetCost()).isEqualTo(one.purchase().sheetCost());
    assertThat(two.layouts().get(0).pieceArea())
        .isCloseTo(one.layouts().get(0).pieceArea(), org.assertj.core.data.Offset.offset(1e-6));
  }

  /** By hand: turns × pieces a turn, the rest as a shorter piece. */
  @ParameterizedTest
  @CsvSource({
    "3, 5, 15",
    "5 1/3, 3, 16",
    "1/5, 5, 1",
    "2 1/2, 1, 2 + 1",
    "0.7, 10, 7",
    "1 1/7, 7, 8",
    "3.3, 10, 33"
  })
  void demands_ofTurnsThatDivide_haveNoSliver(String turns, int perTurn, String counts) {
    Job job =
        job(
            sheet("8x4 ft"),
            "kerf: 1/8 in",
            "helix: {turns: %s, radius: 20 in, width: 3 in, segments-per-turn: %d}"
                .formatted(turns, perTurn));

    assertThat(
            job.demands().stream()
                .map(demand -> Integer.toString(demand.count()))
                .collect(Collectors.joining(" + ")))
        .isEqualTo(counts);
  }

  /** A sheet that leans by 1/8 in over 48 in: what fits a true rectangle may not fit it. */
  @ParameterizedTest
  @CsvSource({"95 7/8 in, 47.9 in, true", "96 in, 48 in, false"})
  void plan_sheetOutOfSquare_isTakenAsItIs(String length, String width, boolean fits)
      throws Exception {
    String leaning =
        "{name: leaning, corners: [[0 in, 0 in], [96 in, 0 in], [96 1/8 in, 48 in], [1/8 in, 48"
            + " in]], thickness: 1/2 in, price: 10}";
    Job job =
        job(
            leaning,
            "kerf: 1/8 in",
            pieces(1, "strip: {length: " + length + ", width: " + width + "}"));
    if (fits) {
      assertThat(sheets(job, PlanListener.NONE)).isEqualTo(1);
    } else {
      assertThatThrownBy(() -> new Planner(job, PlanListener.NONE).plan())
          .isInstanceOf(Infeasible.class);
    }
  }

  @Test
  void plan_remnantsThatCoverEverything_buysNothing() throws Exception {
    Job job =
        job(
            "{name: rest, size: 40 x 12 in, thickness: 1/2 in, on-hand: true, available: 3}, "
                + sheet("8x4 ft"),
            "kerf: 1/8 in",
            pieces(4, "strip: {length: 20 in, width: 5 in}"));

    Plan plan = new Planner(job, PlanListener.NONE).plan();

    assertThat(plan.purchase().sheetCost().minorUnits()).isZero();
    assertThat(plan.layouts()).allMatch(layout -> layout.sheet().name().equals("rest"));
    assertThat(sheets(job, PlanListener.NONE)).isPositive();
  }

  /** Two pieces that differ by a millionth of an inch are two kinds, both cut. */
  @Test
  void plan_piecesAlmostAlike_areAllCut() throws Exception {
    Job job =
        job(
            sheet("40 x 30 in"),
            "kerf: 0 in",
            "pieces: [{name: a, count: 1, strip: {length: 20 in, width: 5 in}}, {name: b, count: 1,"
                + " strip: {length: 20.000001 in, width: 5 in}}]");

    Plan plan = new Planner(job, PlanListener.NONE).plan();

    assertThat(plan.pieces()).isEqualTo(2);
    assertThat(job.demands()).extracting(Demand::count).isEqualTo(List.of(1, 1));
    assertThat(sheets(job, PlanListener.NONE)).isEqualTo(1);
  }
}
