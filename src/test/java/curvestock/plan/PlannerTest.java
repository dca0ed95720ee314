package curvestock.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.answer.Answer;
import curvestock.app.Workshop;
import curvestock.geometry.Box;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.job.StockFiles;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.purchase.PurchaseLine;
import curvestock.report.PlanJson;
import curvestock.report.PlanPaper;
import curvestock.report.StockYaml;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * From a job to what is bought and what is left. Jobs are invented; strips, so that it is quick.
 */
class PlannerTest {

  private static final String START =
      "curvestock: 1\nunits: in\ncutting: {kerf: 1/8, margin: 1/4}\nsearch: {effort: quick}\n";

  private static final String STRIPS =
      "pieces: [{name: bar, count: 10, strip: {length: 22, width: 4}}]\n";

  private static Job job(String rest) {
    return JobReader.read(START + rest, "job.yaml");
  }

  private static Plan plan(String rest) throws Infeasible {
    return Workshop.plan(job(rest), PlanListener.NONE);
  }

  private static String text(Plan plan) {
    return String.join(" ", PlanPaper.text(plan.job(), Answer.of(plan)));
  }

  /**
   * A longer search finds other layouts, and with them other remnants: the price of a helix, which
   * is looked up in haste, used to name two sheets of the one kind, its plan one of each.
   */
  @Test
  void sheets_ofTwoKindsAsDear_areTheSameInPriceAndPlan() throws Exception {
    String kind = "{name: %s, size: %s, thickness: 0.476, price: 68}";
    String sheets =
        "sheets: [%s, %s]\n"
            .formatted(kind.formatted("one", "4x8 ft"), kind.formatted("two", "5x6.4 ft"));
    String text = Files.readString(Path.of("demo-data", "default.yaml"));
    String whole =
        text.substring(0, text.indexOf("sheets:"))
            + sheets
            + text.substring(text.indexOf("cutting:"))
                .replace("climb: 22 1/8", "rise-per-turn: 4.2");
    Job job = JobReader.read(whole, "job.yaml");

    Plan price =
        new Planner(
                job.with(job.search().at(Effort.QUICK)).marked(),
                PlanListener.NONE,
                Packers.FORGETFUL)
            .planRoughly();
    Plan plan = Workshop.plan(job, PlanListener.NONE);

    assertThat(plan.purchase().sheetCost()).isEqualTo(price.purchase().sheetCost());
    assertThat(plan.purchase().lines()).isEqualTo(price.purchase().lines());
    assertThat(plan.purchase().lines())
        .extracting(line -> line.product().stock().name())
        .containsExactly("one");
  }

  /** One sheet of either does: the larger leaves more wood for the same money. */
  @ParameterizedTest
  @CsvSource({"small, 48x48, large, 48x96", "large, 48x96, small, 48x48"})
  void sheets_asDear_areTheLargerWhateverTheirOrder(
      String first, String size, String second, String otherSize) throws Exception {
    String kind = "{name: %s, size: %s, thickness: 1/2, price: 60}";
    Plan plan =
        plan(
            "sheets: [%s, %s]\n%s"
                .formatted(kind.formatted(first, size), kind.formatted(second, otherSize), STRIPS));

    assertThat(plan.purchase().lines())
        .extracting(line -> line.product().stock().name())
        .containsExactly("large");
  }

  @Test
  void plan_remnantsCoverEverything_buysNothing() throws Exception {
    Plan plan =
        plan(
            "sheets: [{name: new, size: 48x96, thickness: 1/2, price: 60},"
                + " {name: old, size: 24x48, thickness: 1/2, on-hand: true}]\n"
                + STRIPS);

    assertThat(plan.purchase().sheetCost()).isEqualTo(Money.ZERO);
    assertThat(plan.purchase().lines())
        .extracting(line -> line.product().stock().name())
        .containsExactly("old");
    assertThat(text(plan)).contains("Nothing to buy", "Proven cheapest");
  }

  @Test
  void plan_stockThatCannotSuffice_saysWhatIsMissingAndHowManyWouldDo() {
    assertThatThrownBy(
            () ->
                plan(
                    "sheets: [{name: old, size: 24x24, thickness: 1/2, on-hand: true}]\n" + STRIPS))
        .isInstanceOf(Infeasible.class)
        .hasMessageContaining("still missing: 5 x A.")
        .hasMessageContaining("2 of old instead of 1 would be enough.")
        .hasMessageContaining("Raise `available:` of a sheet, or add one");
  }

