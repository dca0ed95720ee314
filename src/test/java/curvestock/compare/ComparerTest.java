package curvestock.compare;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import curvestock.helix.SegmentPlan;
import curvestock.job.Job;
import curvestock.packing.Packer;
import curvestock.plan.Infeasible;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class ComparerTest {

  private static final Angle THIRD = Angle.ofDegrees(120);
  private static final Angle QUARTER = Angle.ofDegrees(90);
  private static final Angle EIGHTH = Angle.ofDegrees(45);

  private static Question asking(Angle... angles) {
    return new Question(List.of(angles), false, OptionalInt.empty(), false);
  }

  private static Comparison compare(Job job, Question question) throws Infeasible {
    return new Comparer(job, question, TestJobs.untilPlanned()).compare();
  }

  private static Comparison compareAll(Job job, Question question) throws Infeasible {
    return new Comparer(job, question, CompareListener.NONE).compare();
  }

  private static SegmentOption option(Comparison comparison, Angle angle) {
    return comparison.options().stream()
        .filter(option -> option.angle().equals(angle))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void option_ofQuarters_addsUp() throws Exception {
    SegmentOption quarters = option(compare(TestJobs.small(), asking(QUARTER)), QUARTER);

    assertThat(quarters.pieces()).isEqualTo(10);
    assertThat(quarters.joints()).isEqualTo(9);
    assertThat(quarters.parts().plates()).isEqualTo(9);
    // Handbook: perimeter t(R+r)+2(R−r) of ten quarters; chord 2R·sin 45°, depth R − r·cos 45°.
    // Nine splice plates of 5 x 3 1/2 in besides.
    assertThat(quarters.cutLength().inches())
        .isCloseTo(10 * (Math.PI / 2 * 40 + 8) + 9 * 17, within(1e-6));
    assertThat(quarters.largest().length().inches()).isCloseTo(44 * Math.sqrt(0.5), within(1e-9));
    assertThat(quarters.largest().width().inches())
        .isCloseTo(22 - 18 * Math.sqrt(0.5), within(1e-9));
    // Area π·R·w per half turn; 695 kg/m³ is the birch table's figure nearest to 1/2 in.
    double cubicInches = (2.5 * 2 * Math.PI * 20 * 4 + 9 * 5 * 3.5) * 0.5;
    assertThat(quarters.weight()).isCloseTo(cubicInches * 1.6387064e-5 * 695, within(1e-6));
    assertThat(quarters.sheets()).isGreaterThanOrEqualTo(quarters.cost().leastSheets());
    assertThat(quarters.perSheet())
        .isLessThanOrEqualTo(quarters.fill().orElseThrow().bound().count());
  }

  /** Seven thirds fit a sheet (check value of the packing); two and two thirds turns want eight. */
  @Test
  void mixedPlan_whereOneThirdIsMissing_savesTheSecondSheet() throws Exception {
    Job job =
        TestJobs.small(
            "{name: panel, size: 4x4 ft, thickness: 1/2, price: 40}",
            "{name: sheet, size: 4x8 ft, thickness: 1/2, price: 60}",
            "{turns: 2 1/2, radius: 20, width: 4, segments-per-turn: 4}",
            "{turns: 2 2/3, radius: 30, width: 5, segments-per-turn: 3}");

    Question question = new Question(List.of(THIRD), false, OptionalInt.empty(), true);
    Comparison comparison = compare(job, question);

    assertThat(option(comparison, THIRD).sheets()).isEqualTo(2);
    SegmentOption mixed =
        comparison.options().stream()
            .filter(option -> option.division().isMixed())
            .findFirst()
            .orElseThrow();
    assertThat(mixed.sheets()).isEqualTo(1);
    assertThat(mixed.division().lower().orElseThrow().count()).isEqualTo(7);
    double small = mixed.division().segment().degrees();
    assertThat((mixed.pieces() - 7) * small).isCloseTo(120, within(1e-9));
  }

  @Test
  void compare_twice_isTheSame() throws Exception {
    Question question = new Question(List.of(QUARTER), false, OptionalInt.of(2), false);

    Comparison one = compareAll(TestJobs.small(), question);
    Comparison two = compareAll(TestJobs.small(), question);

    assertThat(one.options().stream().map(SegmentOption::fill).toList())
        .isEqualTo(two.options().stream().map(SegmentOption::fill).toList());
    assertThat(one.recommendation()).isEqualTo(two.recommendation());
    assertThat(one.sensitivity().orElseThrow().steps())
        .isEqualTo(two.sensitivity().orElseThrow().steps());
    assertThat(one.reach()).isEqualTo(two.reach());
  }

  @Test
  void reach_isPiecesPerSheetTimesSheets_mostTurnsFirst() throws Exception {
    Question question = new Question(List.of(QUARTER, EIGHTH), false, OptionalInt.of(3), false);
    Comparison comparison = compare(TestJobs.small(), question);

    for (Reach reach : comparison.reach()) {
      int perSheet = option(comparison, reach.division().segment()).perSheet();
      assertThat(reach.pieces()).isEqualTo(3 * perSheet);
      assertThat(reach.turns())
          .isCloseTo(3 * perSheet * reach.division().segment().degrees() / 360, within(1e-12));
    }
    assertThat(comparison.reach().get(0).turns())
        .isGreaterThanOrEqualTo(comparison.reach().get(1).turns());
  }

  @Test
  void angle_tooLargeForTheSheet_isRefusedAndTheOthersCompared() throws Exception {
    Job job = TestJobs.small("radius: 20", "radius: 40");

    Comparison comparison = compare(job, asking(THIRD, EIGHTH));

    assertThat(comparison.refused()).extracting(Refusal::angle).containsExactly(THIRD);
    assertThat(comparison.refused().get(0).reason()).contains("does not fit on panel");
    assertThat(comparison.options()).extracting(SegmentOption::angle).containsExactly(EIGHTH);
  }

  @Test
  void allAngles_tooLarge_areInfeasible() {
    Job job = TestJobs.small("radius: 20", "radius: 200");

    assertThatThrownBy(() -> compare(job, asking(THIRD, QUARTER)))
        .isInstanceOf(Infeasible.class)
        .hasMessageContaining("120°: Piece S")
        .hasMessageContaining("90°: Piece S");
  }

  @Test
  void stopped_afterTheFirstPlan_givesWhatWasCompared() throws Exception {
    List<String> steps = new ArrayList<>();
    CompareListener stopper =
        new CompareListener() {
          @Override
          public void step(String what) {
            steps.add(what);
          }

          @Override
          public boolean stopped() {
            return steps.stream().anyMatch(step -> step.contains("2 of 3"));
          }
        };

    Comparison comparison =
        new Comparer(TestJobs.small(), asking(QUARTER, EIGHTH, THIRD), stopper).compare();

    assertThat(comparison.stopped()).isTrue();
    assertThat(comparison.options()).extracting(SegmentOption::angle).startsWith(QUARTER);
    // What was not planned in full stands by its patterns.
    assertThat(comparison.options()).hasSize(3);
    assertThat(comparison.recommendation()).isPresent();
  }

  @Test
  void firstLook_comesBeforeAnyPlan() {
    List<String> heard = new ArrayList<>();
    CompareListener listener =
        new CompareListener() {
          @Override
          public void step(String what) {
            heard.add(what);
            if (what.startsWith("segments of")) {
              throw new IllegalStateException("enough heard");
            }
          }

          @Override
          public void firstLook(List<SizeLook> looks) {
            assertThat(looks).extracting(SizeLook::pieces).containsExactly(10);
            heard.add("first look");
          }
        };

    assertThatThrownBy(() -> new Comparer(TestJobs.small(), asking(QUARTER), listener).compare())
        .hasMessage("enough heard");

    assertThat(heard).startsWith("counting roughly how many sheets each size needs", "first look");
  }

  /** 10 quarters, a pattern of so many on a sheet: the reckoning is that of whole sheets. */
  @Test
  void firstLooks_saySheetsAndMoneyNearTheFirstPlan() throws Exception {
    Job job = TestJobs.small();
    Question question = asking(QUARTER, EIGHTH, THIRD);
    List<SizeLook> looks = new ArrayList<>();
    CompareListener stopped =
        new CompareListener() {
          @Override
          public void firstLook(List<SizeLook> told) {
            looks.addAll(told);
          }

          @Override
          public boolean stopped() {
            return true;
          }
        };

    Comparison comparison = new Comparer(job, question, stopped).compare();

    assertThat(looks).hasSameSizeAs(comparison.options());
    for (int i = 0; i < looks.size(); i++) {
      SizeLook look = looks.get(i);
      SegmentOption option = comparison.options().get(i);
      assertThat(look.angle()).isEqualTo(option.angle());
      assertThat(look.joints()).isEqualTo(option.joints());
      assertThat(look.largest().length()).isEqualTo(option.chord());
      assertThat(Math.abs(look.sheets() - option.sheets())).isLessThanOrEqualTo(1);
      Money each = job.sheets().get(0).price();
      assertThat(look.paid()).isEqualTo(job.terms().tax().gross(each.times(look.sheets())));
    }
  }

  /** What is claimed of a changed job must hold when that job is laid out by itself. */
  @Test
  void sensitivity_stepsByPattern_areTrueOfTheChangedJob() throws Exception {
    Job job = TestJobs.small();
    Comparison comparison = compareAll(job, asking(EIGHTH));
    Sensitivity found = comparison.sensitivity().orElseThrow();
    SheetStock main = comparison.mainSheet();
    assertThat(found.steps()).isNotEmpty();

    for (Sensitivity.Step step : found.steps()) {
      Designs changed = step.dimension().change(Designs.of(job), main, step.change()).orElseThrow();
      Packer packer =
          new Packer(
              changed.job().sheets().get(0), changed.job().cutting(), changed.job().search());
      int count =
          found.byPattern()
              ? packer.structured(changed.segment(EIGHTH)).layout().placements().size()
              : packer
                  .most(
                      changed.segment(EIGHTH),
                      found.option().perSheet() + 1,
                      curvestock.packing.Control.NONE)
                  .layout()
                  .placements()
                  .size();
      boolean eased = step.dimension().eases(step.change());
      assertThat(eased ? Math.max(count, found.option().perSheet()) : count)
          .as(step.toString() + ": a search from the former layout finds as many or more")
          .isLessThanOrEqualTo(step.perSheet());
    }
  }

  /** Worked by hand: twelve quarters of this helix stack with 0.009 in to spare (see below). */
  @Test
  void spare_ofTheTightStack_isNineThousandths() throws Exception {
    // Half-laps of 2 in at the centre line make the quarter 90° + 2/28 rad = 94.093°. Pitch 7.450,
    // depth 13.544: 13.544 + 11 · 7.450 = 95.491 of 95.5 in (closed form, derived).
    Job job =
        TestJobs.small(
            "{name: panel, size: 4x4 ft, thickness: 1/2, price: 40}",
            "{name: panel, size: 4x8 ft, thickness: 1/2, price: 40}");
    Job tight =
        job.on(
            job.sheets(),
            curvestock.sheet.Cutting.leaving(
                Length.ofInches(1 / 16.0), Length.ZERO, Length.ofInches(0.25)));
    Designs designs =
        new RingDesigns(
            tight,
            new SegmentPlan(6, Length.ofInches(28), Length.ofInches(5.5), Angle.ofDegrees(94.093)));
    Angle lapped = Angle.ofDegrees(94.093);
    Packer packer = new Packer(tight.sheets().get(0), tight.cutting(), tight.search());
    SheetFill fill =
        new SheetFill(
            packer.structured(designs.segment(lapped)).layout(),
            12,
            new curvestock.bound.Bound(99, "not asked here"));

    assertThat(fill.count()).isEqualTo(12);
    assertThat(fill.spareAlong().inches()).isCloseTo(0.009, within(0.001));

    Designs cutShort =
        Dimension.SHEET_LENGTH
            .change(designs, tight.sheets().get(0), Length.ofInches(-1 / 16.0))
            .orElseThrow();
    Packer less =
        new Packer(cutShort.job().sheets().get(0), cutShort.job().cutting(), tight.search());
    assertThat(less.structured(cutShort.segment(lapped)).layout().placements()).hasSize(11);
  }

  @Test
  void scan_steps_areTheLastAnglesThatHoldTheirCount() throws Exception {
    Question question = new Question(List.of(EIGHTH), true, OptionalInt.empty(), false);
    Job job = TestJobs.small();
    AngleScan scan = compare(job, question).scan().orElseThrow();
    Designs designs = Designs.of(job);

    assertThat(scan.steps()).isNotEmpty();
    for (AngleScan.Sample step : scan.steps()) {
      Angle beyond = Angle.ofDegrees(step.angle().degrees() + 0.1);
      Packer packer = new Packer(scan.sheet(), job.cutting(), job.search());
      assertThat(packer.structured(designs.segment(step.angle())).layout().placements())
          .hasSize(step.perSheet());
      assertThat(packer.structured(designs.segment(beyond)).layout().placements().size())
          .as("a tenth of a degree beyond %s", step.angle())
          .isLessThan(step.perSheet());
    }
    assertThat(scan.samples())
        .allSatisfy(
            sample ->
                assertThat(sample.turnsPerSheet())
                    .isLessThanOrEqualTo(scan.bestForSheet().turnsPerSheet()));
  }

  @Test
  void rates_given_makeWorkCostWhatTheySay() throws Exception {
    Job job =
        TestJobs.smallWith(
            """
            rates:
              feed-per-minute: 30
              machine-per-hour: 12
              own-time-per-hour: 18
              minutes-per-joint: 10
              parts-per-joint: 0.75
              largest-piece: 40x9 in
            """);
    SegmentOption quarters = option(compare(job, asking(QUARTER)), QUARTER);

    // 708.3 in and 153 in of plates at 30 in a minute: 28.71 minutes at 30.00 an hour: 14.36. A
    // joint: 3.00 + 0.75.
    assertThat(quarters.work().cutMinutes().orElseThrow()).isCloseTo(28.71, within(0.01));
    assertThat(quarters.work().cutting()).isEqualTo(new Money(1436));
    assertThat(quarters.work().eachJoint()).isEqualTo(new Money(375));
    assertThat(quarters.total()).isEqualTo(quarters.sheetCost().plus(new Money(1436 + 9 * 375)));
    // 31.1 in across by 9.27 in deep does not lie in 9 in.
    assertThat(quarters.carried()).isFalse();
  }

  @Test
  void rates_leftOut_takeAJointAtAShareOfASheet_andSaySo() throws Exception {
    Comparison comparison = compare(TestJobs.small(), asking(QUARTER));

    assertThat(comparison.recommendation().orElseThrow().joint())
        .isEqualTo(new JointPrice(new Money(200), Money.ZERO, true));
  }
}
