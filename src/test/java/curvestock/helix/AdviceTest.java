package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.Setting;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Remedy;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Count;
import curvestock.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Advice that was tried out: done as told, it works and breaks nothing else. */
class AdviceTest {

  private static SpecBuilder plates() {
    return new SpecBuilder()
        .construction(SpecBuilder.plate(5, 0.5, 0.25))
        .tallest(inches(3), HeightStandard.NMRA_S7);
  }

  static Stream<HelixPlan> troubled() {
    return Stream.of(
        plates().plan(),
        plates().ascent(Ascent.ofTurnsAndRise(5, inches(3))).plan(),
        plates().ascent(Ascent.ofTurnsAndClimb(8, inches(24))).plan(),
        plates().construction(SpecBuilder.plate(9, 0.25, 0.25)).plan(),
        new SpecBuilder()
            .ascent(Ascent.ofTurnsAndRise(4, inches(5)).atMost(Grade.ofPercent(2)))
            .tallest(inches(2.5), HeightStandard.NMRA_S7)
            .plan(),
        new SpecBuilder()
            .segment(60)
            .supports(SpecBuilder.rods(7, Optional.empty()))
            .tallest(inches(2.5), HeightStandard.NMRA_S7)
            .plan(),
        new SpecBuilder().ends(EndPlan.level(Length.ZERO, Length.ZERO)).plan());
  }

  @ParameterizedTest
  @MethodSource("troubled")
  void remedy_doneAsTold_meetsTheRuleAndBreaksNone(HelixPlan plan) {
    for (Verdict verdict : plan.advice()) {
      if (verdict.remedy().isEmpty()) {
        continue;
      }
      List<Change> changes = verdict.remedy().get().changes();
      HelixPlan after = HelixPlan.of(Revision.of(plan.spec(), changes), plan.style());

      assertThat(after.verdicts())
          .filteredOn(other -> other.rule() == verdict.rule())
          .filteredOn(other -> other.place().equals(verdict.place()))
          .allMatch(other -> other.state().compareTo(verdict.state()) < 0);
      assertThat(fails(after)).as(verdict.toString()).isSubsetOf(fails(plan));
      assertThat(changes)
          .allMatch(
              change -> !(change.then() instanceof Length length) || length.millimetres() > 0);
    }
  }

  private static List<String> fails(HelixPlan plan) {
    return plan.verdicts().stream()
        .filter(verdict -> verdict.state() == State.FAIL)
        .map(verdict -> verdict.rule() + " " + verdict.place())
        .toList();
  }

  /** Low in the open, lower under plates: one rise is told, and it is enough for both. */
  @Test
  void heightsInSeveralPlaces_getOneValue() {
    HelixPlan plan =
        plates()
            .ascent(Ascent.ofTurnsAndRise(5, inches(3)))
            .ends(EndPlan.level(inches(24), inches(12)))
            .plan();

    List<Change> told =
        plan.advice().stream()
            .filter(verdict -> verdict.state() == State.FAIL)
            .flatMap(verdict -> verdict.remedy().stream())
            .map(Remedy::changes)
            .flatMap(List::stream)
            .filter(change -> change.setting() == Setting.RISE_PER_TURN)
            .distinct()
            .toList();

    // By hand: 3 for the train (no spare), 0.8455 of wood and track and 0.25 of plate are 4.0955
    // in.
    assertThat(told).hasSize(1);
    assertThat(((Length) told.get(0).then()).inches()).isBetween(4.0955, 4.5);
  }

  /** Six pieces a turn: more rods than seven are told as a multiple, so that pieces stay alike. */
  @Test
  void supportsTooFewForRods_becomeAMultipleOfThePieces() {
    HelixPlan plan =
        new SpecBuilder().segment(60).supports(SpecBuilder.rods(7, Optional.empty())).plan();
    Verdict spacing =
        plan.verdicts().stream()
            .filter(verdict -> verdict.rule() == Rule.SUPPORT_SPACING)
            .findFirst()
            .orElseThrow();

    // By hand: 2 pi 28 = 175.9 in round at 16 in at most (common practice, no source) are 11.
    assertThat(spacing.remedy().orElseThrow().changes())
        .containsExactly(new Change(Setting.SUPPORTS_PER_TURN, new Count(7), new Count(12)));
  }

  /**
   * Where only the plate is in the way, another joint is offered. By hand: 4 in of rise less 0.8455
   * of wood and track are 3.154 in the open, 2.904 under a plate, for trains of 2.95. Over the
   * approach, 12.5 in before the ring, the turn above is 11.84 in of run lower, at 2.122 %: with a
   * climb that begins 12 in before the ring 2.889 are left there even without a plate, so that a
   * half-lap alone would not do; with one that begins 18 in before it, 3.017.
   */
  @Test
  void trainsThatFoulThePlates_areOfferedHalfLaps() {
    HelixPlan plan =
        new SpecBuilder()
            .circle(30, 5)
            .stack(new RoadbedStack(inches(0.483), inches(0.1875), inches(0.075), inches(0.1)))
            .construction(SpecBuilder.plate(5, 0.5, 0.25))
            .ends(EndPlan.level(inches(24), inches(12)).withClimbLead(inches(18)))
            .supports(SpecBuilder.blocks(12))
            .ascent(Ascent.ofTurnsAndRise(5, mm(101.6)))
            .tallest(inches(2.95), HeightStandard.NMRA_S7)
            .plan();

    assertThat(plan.works()).isFalse();
    assertThat(Remedies.of(plan))
        .anyMatch(other -> other.spec().construction().hangsBelow().millimetres() == 0)
        .allMatch(HelixPlan::works);
  }
}
