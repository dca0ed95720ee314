package curvestock.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.helix.HelixPlan;
import curvestock.helix.spec.Construction;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict.State;
import org.junit.jupiter.api.Test;

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
    HelixPlan plan = JobReader.read(GARDEN, "g.yaml").structure().orElseThrow().plan();

    assertThat(plan.verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.SPLICE_PLATE)
        .allMatch(verdict -> verdict.state() == State.OK);
    Construction.ButtWithPlate joint = (Construction.ButtWithPlate) plan.spec().construction();
    // 200 to 250 mm are usual on 260 mm of garden roadbed (common practice, no source).
    assertThat(joint.plate().length().millimetres()).isBetween(100.0, 250.0);
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
}
