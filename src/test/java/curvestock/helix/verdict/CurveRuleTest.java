package curvestock.helix.verdict;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.standard.HeightStandard;
import curvestock.units.Length;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurveRuleTest {

  /**
   * For each per cent the length of a long car: 26.5 m of the prototype on standard gauge, which is
   * 12 in in HO; on metre gauge, G at 1:22.5, 18.7 m, where the longest coaches are 18 to 19 m
   * (common practice, no source). All by hand.
   */
  @ParameterizedTest
  @CsvSource({"HO, 304.8", "N, 165.9", "1, 829.5", "G, 831.3", "IIm, 831.3"})
  void verticalCurve_asksForALongCarForEachPerCent(String scale, double each) {
    HelixPlan plan =
        new SpecBuilder().scale(scale).tallest(SpecBuilder.mm(20), HeightStandard.NMRA_S7).plan();
    double percent = 100 * 4 / (2 * Math.PI * 28);

    assertThat(plan.verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.VERTICAL_CURVE)
        .hasSize(2)
        .allSatisfy(
            verdict ->
                assertThat(((Length) verdict.needed().orElseThrow()).millimetres())
                    .isCloseTo(each * percent, within(0.3)));
  }

  /**
   * By hand: 2500 mm of approach less a vertical curve of 700 mm at 2 % take up 36 mm; where they
   * climb at 0.5 % already, 1.5 % are left, 27 mm.
   */
  @ParameterizedTest
  @CsvSource({"0, 36", "0.5, 27"})
  void slackOfAnApproach_thatClimbs_isWhatIsLeft(double grade, double slack) {
    EndPlan end =
        new EndPlan(
            SpecBuilder.mm(700),
            SpecBuilder.mm(0),
            SpecBuilder.mm(800),
            Grade.ofPercent(grade),
            SpecBuilder.mm(2500),
            SpecBuilder.mm(0));

    assertThat(new SpecBuilder().ends(end).plan().verdicts())
        .filteredOn(verdict -> verdict.rule() == Rule.APPROACH)
        .hasSize(2)
        .allSatisfy(
            verdict ->
                assertThat(verdict.length(Fact.SLACK).millimetres()).isCloseTo(slack, within(0.1)));
  }
}