  @Test
  void plan_twoThicknesses_decidesEachApart() throws Exception {
    Plan plan =
        plan(
            "sheets: [{name: thick, size: 24x48, thickness: 0.47, nominal-thickness: 1/2, price: 30},"
                + " {name: thin, size: 24x48, thickness: 0.23, nominal-thickness: 1/4, price: 10}]\n"
                + "pieces: [{name: bar, count: 10, strip: {length: 22, width: 4}},"
                + " {name: plate, count: 12, strip: {length: 5, width: 3}, thickness: 1/4}]\n");

    assertThat(plan.purchase().sheetCost()).isEqualTo(new Money(4000));
    assertThat(plan.purchase().gap()).isEqualTo(Money.ZERO);
    for (Layout layout : plan.layouts()) {
      for (Placement placement : layout.placements()) {
        boolean plate = placement.piece().name().equals("plate");
        assertThat(layout.sheet().name()).isEqualTo(plate ? "thin" : "thick");
      }
    }
  }

  @Test
  void plan_noPieceAsksForAThickness_saysSo() throws Exception {
    Plan plan =
        plan(
            "sheets: [{name: thick, size: 24x48, thickness: 1/2, price: 30},"
                + " {name: thin, size: 24x48, thickness: 1/4, price: 1}]\n"
                + STRIPS);

    assertThat(plan.purchase().sheetCost()).isEqualTo(new Money(3000));
    assertThat(text(plan))
        .contains("Not used: thin is 1/4 in thick, and no piece is cut from that thickness.");
  }

  /** Two panels of 47.8 in hold 15 strips of 30 in each; money by hand. */
  @Test
  void plan_sheetRippedForTheCar_noPieceAcrossTheCut_andItsPriceIsSaid() throws Exception {
    Plan plan =
        plan(
            """
            currency: $
            tax: 10 %
            sheets: [{name: ply, size: 48x96, thickness: 1/2, price: 60}]
            store-cuts: {price: 2, tolerance: 1/8, carry: 48.1x48}
            pieces: [{name: bar, count: 20, strip: {length: 30, width: 4}}]
            """);

    assertThat(plan.layouts()).allMatch(layout -> layout.sheet().name().startsWith("ply, panel"));
    assertThat(plan.purchase().lines()).extracting(PurchaseLine::cuts).containsExactly(1);
    // 60 and a cut of 2, and a tenth of it.
    assertThat(text(plan))
        .contains("Have the store rip 1 sheet into 2 x panel A")
        .contains("1 cut, $2.00")
        .contains("$68.20 ($62.00 + 10 % tax $6.20)")
        .contains(
            "Carried home whole, 1 sheet is enough, for $66.00, so ripping costs $2.20 in all");
  }

  @Test
  void plan_panelsTooSmallForAPiece_saysSo() {
    assertThatThrownBy(
            () ->
                plan(
                    """
                    sheets: [{name: ply, size: 48x96, thickness: 1/2, price: 60}]
                    store-cuts: {price: 2, tolerance: 1/8, carry: 24x49}
                    pieces: [{name: bar, count: 2, strip: {length: 70, width: 4}}]
                    """))
        .hasMessageContaining("does not fit on ply, panel A");
    assertThatThrownBy(
            () ->
                plan(
                    "sheets: [{name: ply, size: 48x96, thickness: 1/2, price: 60}]\n"
                        + "store-cuts: {price: 2, tolerance: 1/8, carry: 3x3}\n"
                        + STRIPS))
        .hasMessageContaining("raise `carry:` of `store-cuts:`");
  }

  /** Two strips of 22 by 4 side by side need 8 5/8 in of the end; 1/8 in is sawn away. */
  @Test
  void plan_sheetNotFull_piecesStandAtOneEnd_andTheRestIsOneRectangle() throws Exception {
    Plan plan =
        plan(
            """
            sheets: [{name: ply, size: 48x96, thickness: 1/2, price: 60}]
            pieces: [{name: bar, count: 4, strip: {length: 22, width: 4}}]
            """);
    Layout layout = plan.layouts().get(0);
    Remnant remnant = Remnant.of(layout).orElseThrow();

    for (Placement placement : layout.placements()) {
      Box box = placement.outline().box();
      boolean clear =
          box.maxX() + 3.17 <= remnant.where().minX()
              || box.maxY() + 3.17 <= remnant.where().minY();
      assertThat(clear).isTrue();
    }
    // No end that holds four such strips can be smaller than their area and leave more.
    double most = layout.sheet().area() - layout.pieceArea();
    assertThat(remnant.area()).isBetween(0.95 * (96 - 8.75) * 48 * 645.16, most);
  }

