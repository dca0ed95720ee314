package curvestock.helix;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.app.Workshop;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the job leaves open is set so that no rule fails by it. All helixes are invented. */
class SettlingTest {

  private static HelixPlan plan(String scale, String helix, double thickness) {
    String job =
        """
        curvestock: 2
        title: Settled (invented)
        units: mm
        sheets:
          - {name: birch, size: 2500x1250 mm, thickness: %s, price: 60}
        cutting: {kerf: 4, margin: 10}
        helix: {scale: %s, %s}
        """
            .formatted(thickness, scale, helix);
    return Workshop.readJob(job, "settled.yaml").structure().orElseThrow().plan();
  }

  private static List<Verdict> of(HelixPlan plan, Rule rule) {
    return plan.verdicts().stream().filter(verdict -> verdict.rule() == rule).toList();
  }

  /** An assumed vertical curve took the height that trains need where the leads cross the ring. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "IIm | radius: 1200, width: 200, segments-per-turn: 6, turns: 3, rise-per-turn: 300 | 18",
        "G | radius: 1350, width: 220, segments-per-turn: 8, turns: 2.5, rise-per-turn: 320,"
            + " trains: {tallest: 205} | 18",
        "OO | radius: 690, width: 110, segments-per-turn: 5, turns: 4.5, rise-per-turn: 98 | 12",
        "HO | radius: 737, width: 115, segments-per-turn: 4, turns: 4, rise-per-turn: 108 | 12"
      })
  void helix_thatLeavesItsEndsOpen_failsNoRule(String scale, String helix, double thickness) {
    assertThat(plan(scale, helix, thickness).verdicts())
        .noneMatch(verdict -> verdict.state() == State.FAIL);
  }

  /** A climb that begins earlier costs wood, but no rule. */
  @Test
  void entry_thatCanBeginEarlier_keepsItsHeightAndItsCurve() {
    HelixPlan plan =
        plan(
            "HO",
            "radius: 737, width: 115, segments-per-turn: 4, turns: 4, rise-per-turn: 108",
            12);

    assertThat(of(plan, Rule.FREE_HEIGHT))
        .filteredOn(verdict -> verdict.place().equals(java.util.Optional.of(Place.ENTRY)))
        .hasSize(1)
        .allMatch(verdict -> verdict.state() == State.OK);
    assertThat(of(plan, Rule.VERTICAL_CURVE)).allMatch(verdict -> verdict.state() == State.OK);
    assertThat(plan.spec().bottom().leadIn()).isLessThanOrEqualTo(Length.ofInches(24));
  }

  /** What the job states is never moved, be it in the way. */
  @Test
  void curve_thatTheJobStates_staysAndFails() {
    HelixPlan plan =
        plan(
            "IIm",
            "radius: 1200, width: 200, segments-per-turn: 6, turns: 3, rise-per-turn: 300,"
                + " top: {vertical-curve: 4700, climb-lead: 230, lead-in: 230}",
            18);

    assertThat(plan.spec().top().verticalCurve()).isEqualTo(Length.ofMillimetres(4700));
    assertThat(of(plan, Rule.FREE_HEIGHT)).anyMatch(verdict -> verdict.state() == State.FAIL);
  }
}
