package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the program takes for a garden railway must itself pass its rules. */
class AssumedValuesTest {

  private static final String GARDEN =
      """
      curvestock: 1
      title: Garden spiral (invented)
      invented: true
      units: mm
      sheets: [{name: ply, size: 1220x2440 mm, thickness: 17.7, price: 60}]
      cutting: {kerf: 3, margin: 5}
      helix: {scale: G, turns: 3, radius: 1500, width: 260, rise-per-turn: 350, segments-per-turn: 3,
              trains: {tallest: 200}}
      """;

  @Test
  void plateAssumedForGardenScale_fitsTheRoadbed() {
    // So much rise that a plate leaves the height that a whole vertical curve takes.
    String high = GARDEN.replace("rise-per-turn: 350", "rise-per-turn: 420");
    HelixPlan plan = JobReader.read(high, "g.yaml").structure().orElseThrow().plan();

    assertThat(plan.verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.SPLICE_PLATE)
        .allMatch(verdict -> verdict.state() == State.OK);
    Construction.ButtWithPlate joint = (Construction.ButtWithPlate) plan.spec().construction();
    // 200 to 250 mm are usual on 260 mm of garden roadbed (common practice, no source).
    assertThat(joint.plate().length().millimetres()).isBetween(100.0, 250.0);
  }

  /** With half-laps in place of the plates, all assumed ends pass their checks. */
  @Test
  void jointAssumedForGardenScale_leavesTheVerticalCurvesWhole() {
    HelixPlan plan = JobReader.read(GARDEN, "g.yaml").structure().orElseThrow().plan();

    assertThat(plan.verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.VERTICAL_CURVE)
        .hasSize(2)
        .allMatch(verdict -> verdict.state() == State.OK);
  }

  /** Values that are set by the rules are rounded by the job's units, and told in those printed. */
  @Test
  void unitOfPrint_isThatOfTheWords_andMovesNeitherEnd() {
    HelixPlan metric = JobReader.read(GARDEN, "g.yaml").structure().orElseThrow().plan();
    Job inches =
        JobReader.read(GARDEN.replace("units: mm", "units: mm\nprint: {unit: in}"), "g.yaml");

    HelixPlan plan = inches.structure().orElseThrow().plan();
    assertThat(plan.style()).isEqualTo(inches.style());
    assertThat(plan.spec().bottom()).isEqualTo(metric.spec().bottom());
    assertThat(plan.spec().top()).isEqualTo(metric.spec().top());
  }

  /** A straight of 1180 mm made thirds too large for the sheet; nobody had asked for it. */
  @Test
  void leadInAssumed_isNoLongerThanTwoFeet() {
    HelixPlan plan = JobReader.read(GARDEN, "g.yaml").structure().orElseThrow().plan();

    assertThat(plan.spec().bottom().leadIn().inches()).isBetween(12.0, 24.0);
    assertThat(plan.verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.LEAD)
        .allMatch(verdict -> verdict.state() == State.OK);
  }

  /** 45 mm at 1:22.5 is metre gauge (NEM 010): heights of standard-gauge stock do not apply. */
  @Test
  void heightForNarrowGauge_isAskedFor() {
    String silent = GARDEN.replace("200}}", "200}}").replace("trains: {tallest: 200}", "entry: 0");

    assertThatThrownBy(() -> JobReader.read(silent, "g.yaml"))
        .hasMessageContaining("no published height for scale G")
        .hasMessageContaining("give yours");
  }

  /**
   * No support can stand under the straight at the top, over the ring. The usual span of plywood
   * 3/4 in thick is 18 in (common practice, no source), and what stands out bends like twice its
   * length: 9 in.
   */
  @Test
  void straightAssumedAtTheTop_standsOutNoFartherThanItsRuleAllows() {
    HelixPlan plan = JobReader.read(GARDEN, "g.yaml").structure().orElseThrow().plan();

    assertThat(plan.spec().top().leadIn().inches()).isLessThanOrEqualTo(9);
    assertThat(plan.spec().top().climbLead()).isLessThanOrEqualTo(plan.spec().top().leadIn());
    assertThat(plan.verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.LEAD_SUPPORTS)
        .hasSize(2)
        .allMatch(verdict -> verdict.state() == State.OK);
    assertThat(plan.works()).isTrue();
  }

  private static final String LEAST =
      """
      curvestock: 2
      title: Least said (invented)
      invented: true
      units: %s
      sheets: [{name: ply, size: %s, thickness: %s, price: 60}]
      cutting: {kerf: 0.1, margin: 0.2}
      helix: {scale: %s, radius: %s, width: %s, climb: %s, rise-per-turn: %s, segments-per-turn: 4%s}
      """;

