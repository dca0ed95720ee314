package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.job.DefaultJob;
import curvestock.job.JobReader;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

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
        .allSatisfy(each -> assertThat(words.finding(each)).contains("12 in to 16 in"));
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
    assertThat(words.ends().get(1)).contains("nothing hangs below");
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
    assertThat(String.join(" ", bench.order()))
        .containsSubsequence("Dry-fit", "Measure up", "Glue only when every height");
    assertThat(String.join(" ", bench.blockRemarks()))
        .contains("Brace each pair", "No. 8 × 1 1/2 in screw through each end");
  }
}
