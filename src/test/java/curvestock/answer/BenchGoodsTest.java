package curvestock.answer;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.HelixPlan;
import curvestock.helix.build.BoardCutting;
import curvestock.helix.build.Bridge;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.VerdictWords;
import curvestock.job.JobReader;
import curvestock.units.LengthStyle;
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
}