  private static HelixOrder least(
      String scale, String units, String size, String ply, String numbers) {
    String[] each = numbers.split(" ", -1);
    String trains = scale.equals("G") ? ", trains: {tallest: 200}" : "";
    String job =
        LEAST.formatted(units, size, ply, scale, each[0], each[1], each[2], each[3], trains);
    return JobReader.read(job, "least.yaml").structure().orElseThrow();
  }

  /** With scale, radius, width and climb alone, no assumed value fails a rule, nor is marginal. */
  @ParameterizedTest
  @CsvSource({
    "Z,mm,1220x2440 mm,4,220 40 150 42",
    "N,mm,1220x2440 mm,9,400 70 300 62",
    "TT,mm,1220x2440 mm,9,450 80 300 80",
    "HO,in,4x8 ft,0.476,30 4 16 4",
    "HO,mm,1250x2500 mm,12,760 100 400 100",
    "OO,mm,1220x2440 mm,12,700 100 400 110",
    "S,in,4x8 ft,0.703,40 6 20 5.5",
    "O,in,4x8 ft,0.703,54 8 24 7.5",
    "1,mm,1500x3000 mm,18,1800 240 700 235",
    "G,mm,1220x2440 mm,17.7,1900 260 700 330"
  })
  void leastJobOfEveryScale_isGivenValuesThatPass(
      String scale, String units, String size, String ply, String numbers) {
    HelixPlan plan = least(scale, units, size, ply, numbers).plan();

    assertThat(plan.works()).isTrue();
    assertThat(plan.verdicts())
        .filteredOn(
            verdict ->
                Set.of(
                        Rule.VERTICAL_CURVE,
                        Rule.LEAD,
                        Rule.LEAD_SUPPORTS,
                        Rule.SPLICE_PLATE,
                        Rule.SUPPORT_ROOM,
                        Rule.SUPPORT_SPACING,
                        Rule.OPENING)
                    .contains(verdict.rule()))
        .hasSizeGreaterThan(6)
        .allMatch(verdict -> verdict.state() == State.OK, scale);
  }

  /** What was set otherwise than usual is told with the value it has and the reason. */
  @Test
  void valuesSetForTheRules_areListedAsTheyAre() {
    HelixOrder order = least("HO", "mm", "1250x2500 mm", "12", "760 100 400 100");

    assertThat(order.assumed())
        .anySatisfy(
            each -> {
              assertThat(each.field()).isEqualTo("joint");
              assertThat(each.value()).isEqualTo("half-lap");
            })
        .anySatisfy(
            each -> {
              assertThat(each.field()).isEqualTo("bottom.vertical-curve");
              assertThat(each.value())
                  .isEqualTo(
                      order
                          .plan()
                          .style()
                          .formatGiven(order.plan().spec().bottom().verticalCurve()));
            })
        .noneMatch(each -> each.field().startsWith("joint.plate"));
  }

  /** What the job says is not touched, be it marginal: 400 mm for 2.1 %, where 638 mm are usual. */
  @Test
  void valuesOfTheJob_stayAsTheyAre() {
    String job =
        LEAST
            .formatted("mm", "1250x2500 mm", "12", "HO", "760", "100", "400", "100", "")
            .replace("helix: {", "helix: {bottom: {vertical-curve: 400}, ");

    HelixPlan plan = JobReader.read(job, "least.yaml").structure().orElseThrow().plan();

    assertThat(plan.spec().bottom().verticalCurve().millimetres()).isEqualTo(400);
  }

  /** A base cut from 4 mm sheets (invented) is 4 mm thick, whatever a base usually is. */
  @Test
  void baseUnderRods_cutFromTheSheets_isAsThickAsThey() throws Exception {
    Path orchard = Path.of("demo-data/helix/orchard-climb.yaml");
    String text = Files.readString(orchard, StandardCharsets.UTF_8);
    String without = text.replaceFirst("  base: .*\n", "");

    assertThat(baseUnderRods(text)).isEqualTo(Length.ofMillimetres(4));
    assertThat(baseUnderRods(without)).isEqualTo(Riser.ThreadedRods.USUAL_BASE);
  }

  private static Length baseUnderRods(String text) {
    HelixPlan plan = JobReader.read(text, "rods.yaml").structure().orElseThrow().plan();
    return ((Riser.ThreadedRods) plan.spec().supports().riser()).base();
  }
}