  @Test
  void plan_remnants_areTheStockOfTheNextJob() throws Exception {
    String sheets =
        "sheets: [{name: ply, size: 48x96, thickness: 0.47, nominal-thickness: 1/2, price: 60},"
            + " {name: odd, corners: [[0, 0], [30, 0], [0, 20]], thickness: 0.47, on-hand: true,"
            + " defects: [{circle: {at: [5, 5], radius: 1}}]}]\n";
    Plan first = plan(sheets + "pieces: [{name: bar, count: 4, strip: {length: 40, width: 4}}]\n");
    String stock = StockYaml.of(first);
    Job next =
        JobReader.read(
            START
                + "sheets: [{name: new, size: 48x96, thickness: 0.47, price: 60}]\n"
                + "stock-file: remnants.yaml\n"
                + STRIPS,
            "next.yaml",
            path -> StockFiles.Found.text(stock));

    assertThat(next.sheets())
        .extracting(SheetStock::name)
        .containsExactly("new", "rest of sheet 1, ply", "odd");
    SheetStock rest = next.sheets().get(1);
    SheetStock left = first.stockAfter().get(0);
    assertThat(rest.length().minus(left.length()).millimetres()).isBetween(-0.4, 1e-6);
    assertThat(rest.width().minus(left.width()).millimetres()).isBetween(-0.4, 1e-6);
    assertThat(rest.grain()).isEqualTo(left.grain());
    assertThat(next.sheets().get(2).area())
        .isCloseTo(300 * 645.16, org.assertj.core.data.Offset.offset(1.0));
    assertThat(next.sheets().get(2).defects()).hasSize(1);
    assertThat(Workshop.plan(next, PlanListener.NONE).purchase().sheetCost()).isEqualTo(Money.ZERO);
  }

  @Test
  void plan_cheaperPurchaseNotFound_saysWhatOneSheetWouldHaveToHold() throws Exception {
    String rest =
        """
        sheets: [{name: panel, size: 4x4 ft, thickness: 1/2, price: 40}]
        pieces: [{name: arc, count: 12, arc: {radius: 16, width: 3, angle: 120}}]
        """;
    Plan stopped = new Planner(job(rest), Stopper.fromQuestion(1)).plan();
    Obstacle obstacle = stopped.obstacles().get(0);

    assertThat(stopped.obstacles()).hasSize(1);
    assertThat(obstacle.needed()).isEqualTo(12);
    assertThat(obstacle.found()).isLessThan(12);
    assertThat(text(stopped).replaceAll("\\s+", " "))
        .contains(
            "One sheet of panel would do only if it held all 12 A pieces; the fullest layout found holds "
                + obstacle.found())
        .contains("best so far")
        .doesNotContain("best found");
    assertThat(PlanJson.of(stopped, Answer.of(stopped)))
        .contains("\"obstacles\"", "\"needed\" : 12");
    assertThat(plan(rest).obstacles()).isEmpty();
  }

  @Test
  void labels_sparesOfRoadbed_comeLastAndSaySo() throws Exception {
    Job job = Workshop.readJob(java.util.Optional.empty());
    Demand first = job.demands().get(0);
    Job more =
        JobReader.read(
            curvestock.job.DefaultJob.text()
                    .replace("effort: normal", "effort: quick")
                    .replace("turns: 5 1/4", "turns: 1 1/4")
                    .replace("climb: 22 1/8", "climb: 5 1/4")
                + "spares: {"
                + first.piece().id()
                + ": 1}\n",
            "job.yaml");
    Plan plan = Workshop.plan(more, PlanListener.NONE);

    assertThat(plan.labels().stream().flatMap(List::stream))
        .contains(first.piece().id() + "-spare-1")
        .doesNotHaveDuplicates();
  }
}
