package curvestock.helix.verdict;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.RoadbedStack;
import curvestock.helix.spec.SupportPlan;
import curvestock.helix.spec.Vehicle;
import curvestock.helix.standard.HeightStandard;
import curvestock.helix.verdict.Verdict.State;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Share;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class VerdictsTest {

  private static final VerdictWords INCHES = new VerdictWords(LengthStyle.INCH_DECIMALS);
  private static final VerdictWords METRIC = new VerdictWords(LengthStyle.METRIC);

  private static HelixPlan inDecimals(SpecBuilder builder) {
    return HelixPlan.of(builder.spec(), LengthStyle.INCH_DECIMALS);
  }

  private static Verdict verdict(HelixPlan plan, Rule rule) {
    return find(plan, verdict -> verdict.rule() == rule);
  }

  private static Verdict verdict(HelixPlan plan, Rule rule, Place place) {
    return find(plan, verdict -> verdict.is(rule, place));
  }

  private static Verdict find(HelixPlan plan, Predicate<Verdict> wanted) {
    return plan.verdicts().stream().filter(wanted).findFirst().orElseThrow();
  }

  /** Impossible no. 1: so small and steep that more turns would leave no room for a train. */
  @Test
  void impossible_tooSmallForItsGrade_asksForRadius() {
    HelixPlan plan =
        inDecimals(
            new SpecBuilder()
                .circle(18, 4)
                .ascent(Ascent.ofTurnsAndClimb(4, inches(24)).atMost(Grade.ofPercent(2.5)))
                .ends(EndPlan.level(inches(24), inches(12)))
                .tallest(inches(2.9), HeightStandard.NMRA_S7));

    Verdict grade = verdict(plan, Rule.GRADE);

    // By hand: 6 in over 113.10 in is 5.31 %; trains need 2.9 + 0.8455 = 3.7455 in, which at 2.5 %
    // is 149.82 in round, R 23.845 in; 6 in at 2.5 % is 240 in round, R 38.197 in.
    assertThat(grade.state()).isEqualTo(State.FAIL);
    assertThat(INCHES.finding(grade))
        .startsWith("5.31 %, 6 in of rise in 113.097 in of track; your limit is 2.5 %");
    assertThat(INCHES.fix(grade)).isEqualTo("make the radius at least 38.25 in (now 18 in)");
  }

  /** A tower of more than 2 m is often a slip of the units; our own choice, no source. */
  @ParameterizedTest
  @CsvSource({"21, 95, false", "22, 95, true"})
  void climb_ofMoreThanTwoMetres_isRemarked(int turns, double rise, boolean remarked) {
    HelixPlan plan =
        HelixPlan.of(
            new SpecBuilder()
                .circle(28, 5.5)
                .ascent(Ascent.ofTurnsAndClimb(turns, Length.ofMillimetres(turns * rise)))
                .spec(),
            LengthStyle.METRIC);

    Optional<Verdict> climb =
        plan.verdicts().stream().filter(each -> each.rule() == Rule.CLIMB).findFirst();

    assertThat(climb.isPresent()).isEqualTo(remarked);
    climb.ifPresent(
        verdict -> {
          assertThat(verdict.state()).isEqualTo(State.MARGINAL);
          // 22 x 95 mm
          assertThat(METRIC.finding(verdict))
              .contains("2090 mm up", "higher than a person can reach");
          assertThat(METRIC.fix(verdict)).contains("check the units", "local codes");
        });
  }

  /** Following the advice makes it work. */
  @Test
  void impossible_fixedAsAdvised_passes() {
    HelixPlan plan =
        new SpecBuilder()
            .circle(38.25, 4)
            .ascent(Ascent.ofTurnsAndClimb(4, inches(24)).atMost(Grade.ofPercent(2.5)))
            .ends(EndPlan.level(inches(24), inches(12)))
            .tallest(inches(2.9), HeightStandard.NMRA_S7)
            .plan();

    assertThat(verdict(plan, Rule.GRADE).state()).isEqualTo(State.OK);
    assertThat(verdict(plan, Rule.FREE_HEIGHT, Place.OPEN).state()).isEqualTo(State.OK);
  }

  /**
   * Impossible no. 2, an invented scenario by hand: R 560/610 mm, rise 90, 12.0 ply, underlay 3,
   * track 4.5, plates 6.4; wanted 68: 70.5 in the open passes, 64.1 under a plate does not; rise ≥
   * 94 fixes it, or joints that do not hang below.
   */
  @Test
  void impossible_trainsFoulTheSplicePlates_offersRiseOrOtherJoints() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(
                SpecBuilder.twoTracks(
                    mm(560), mm(50), mm(45), Length.ZERO, Direction.COUNTER_CLOCKWISE))
            .stack(new RoadbedStack(mm(12), mm(3), mm(2), mm(2.5)))
            .construction(SpecBuilder.plate(4, 0.25, 6.4 / 25.4))
            .ascent(Ascent.ofTurnsAndClimb(4.5, mm(405)))
            .ends(EndPlan.level(mm(600), mm(300)))
            .tallest(mm(68), HeightStandard.NEM_102)
            .plan();
    Verdict open = verdict(plan, Rule.FREE_HEIGHT, Place.OPEN);
    Verdict plate = verdict(plan, Rule.FREE_HEIGHT, Place.UNDER_PLATE);

    assertThat(open.state()).isEqualTo(State.OK);
    assertThat(METRIC.finding(open)).startsWith("70.5 mm");
    assertThat(plate.state()).isEqualTo(State.FAIL);
    assertThat(METRIC.finding(plate)).startsWith("64.1 mm");
    // By hand: 405 mm of climb at 68 + 6.4 + 19.5 = 93.9 mm a turn are 4.313 turns.
    assertThat(METRIC.fix(plate)).isEqualTo("climb in at most 4.31 turns (now 4.5)");
  }

  /** Impossible no. 3: a roadbed so narrow that long cars hit the rods. */
  @Test
  void impossible_longCarsHitTheRods_saysHowMuchWider() {
    Vehicle longCar = new Vehicle(inches(2.2), inches(11.71), inches(1.378), inches(8.20));
    HelixPlan plan =
        inDecimals(
            new SpecBuilder()
                .circle(24, 3)
                .longest(longCar, inches(0.125))
                .supports(SpecBuilder.rods(8, Optional.empty())));
    Verdict inside = verdict(plan, Rule.SUPPORT_ROOM, Place.INSIDE);

    // By hand: half width 0.689 + inside 0.353 = 1.042 in, and 0.125 in to spare; 1.5 − 20 mm =
    // 0.713 in of room.
    assertThat(inside.state()).isEqualTo(State.FAIL);
    assertThat(INCHES.finding(inside))
        .isEqualTo(
            "0.713 in from the centre line of the track; the longest vehicle reaches 1.042 in, of which"
                + " 0.353 in is overhang; with your spare room, 1.167 in is needed");
    // By hand: 3 + 2 (1.042 + 0.125 - 0.7126) = 3.909 in.
    assertThat(INCHES.fix(inside)).isEqualTo("make the roadbed width at least 3.91 in (now 3 in)");
  }

  @Test
  void impossible_figuresThatContradict_areRefusedWithWhatWouldFit() {
    assertThatThrownBy(
            () ->
                new SpecBuilder()
                    .ascent(
                        Ascent.ofClimbAndRise(inches(24), inches(4))
                            .leavingAt(Angle.ofDegrees(180)))
                    .ends(EndPlan.level(inches(24), inches(12)))
                    .plan())
        .hasMessageContaining("turns must end at the exit (180°, entry 0°)")
        .hasMessageContaining("5.500 or 6.500 turns would");
  }

  @Test
  void impossible_vehicleCannotTurn_isSaidPlainly() {
    Vehicle giant = new Vehicle(inches(2), inches(40), inches(2), inches(30));

    Verdict verdict =
        verdict(new SpecBuilder().longest(giant, Length.ZERO).plan(), Rule.LONGEST_VEHICLE);

    assertThat(verdict.state()).isEqualTo(State.FAIL);
    assertThat(INCHES.fix(verdict)).isEqualTo("make the radius at least 120 in (now 28 in)");
  }

  /**
   * Invented scenario, by hand: the entry is 2.549 in; each inch of lead gives back 0.02274 in, so
   * 2.78 in takes 10.15 in; and the fix works.
   */
  @Test
  void entry_marginal_fixGivesTheHeight() {
    SpecBuilder builder = new SpecBuilder().tallest(inches(2.78), HeightStandard.PROTOTYPE_FEET);
    Verdict before = verdict(inDecimals(builder), Rule.FREE_HEIGHT, Place.ENTRY);
    HelixPlan fixed =
        builder.ends(EndPlan.level(inches(24), inches(24)).withClimbLead(inches(11))).plan();

    assertThat(before.state()).isEqualTo(State.FAIL);
    assertThat(INCHES.finding(before)).startsWith("2.549 in");
    assertThat(INCHES.fix(before))
        .isEqualTo("make the climb lead at the entry at least 10.15 in (now none)");
    assertThat(verdict(fixed, Rule.FREE_HEIGHT, Place.ENTRY).state()).isEqualTo(State.MARGINAL);
  }

  /** Invented scenario, by hand: 3.095/2.751 %, effective 4.69/4.17 %. */
  @Test
  void grade_twoTracks_innerIsSteeper() {
    HelixPlan plan =
        new SpecBuilder()
            .scale("O")
            .ground(
                SpecBuilder.twoTracks(
                    inches(36),
                    inches(4.5),
                    inches(2.75),
                    Length.ZERO,
                    Direction.COUNTER_CLOCKWISE))
            .ascent(Ascent.ofTurnsAndRise(3, inches(7)))
            .plan();

    assertThat(plan.trackGrades()).extracting(Grade::toString).containsExactly("3.09 %", "2.75 %");
    assertThat(plan.equivalentGrades())
        .extracting(Grade::toString)
        .containsExactly("4.69 %", "4.17 %");
    assertThat(verdict(plan, Rule.GRADE, Place.INNER_TRACK).state()).isEqualTo(State.MARGINAL);
  }

  @Test
  void rodHoles_onAJoint_fail() {
    var supports = SpecBuilder.rods(12, Optional.empty());
    HelixPlan plan =
        new SpecBuilder()
            .segment(60)
            .supports(
                new SupportPlan(
                    supports.riser(),
                    12,
                    Optional.of(Length.ZERO),
                    supports.footHeight(),
                    supports.bulgeShare()))
            .plan();

    assertThat(verdict(plan, Rule.ROD_HOLES).state()).isEqualTo(State.FAIL);
  }

  @Test
  void holePatterns_supportsNoMultipleOfPieces_namesTheNextMultiple() {
    HelixPlan plan =
        new SpecBuilder().segment(60).supports(SpecBuilder.rods(16, Optional.empty())).plan();

    assertThat(METRIC.fix(verdict(plan, Rule.HOLE_PATTERNS)))
        .isEqualTo("use 18 supports per turn (now 16)");
  }

  /** A tangent entry passes where the outer rods of the first turn's end would stand. */
  @Test
  void approach_rodsInItsWay_areLeftOutAndNamed() {
    HelixPlan plan =
        new SpecBuilder()
            .segment(60)
            .construction(new Construction.TwoLayers())
            .supports(SpecBuilder.rods(24, Optional.empty()))
            .plan();
    Verdict verdict = verdict(plan, Rule.APPROACH_SUPPORTS);

    assertThat(verdict.state()).isEqualTo(State.OK);
    // By hand: at 337.5° a rod stands 0.03 in from the entry's track; 15° further round both of a
    // station's rods would go through the lead-in, so one station at least cannot stand.
    assertThat(INCHES.finding(verdict))
        .contains("S24", "left out on every turn, to clear trains and the lead");
  }

  /** A verdict is data: rule, state, what was measured, what is needed, what to change. */
  @Test
  void verdict_ofAGradeTooSteep_isData() {
    HelixPlan plan =
        new SpecBuilder()
            .ascent(Ascent.ofTurnsAndRise(4, inches(5)).atMost(Grade.ofPercent(2.5)))
            .tallest(inches(2.5), HeightStandard.NMRA_S7)
            .plan();
    Verdict grade = verdict(plan, Rule.GRADE);

    // By hand: 5 in over 2 pi 28 = 175.93 in is 2.842 %; 2.5 % of that are 4.398 in, 111.7 mm.
    assertThat(grade.state()).isEqualTo(State.FAIL);
    assertThat(((Share) grade.measured().orElseThrow()).percent()).isCloseTo(2.842, within(5e-4));
    assertThat(grade.needed()).contains(new Share(0.025));
    Change change = grade.remedy().orElseThrow().changes().get(0);
    assertThat(change.key()).isEqualTo("rise-per-turn");
    assertThat(change.now()).isEqualTo(inches(5));
    assertThat(((Length) change.then()).millimetres()).isCloseTo(111.7, within(1e-9));
  }

  /** Rules are judged once for a plan: the same list, not another like it. */
  @Test
  void verdicts_askedTwice_areJudgedOnce() {
    HelixPlan plan = new SpecBuilder().plan();

    assertThat(plan.verdicts()).isSameAs(plan.verdicts());
  }

  /** Worked example, recomputed: 3.5 in a turn at 2 % are 175 in round, 55.70 in across. */
  @Test
  void smallestRadius_ofThreeAndAHalfInchesAt2Percent_is27Point85Inches() {
    Length radius =
        Feasible.smallestRadius(new SpecBuilder().spec(), inches(3.5), Grade.ofPercent(2));

    assertThat(radius.times(2).inches()).isCloseTo(55.70, within(0.005));
  }

  /**
   * By hand: 2 × (28 − 0.9 − 0.25) = 53.7 in stay clear between plates a quarter of an inch thick.
   */
  @Test
  void sidePlates_besideTheLongestVehicle_areJudgedByTheEdges() {
    Vehicle vehicle = new Vehicle(inches(2.4), inches(11.7), inches(1.4), inches(8.2));
    Construction low = new Construction.PlatesBeside(inches(4), inches(0.4), inches(0.25), false);
    Construction high = new Construction.PlatesBeside(inches(4), inches(1), inches(0.25), false);
    SpecBuilder narrow = new SpecBuilder().circle(28, 1.8).longest(vehicle, inches(0.1));

    assertThat(verdict(narrow.construction(low).plan(), Rule.SIDE_PLATES).state())
        .isEqualTo(State.OK);
    assertThat(verdict(narrow.construction(high).plan(), Rule.SIDE_PLATES).state())
        .isEqualTo(State.FAIL);
    assertThat(INCHES.finding(verdict(narrow.construction(high).plan(), Rule.OPENING)))
        .startsWith("53.7 in");
  }

  @Test
  void opening_tooNarrowForAPerson_fails() {
    HelixPlan plan = inDecimals(new SpecBuilder().circle(14, 5).train(inches(120), inches(24)));

    assertThat(verdict(plan, Rule.OPENING).state()).isEqualTo(State.FAIL);
    // Wanted by the job, so no rule of thumb to be rounded: 24 in.
    assertThat(METRIC.finding(verdict(plan, Rule.OPENING)))
        .endsWith("(609.6 mm wanted for a person)");
    assertThat(INCHES.fix(verdict(plan, Rule.OPENING)))
        .isEqualTo("make the radius at least 14.5 in (now 14 in)");
    assertThat(INCHES.finding(verdict(plan, Rule.TRAIN))).startsWith("fills 1.36 turns");
  }

  /**
   * By hand, a helix of R 1250 and 260 a turn: c = 260 / 2π = 41.38, and the flat radius is R +
   * c²/R = 1251.37. Two whole flat turns of that are 2 · 2π · 1251.37 = 15725.2 long; the helix
   * itself 2 · 2π · √(1250² + 41.38²) = 15716.6: 8.6 too long, 0.394° of the radius.
   */
  @Test
  void flatPattern_onASteepSlope_isCutToALargerRadiusAndTheRestTakenOffTheLastPiece() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(GroundPlan.circle(mm(1250), mm(258)))
            .ascent(Ascent.ofTurnsAndRise(2, mm(260)))
            .plan();
    Verdict pattern = verdict(plan, Rule.FLAT_PATTERN);

    assertThat(METRIC.finding(pattern)).contains("1.4 mm larger", "0.197° short");
    assertThat(METRIC.fix(pattern))
        .startsWith(
            "write a radius 1.4 mm larger into the job; the turns are then 0.394° too long");
  }

  @Test
  void plate_tooWide_fails() {
    HelixPlan plan = new SpecBuilder().construction(SpecBuilder.plate(6, 0, 0.25)).plan();

    assertThat(verdict(plan, Rule.SPLICE_PLATE).state()).isEqualTo(State.FAIL);
  }

  /**
   * By hand: joints at each full turn stand over the ring's entry, where a vertical curve of 24 in
   * that begins at the ring costs half its length at 2.274 %: 3.1545 − 0.25 − 0.2728 = 2.632 in.
   */
  @Test
  void platesNearTheEnds_curveAtTheRing_haveLessThanElsewhere() {
    HelixPlan plan = new SpecBuilder().construction(SpecBuilder.plate(5, 0.5, 0.25)).plan();

    assertThat(INCHES.finding(verdict(plan, Rule.FREE_HEIGHT, Place.OPEN)))
        .startsWith("3.155 in, and 2.882 in just over the entry or under the exit");
    assertThat(INCHES.finding(verdict(plan, Rule.FREE_HEIGHT, Place.UNDER_PLATE)))
        .startsWith("2.905 in");
    assertThat(INCHES.finding(verdict(plan, Rule.FREE_HEIGHT, Place.UNDER_PLATE_NEAR_END)))
        .startsWith("2.632 in");
  }

  /** NEM 102 (second hand) and NEM 103 (2016), read: H0 at R 700 mm wants 24 + 7 mm. */
  @Test
  void roomBeside_withoutAVehicle_isTheStandards() {
    HelixPlan plan =
        new SpecBuilder()
            .scale("H0")
            .tallest(mm(60), HeightStandard.NEM_102)
            .ground(GroundPlan.circle(mm(700), mm(120)))
            .plan();

    assertThat(METRIC.finding(verdict(plan, Rule.SUPPORT_ROOM)))
        .startsWith(
            "41 mm from the centre line of the track (31 mm wanted: NEM 102, as quoted elsewhere");
  }

  /** By hand: 409.5 mm at 91 mm and more a turn, ending a quarter ahead: 4.25 turns of 96.353. */
  @Test
  void fix_exitFixed_namesTurnsThatEndThere() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(GroundPlan.circle(mm(700), mm(120)))
            .stack(new RoadbedStack(mm(12), mm(3), mm(3), mm(3)))
            .ends(EndPlan.level(mm(600), mm(300)))
            .tallest(mm(70), HeightStandard.NEM_102)
            .ascent(Ascent.ofTurnsAndClimb(5.25, mm(409.5)).leavingAt(Angle.ofDegrees(90)))
            .plan();

    assertThat(METRIC.fix(verdict(plan, Rule.FREE_HEIGHT, Place.OPEN)))
        .isEqualTo("climb in at most 4.25 turns (now 5.25)");
  }

  /** Verdicts print the same in any locale and at any time. */
  @Test
  void lines_computedTwice_areTheSame() {
    GroundPlan ground = GroundPlan.circle(mm(700), mm(120));
    var first =
        new SpecBuilder().ground(ground).plan().verdicts().stream().map(METRIC::line).toList();
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      var second =
          new SpecBuilder().ground(ground).plan().verdicts().stream().map(METRIC::line).toList();
      assertThat(second).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }
}
