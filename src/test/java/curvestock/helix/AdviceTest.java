package curvestock.helix;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;

import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.Setting;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Change;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Remedy;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
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

  private static HelixPlan hit(SpecBuilder builder) {
    HelixPlan plan = HelixPlan.of(builder.spec(), LengthStyle.INCH_FRACTIONS);
    assertThat(plan.works()).isFalse();
    return plan;
  }

  /** Jobs of which some failing rule had no remedy, or two rules asked for two values. */
  static Stream<HelixPlan> hard() {
    EndPlan short8 = EndPlan.level(inches(24), inches(18)).withClimbLead(inches(8));
    SpecBuilder rods = new SpecBuilder().ends(short8);
    return Stream.of(
        // Heights at entry and exit alone, the climb stated: fewer turns.
        hit(
            new SpecBuilder()
                .circle(28, 4)
                .segment(120)
                .ends(EndPlan.level(inches(24), inches(18)))
                .ascent(Ascent.ofTurnsAndClimb(7, inches(21)))
                .supports(SpecBuilder.blocks(12))
                .tallest(inches(2.0), HeightStandard.NMRA_S7)),
        // Holes of 10 rods a turn beside the joints of 8 pieces: other numbers, or another first.
        hit(
            rods.circle(19, 3.5)
                .segment(45)
                .ascent(Ascent.ofTurnsAndRise(5.25, inches(4.25)))
                .supports(SpecBuilder.rods(10, Optional.empty()))
                .tallest(inches(2.45), HeightStandard.NMRA_S7)),
        // A rise for the height makes it too steep: rise and radius together.
        hit(
            new SpecBuilder()
                .circle(23, 5)
                .segment(120)
                .ends(short8)
                .construction(SpecBuilder.plate(6, 0.25, 0.25))
                .ascent(Ascent.ofTurnsAndRise(6.5, inches(3)).atMost(Grade.ofPercent(2.5)))
                .supports(SpecBuilder.blocks(11))
                .tallest(inches(2.6), HeightStandard.NMRA_S7)),
        // Two values for the rise, 3.406 in and 3.656 in.
        hit(
            new SpecBuilder()
                .circle(17, 5.5)
                .ends(short8)
                .construction(SpecBuilder.plate(6, 0.25, 0.25))
                .ascent(Ascent.ofTurnsAndRise(5.25, inches(2.75)))
                .supports(SpecBuilder.blocks(13))
                .tallest(inches(2.45), HeightStandard.NMRA_S7)));
  }

  /** Every failing rule is told one thing, no two contradict, and all together the helix works. */
  @ParameterizedTest
  @MethodSource("hard")
  void everyFail_hasOneRemedyThatMeetsEveryRule(HelixPlan plan) {
    Map<Setting, Change> told = new EnumMap<>(Setting.class);
    for (Verdict verdict : plan.advice()) {
      if (verdict.state() == State.FAIL) {
        assertThat(verdict.remedy()).as("%s %s", verdict.rule(), verdict.place()).isPresent();
        for (Change change : verdict.remedy().get().changes()) {
          Change other = told.putIfAbsent(change.setting(), change);
          assertThat(other == null || other.equals(change)).as("%s, %s", change, other).isTrue();
        }
      }
    }
    HelixSpec revised = Revision.of(plan.spec(), List.copyOf(told.values()));

    assertThat(told).hasSizeLessThanOrEqualTo(2);
    assertThat(HelixPlan.of(revised, plan.style()).works()).isTrue();
  }

  /** Fewest changes first: one where one does, though the failing rules are several. */
  @Test
  void changes_oneWhereOneDoes() {
    HelixPlan plan = hard().toList().get(0);

    assertThat(new FewestChanges(plan).remedy().orElseThrow().changes()).hasSize(1);
  }

  /**
   * Climb of 21 15/16 in stated in 6.75 turns, and 8 supports on a ring of 245 in: too low, and 30
   * in apart where 16 in are usual (common practice, no source). Neither fewer turns nor more
   * supports alone do; nothing was offered.
   */
  @Test
  void lowAndSupportsTooFar_takesTwoChangesTogether() {
    HelixPlan plan =
        hit(
            new SpecBuilder()
                .circle(39, 4.5)
                .construction(new Construction.TwoLayers())
                .ends(EndPlan.level(inches(24), inches(18)).withClimbLead(inches(8)))
                .ascent(Ascent.ofTurnsAndClimb(6.75, inches(6.75 * 3.25)))
                .supports(SpecBuilder.rods(8, Optional.empty()))
                .tallest(inches(2.9), HeightStandard.NMRA_S7));

    List<HelixPlan> others = Remedies.of(plan);

    assertThat(others).isNotEmpty().allMatch(HelixPlan::works);
    assertThat(new FewestChanges(plan).remedy().orElseThrow().changes())
        .extracting(Change::setting)
        .containsExactlyInAnyOrder(Setting.TURNS, Setting.SUPPORTS_PER_TURN);
  }

  /**
   * Helixes that work, of which clearance asks for more rise than they have and grade for less: 5.5
   * in on a circle of 219.9 in are 2.501 %, 0.11 in less height under plates than is comfortable.
   */
  static Stream<HelixPlan> pulled() {
    SpecBuilder narrow =
        new SpecBuilder()
            .scale("S")
            .circle(35, 5)
            .segment(72)
            .stack(new RoadbedStack(inches(0.472), inches(0.1875), inches(0.1), inches(0.125)))
            .ends(EndPlan.level(inches(38), inches(38)).withClimbLead(inches(36)))
            .supports(SpecBuilder.blocks(16))
            .tallest(inches(3.4), HeightStandard.NMRA_S7);
    return Stream.of(
        narrow
            .construction(SpecBuilder.plate(6, 0.75, 0.472))
            .ascent(Ascent.ofTurnsAndRise(2.5, inches(5.5)))
            .plan(),
        // In HO without plates, 3.5 in on 138.2 in: 2.53 %.
        new SpecBuilder()
            .circle(22, 4)
            .ends(EndPlan.level(inches(32), inches(32)).withClimbLead(inches(32)))
            .ascent(Ascent.ofTurnsAndRise(3.25, inches(3.5)))
            .supports(SpecBuilder.blocks(12))
            .tallest(inches(2.3), HeightStandard.NMRA_S7)
            .plan());
  }

  @ParameterizedTest
  @MethodSource("pulled")
  void marginalChecksThatPullOppositeWays_getOneAnswer(HelixPlan plan) {
    List<Verdict> marginal =
        plan.advice().stream()
            .filter(verdict -> verdict.state() == State.MARGINAL)
            .filter(
                verdict ->
                    verdict.rule() == Rule.GRADE
                        || verdict.remedy().stream()
                            .flatMap(remedy -> remedy.changes().stream())
                            .anyMatch(AdviceTest::isOfTheClimb))
            .toList();

    assertThat(plan.works()).isTrue();
    assertThat(marginal).hasSizeGreaterThan(1);
    assertThat(marginal.stream().map(Verdict::remedy).distinct()).hasSize(1);
    List<Change> changes = marginal.get(0).remedy().orElseThrow().changes();
    HelixPlan after = HelixPlan.of(Revision.of(plan.spec(), changes), plan.style());
    assertThat(changes).extracting(Change::setting).contains(Setting.RADIUS);
    assertThat(after.verdicts())
        .filteredOn(other -> marginal.stream().anyMatch(each -> each.rule() == other.rule()))
        .filteredOn(other -> marginal.stream().anyMatch(each -> each.place().equals(other.place())))
        .allMatch(other -> other.state() == State.OK);
  }

  /** Only what is judged gets more decimals, and a rule of thumb none. */
  @Test
  void words_areNoFinerThanWhatTheyTell() {
    HelixPlan steep = pulled().findFirst().orElseThrow();
    Verdict grade =
        steep.verdicts().stream().filter(v -> v.rule() == Rule.GRADE).findFirst().orElseThrow();
    Verdict lead =
        steep.verdicts().stream()
            .filter(v -> v.is(Rule.LEAD_SUPPORTS, Place.EXIT))
            .findFirst()
            .orElseThrow();

    assertThat(new VerdictWords(LengthStyle.INCH_FRACTIONS).finding(grade))
        .startsWith("2.501 %, 5 1/2 in of rise in 219 29/32 in of track;")
        .contains("pulls like 3.73 % on straight track");
    assertThat(new VerdictWords(LengthStyle.METRIC).finding(lead))
        .contains("plywood this thick: 300 mm to 410 mm, or a little more");
    double span = ((Length) lead.measured().orElseThrow()).millimetres();
    assertThat(new VerdictWords(LengthStyle.METRIC).fix(lead))
        .contains(
            "at least %s mm deep (a sixteenth of the span, rule of thumb)"
                .formatted((int) (5 * Math.ceil(span / 80))));
  }

  static Stream<Arguments> told() {
    Change lead = new Change(Setting.ENTRY_LEAD_IN, mm(500), mm(900));
    return Stream.of(
        // A wider curve is longer round; told alone the supports would seem to cure the grade.
        Arguments.of(
            List.of(
                new Change(Setting.RADIUS, mm(1250), mm(1660)),
                new Change(Setting.SUPPORTS_PER_TURN, new Count(18), new Count(24))),
            "make the radius at least 1660 mm (now 1250 mm), and use 24 supports per turn on that"
                + " wider curve (now 18)"),
        Arguments.of(
            List.of(new Change(Setting.ENTRY_CLIMB_LEAD, mm(500), mm(900)), lead),
            "make the lead and the climb lead at the entry both at least 900 mm (now 500 mm)"),
        Arguments.of(
            List.of(new Change(Setting.ENTRY_CLIMB_LEAD, mm(200), mm(900)), lead),
            "make the lead and the climb lead at the entry both at least 900 mm (now 500 mm and"
                + " 200 mm)"),
        // Of the climb there is no "at least"; the leads that it takes are told as ever.
        Arguments.of(
            List.of(
                new Change(Setting.RISE_PER_TURN, mm(40), mm(36)),
                new Change(Setting.ENTRY_CLIMB_LEAD, mm(500), mm(900)),
                lead),
            "do all of this: make the rise per turn 36 mm (now 40 mm), and make the lead and the"
                + " climb lead at the entry both at least 900 mm (now 500 mm)"),
        Arguments.of(
            List.of(new Change(Setting.EXIT_CLIMB_LEAD, mm(200), mm(900)), lead),
            "make the climb lead at the exit at least 900 mm (now 200 mm), and make the lead at the"
                + " entry at least 900 mm (now 500 mm)"));
  }

  @ParameterizedTest
  @MethodSource("told")
  void changesThatBelongTogether_areToldInOne(List<Change> changes, String words) {
    Verdict grade = pulled().findFirst().orElseThrow().verdicts().get(0);

    assertThat(
            new VerdictWords(LengthStyle.METRIC)
                .fix(grade.fixedBy(Optional.of(new Remedy(changes)))))
        .isEqualTo(words);
  }

  private static boolean isOfTheClimb(Change change) {
    return change.setting() == Setting.RISE_PER_TURN || change.setting() == Setting.TURNS;
  }

  /**
   * A climb lead of 8 in leaves too little height at the entry, with a vertical curve that the job
   * left open: written alone, a longer lead would get another curve, and the height be gone again.
   */
  @Test
  void climbLead_isToldWithTheCurveItWasTriedWith() {
    EndPlan short8 = EndPlan.level(inches(24), inches(12)).withClimbLead(inches(8));
    HelixPlan plan =
        new SpecBuilder().ends(short8).tallest(inches(2.9), HeightStandard.NMRA_S7).plan();
    Assumption curve = new Assumption("bottom.vertical-curve", "24 in", "usual");
    HelixOrder order = new HelixOrder(plan, List.of(curve), Optional.empty());

    Verdict entry = at(Place.ENTRY, order.verdicts());
    Verdict exit = at(Place.EXIT, order.verdicts());

    assertThat(entry.remedy().orElseThrow().changes())
        .extracting(Change::setting)
        .contains(Setting.ENTRY_CLIMB_LEAD);
    assertThat(entry.remedy().orElseThrow().changes())
        .contains(new Change(Setting.ENTRY_VERTICAL_CURVE, inches(24), inches(24)));
    assertThat(exit.remedy().orElseThrow().changes())
        .extracting(Change::setting)
        .contains(Setting.EXIT_CLIMB_LEAD)
        .doesNotContain(Setting.EXIT_VERTICAL_CURVE);
    assertThat(new VerdictWords(LengthStyle.INCH_FRACTIONS).fix(entry))
        .endsWith("keep the vertical curve at the entry at 24 in (write it into the job)");
  }

  private static Verdict at(Place place, List<Verdict> verdicts) {
    return verdicts.stream()
        .filter(verdict -> verdict.is(Rule.FREE_HEIGHT, place))
        .findFirst()
        .orElseThrow();
  }
}
