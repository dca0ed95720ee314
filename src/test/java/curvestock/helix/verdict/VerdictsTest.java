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
import curvestock.helix.verdict.Verdict.Result;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VerdictsTest {

  private static Verdict verdict(HelixPlan plan, String rule) {
    return plan.verdicts(LengthStyle.INCH_DECIMALS).stream()
        .filter(verdict -> verdict.rule().equals(rule))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no verdict on " + rule));
  }

  /** Impossible no. 1: so small and steep that more turns would leave no room for a train. */
  @Test
  void impossible_tooSmallForItsGrade_asksForRadius() {
    HelixPlan plan =
        new SpecBuilder()
            .circle(18, 4)
            .ascent(Ascent.ofTurnsAndClimb(4, inches(24)).atMost(Grade.ofPercent(2.5)))
            .ends(EndPlan.level(inches(24), inches(12)))
            .tallest(inches(2.9), HeightStandard.NMRA_S7)
            .plan();

    Verdict grade = verdict(plan, "grade");

    // By hand: 6 in over 113.10 in is 5.31 %; trains need 2.9 + 0.8455 = 3.7455 in, which at 2.5 %
    // is 149.82 in round, R 23.845 in; 6 in at 2.5 % is 240 in round, R 38.197 in.
    assertThat(grade.result()).isEqualTo(Result.FAILS);
    assertThat(grade.finding())
        .startsWith("5.31 % (6 in in 113.097 in)")
        .contains("the limit is 2.5 %");
    assertThat(grade.mend())
        .isEqualTo(
            "more turns will not do: trains need 3.75 in a turn, and at 2.5 % that takes a radius of"
                + " at least 23.85 in, or 38.2 in with the turns as they are");
  }

  /** Following the advice makes it work. */
  @Test
  void impossible_mendedAsAdvised_passes() {
    HelixPlan plan =
        new SpecBuilder()
            .circle(38.2, 4)
            .ascent(Ascent.ofTurnsAndClimb(4, inches(24)).atMost(Grade.ofPercent(2.5)))
            .ends(EndPlan.level(inches(24), inches(12)))
            .tallest(inches(2.9), HeightStandard.NMRA_S7)
            .plan();

    assertThat(verdict(plan, "grade").result()).isEqualTo(Result.OK);
    assertThat(verdict(plan, "free height in the open").result()).isEqualTo(Result.OK);
  }

  /**
   * Impossible no. 2, an invented scenario by hand: R 560/610 mm, rise 90, 12.0 ply, underlay 3,
   * track 4.5, plates 6.4; wanted 68: 70.5 in the open passes, 64.1 under a plate does not; rise ≥
   * 94 mends it, or joints that do not hang below.
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
    Verdict open = find(plan, "free height in the open");
    Verdict plate = find(plan, "free height under a splice plate");

    assertThat(open.result()).isEqualTo(Result.OK);
    assertThat(open.finding()).startsWith("70.5 mm");
    assertThat(plate.result()).isEqualTo(Result.FAILS);
    assertThat(plate.finding()).startsWith("64.1 mm");
    assertThat(plate.mend())
        .startsWith(
            "take a rise of at least 93.9 mm a turn (2.67 %): the climb in 4.31 turns of 94 mm")
        .endsWith(
            "or let nothing hang below by more than 2.5 mm (half-laps or two layers hang below by"
                + " nothing)");
  }

  private static Verdict find(HelixPlan plan, String rule) {
    return plan.verdicts(LengthStyle.METRIC).stream()
        .filter(verdict -> verdict.rule().equals(rule))
        .findFirst()
        .orElseThrow();
  }

  /** Impossible no. 3: a roadbed so narrow that long cars hit the rods. */
  @Test
  void impossible_longCarsHitTheRods_saysHowMuchWider() {
    Vehicle longCar = new Vehicle(inches(2.2), inches(11.71), inches(1.378), inches(8.20));
    HelixPlan plan =
        new SpecBuilder()
            .circle(24, 3)
            .longest(longCar, inches(0.125))
            .supports(SpecBuilder.rods(8, Optional.empty()))
            .plan();
    Verdict inside = verdict(plan, "room to the inner supports");

    // By hand: half width 0.689 + inside 0.353 = 1.042 in; 1.5 − 20 mm = 0.713 in of room.
    assertThat(inside.result()).isEqualTo(Result.FAILS);
    assertThat(inside.finding())
        .isEqualTo(
            "the longest vehicle reaches 1.042 in from the track's middle (overhang 0.353 in),"
                + " there are 0.713 in");
    assertThat(inside.mend()).startsWith("make the side margin 0.46 in wider");
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
        verdict(new SpecBuilder().longest(giant, Length.ZERO).plan(), "longest vehicle");

    assertThat(verdict.result()).isEqualTo(Result.FAILS);
    assertThat(verdict.mend()).contains("widen the radius");
  }

  /**
   * Invented scenario, by hand: the entry is 2.593 in; each inch of lead gives back 0.02274 in, so
   * 2.78 in takes 8.24 in; and the mend works.
   */
  @Test
  void entry_tight_mendGivesTheHeight() {
    SpecBuilder builder = new SpecBuilder().tallest(inches(2.78), HeightStandard.PROTOTYPE_FEET);
    Verdict before = verdict(builder.plan(), "free height at the entry");
    HelixPlan mended =
        builder.ends(EndPlan.level(inches(24), inches(24)).withClimbLead(inches(9))).plan();

    assertThat(before.result()).isEqualTo(Result.FAILS);
    assertThat(before.finding()).startsWith("2.593 in");
    assertThat(before.mend()).startsWith("start the climb 8.24 in");
    assertThat(verdict(mended, "free height at the entry").result()).isEqualTo(Result.TIGHT);
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
    assertThat(verdict(plan, "grade, inner track").result()).isEqualTo(Result.TIGHT);
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

    assertThat(verdict(plan, "rod holes").result()).isEqualTo(Result.FAILS);
  }

  @Test
  void holePatterns_supportsNoMultipleOfPieces_namesTheNeighbours() {
    HelixPlan plan =
        new SpecBuilder().segment(60).supports(SpecBuilder.rods(16, Optional.empty())).plan();

    assertThat(verdict(plan, "hole patterns").mend())
        .isEqualTo("take 12 or 18 supports a turn, and whole pieces are all alike");
  }

  /** A tangent entry passes where the outer rods of the first turn's end would stand. */
  @Test
  void approach_rodInItsWay_isNamed() {
    HelixPlan plan =
        new SpecBuilder()
            .segment(60)
            .construction(new Construction.TwoLayers())
            .supports(SpecBuilder.rods(24, Optional.empty()))
            .plan();
    Verdict verdict = verdict(plan, "supports in the approach");

    assertThat(verdict.result()).isEqualTo(Result.TIGHT);
    // By hand: S23 at 337.5° stands 0.03 in from the entry's track, S24 at 352.5° 2.02 in.
    assertThat(verdict.finding())
        .isEqualTo(
            "outer supports in the way of the entry: S23; outer supports of the lowest turn that"
                + " meet the lead's roadbed beside its track: S24");
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

    assertThat(verdict(narrow.construction(low).plan(), "side plates").result())
        .isEqualTo(Result.OK);
    assertThat(verdict(narrow.construction(high).plan(), "side plates").result())
        .isEqualTo(Result.FAILS);
    assertThat(verdict(narrow.construction(high).plan(), "opening").finding())
        .startsWith("53.7 in");
  }

  @Test
  void opening_tooNarrowForAPerson_fails() {
    HelixPlan plan = new SpecBuilder().circle(14, 5).train(inches(120), inches(24)).plan();

    assertThat(verdict(plan, "opening").result()).isEqualTo(Result.FAILS);
    assertThat(verdict(plan, "opening").mend()).startsWith("widen the radius by 0.5 in");
    assertThat(verdict(plan, "train").finding()).startsWith("the longest train spans 1.36 turns");
  }

  @Test
  void plate_tooWide_fails() {
    HelixPlan plan = new SpecBuilder().construction(SpecBuilder.plate(6, 0, 0.25)).plan();

    assertThat(verdict(plan, "splice plate").result()).isEqualTo(Result.FAILS);
  }

  /**
   * By hand: joints at each full turn stand over the ring's entry, where a vertical curve of 24 in
   * that begins at the ring costs half its length at 2.274 %: 3.1545 − 0.25 − 0.2728 = 2.632 in.
   */
  @Test
  void platesNearTheEnds_curveAtTheRing_haveLessThanElsewhere() {
    HelixPlan plan = new SpecBuilder().construction(SpecBuilder.plate(5, 0.5, 0.25)).plan();

    assertThat(verdict(plan, "free height under a splice plate").finding()).startsWith("2.905 in");
    assertThat(verdict(plan, "free height under the splice plates near the ends").finding())
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

    assertThat(find(plan, "room to the supports").finding())
        .startsWith("41 mm from the track's middle (wanted 31 mm: NEM 102 (second hand)");
  }

  /** By hand: 409.5 mm at 91 mm and more a turn, ending a quarter ahead: 4.25 turns of 96.353. */
  @Test
  void mend_exitFixed_namesTurnsThatEndThere() {
    HelixPlan plan =
        new SpecBuilder()
            .ground(GroundPlan.circle(mm(700), mm(120)))
            .stack(new RoadbedStack(mm(12), mm(3), mm(3), mm(3)))
            .ends(EndPlan.level(mm(600), mm(300)))
            .tallest(mm(70), HeightStandard.NEM_102)
            .ascent(Ascent.ofTurnsAndClimb(5.25, mm(409.5)).leavingAt(Angle.ofDegrees(90)))
            .plan();

    assertThat(find(plan, "free height in the open").mend())
        .isEqualTo(
            "take a rise of at least 91 mm a turn (2.07 %): the climb in 4.25 turns of 96.4 mm");
  }

  /** Verdicts print the same in any locale and at any time. */
  @Test
  void lines_computedTwice_areTheSame() {
    GroundPlan ground = GroundPlan.circle(mm(700), mm(120));
    var first = new SpecBuilder().ground(ground).plan().verdicts(LengthStyle.METRIC);
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      var second = new SpecBuilder().ground(ground).plan().verdicts(LengthStyle.METRIC);
      assertThat(second).isEqualTo(first);
    } finally {
      Locale.setDefault(before);
    }
  }
}
