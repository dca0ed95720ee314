package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.BaseFrame.Form;
import curvestock.helix.spec.Ascent;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.EndPlan;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.Riser.Ear;
import curvestock.helix.spec.SplicePlate;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.piece.AnnularSector;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PartsTest {

  private static SplicePlates plates(SplicePlate.Form form, double length, double inset) {
    return new SplicePlates(
        new Construction.ButtWithPlate(
            new SplicePlate(form, inches(length), inches(inset), inches(0.25), 2, mm(4), true)),
        GroundPlan.circle(inches(28), inches(5.5)),
        23);
  }

  @Test
  void plate_thatFits_liesWithinTheRoadbed() {
    SplicePlates plates = plates(SplicePlate.Form.RECTANGLE, 5, 0.5);
    Outline ring = new AnnularSector(inches(28), inches(5.5), Angle.ofDegrees(60)).outline();
    // The plate's length lies across the radius through its middle.
    Pose onJoint = new Pose(plates.middleRadius().millimetres(), 0, Math.PI / 2);

    assertThat(plates.fits()).isTrue();
    assertThat(Clearance.within(plates.shape().outline().at(onJoint), ring)).isGreaterThan(0);
  }

  @Test
  void plate_widestThatFits_touchesBothEdges() {
    double widest = plates(SplicePlate.Form.RECTANGLE, 6, 0).widestThatFits().inches();
    SplicePlates plates = plates(SplicePlate.Form.RECTANGLE, 6, 5.5 - widest);
    Outline ring = new AnnularSector(inches(28), inches(5.5), Angle.ofDegrees(60)).outline();
    Pose onJoint = new Pose(plates.middleRadius().millimetres(), 0, Math.PI / 2);

    assertThat(widest).isLessThan(5.5);
    assertThat(Math.abs(Clearance.within(plates.shape().outline().at(onJoint), ring)))
        .isLessThan(1e-6);
  }

  @Test
  void plate_asWideAsTheRoadbed_fitsOnlyIfCurved() {
    assertThat(plates(SplicePlate.Form.RECTANGLE, 5, 0).fits()).isFalse();
    assertThat(plates(SplicePlate.Form.CURVED, 5, 0).fits()).isTrue();
  }

  @ParameterizedTest
  @EnumSource(SplicePlate.Form.class)
  void screws_ofAPlate_lieInItTwoEachSide(SplicePlate.Form form) {
    SplicePlates plates = plates(form, 5, 0.5);

    assertThat(plates.screws()).isEqualTo(92);
    assertThat(plates.screwPositions())
        .hasSize(4)
        .allSatisfy(at -> assertThat(plates.shape().outline().contains(at)).isTrue());
  }

  /** Everywhere under the roadbed there is base, and in the middle there is none. */
  @ParameterizedTest
  @EnumSource(Form.class)
  void base_underTheRing_isWhole(Form form) {
    BaseFrame base = BaseFrame.under(GroundPlan.circle(inches(28), inches(5.5)), form, inches(1));
    int pieces = base.demand().count();
    Outline piece = base.demand().piece().shape().outline();

    for (int step = 0; step < 720; step++) {
      double bearing = Math.toRadians(step / 2.0 + 0.01);
      for (double radius : new double[] {25.25, 28, 30.75}) {
        Point point = Point.polar(radius * 25.4, bearing);
        assertThat(covered(piece, pieces, point)).isTrue();
      }
      assertThat(covered(piece, pieces, Point.polar(22 * 25.4, bearing))).isFalse();
    }
    assertThat(base.acrossFlats().inches()).isCloseTo(63.5, within(1e-9));
  }

  private static boolean covered(Outline piece, int pieces, Point point) {
    for (int i = 0; i < pieces; i++) {
      if (piece.at(new Pose(0, 0, 2 * Math.PI * i / pieces)).contains(point)) {
        return true;
      }
    }
    return false;
  }

  /** A piece of the upper layer is glued to what lies below it: all of that is laid by then. */
  @Test
  void schedule_ofTwoLayers_laysNoPieceBeforeThoseUnderIt() {
    HelixPlan plan = new SpecBuilder().construction(new Construction.TwoLayers()).plan();
    List<BedPiece> laid = new ArrayList<>();

    for (ScheduleRow row : plan.schedule().rows()) {
      BedPiece piece = row.piece();
      if (piece.layer() == 2) {
        assertThat(plan.roadbed().pieces())
            .filteredOn(other -> other.layer() == 1)
            .filteredOn(other -> other.from() < piece.to() - 1 && other.to() > piece.from() + 1)
            .isNotEmpty()
            .allMatch(laid::contains);
      }
      laid.add(piece);
    }
    assertThat(laid).hasSameSizeAs(plan.roadbed().pieces());
  }

  @Test
  void schedule_joints_meetFromPieceToPiece() {
    HelixPlan plan = new SpecBuilder().plan();
    Length railAtEnd = Length.ZERO;

    for (ScheduleRow row : plan.schedule().rows()) {
      if (row.piece().lower().isPresent()) {
        assertThat(row.railFrom().millimetres()).isCloseTo(railAtEnd.millimetres(), within(1e-9));
      }
      assertThat(row.railTo()).isGreaterThan(row.railFrom());
      railAtEnd = row.railTo();
    }
    assertThat(plan.schedule().rows().get(23).turn()).isEqualTo(6);
    assertThat(plan.schedule().rows().get(4).bearingFrom().degrees()).isCloseTo(0, within(1e-9));
  }

  /** On circles, ovals and easements, in both forms: no plate shows beside the roadbed. */
  @ParameterizedTest
  @EnumSource(SplicePlate.Form.class)
  void plates_atEveryJoint_lieWithinTheRoadbed(SplicePlate.Form form) {
    Construction.ButtWithPlate joint =
        new Construction.ButtWithPlate(
            new SplicePlate(form, mm(110), mm(16), mm(4), 3, mm(4), true));
    GroundPlan oval =
        new GroundPlan(
            mm(520),
            Optional.of(mm(58)),
            mm(56),
            mm(420),
            Direction.CLOCKWISE,
            Angle.ofDegrees(90));
    HelixPlan onOval =
        new SpecBuilder()
            .ground(oval)
            .segment(60)
            .construction(joint)
            .ascent(Ascent.ofTurnsAndRise(2.5, mm(95)))
            .plan();
    HelixPlan eased =
        new SpecBuilder()
            .circle(24, 5)
            .segment(10)
            .construction(joint)
            .ends(EndPlan.level(mm(500), mm(400)).withEasement(mm(400)))
            .plan();
    for (HelixPlan plan : List.of(onOval, eased)) {
      SplicePlates plates = new SplicePlates(joint, plan.spec().ground(), 1);
      assertThat(plan.joints().all())
          .allSatisfy(at -> assertThat(plates.roomAt(plan.line(), at)).isPositive());
    }
  }

  /** By hand: three screws on 5 in of width stand 1 2/3 in apart, the middle one on the line. */
  @Test
  void screwHoles_areCutThroughThePlate() {
    SplicePlates plates =
        new SplicePlates(
            new Construction.ButtWithPlate(
                new SplicePlate(
                    SplicePlate.Form.RECTANGLE, inches(6), inches(0.5), mm(6), 3, mm(4), true)),
            GroundPlan.circle(inches(28), inches(5.5)),
            7);

    assertThat(plates.screwsAcross().stream().map(Length::inches))
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : Double.compare(a, b))
        .containsExactly(-5 / 3.0, 0.0, 5 / 3.0);
    assertThat(plates.screwsAlong().inches()).isCloseTo(1.5, within(1e-9));
    assertThat(plates.demand().piece().shape().outline().holes()).hasSize(6);
    assertThat(plates.demand().count()).isEqualTo(7);
  }

  /** The base covers every support of the ring, and is drawn as so many pieces as are cut. */
  @ParameterizedTest
  @EnumSource(Form.class)
  void base_inPlace_isTheDemandLaidRound(Form form) {
    BaseFrame base = BaseFrame.under(GroundPlan.circle(inches(28), inches(5.5)), form, inches(1));

    assertThat(base.inPlace()).hasSize(base.demand().count());
    for (int i = 0; i < base.inPlace().size(); i++) {
      Outline next = base.inPlace().get((i + 1) % base.inPlace().size());
      assertThat(Clearance.between(base.inPlace().get(i), next)).isLessThan(1e-6);
      assertThat(base.inPlace().get(i).area())
          .isCloseTo(base.demand().piece().shape().area(), within(1e-6));
    }
  }

  /**
   * By hand, in inches: the octagon's sides lie 31.75 from the centre, its inner ones 24.25 cos
   * 22.5° = 22.404. A lead's block stands at most at x = 30.75: where a lead of 12 ends that is
   * within the side x = 31.75, where one of 24 ends, at about y = -23.25, it is beyond x - y =
   * 31.75 √2 = 44.9.
   */
  @Test
  void base_underLeads_tellsWhatDoesNotStandOnIt() {
    for (int lead : new int[] {12, 24}) {
      HelixPlan plan =
          new SpecBuilder()
              .ends(EndPlan.level(inches(24), inches(lead)).withClimbLead(Length.ZERO))
              .plan();
      BaseFrame base = BaseFrame.under(plan.spec().ground(), Form.OCTAGON, inches(1));
      HelixOrder order = new HelixOrder(plan, List.of(), Optional.of(base));
      Verdict verdict = order.verdicts().get(order.verdicts().size() - 1);
      String told = new VerdictWords(LengthStyle.INCH_FRACTIONS).line(verdict);

      assertThat(base.clear().inches()).isCloseTo(44.808, within(1e-3));
      assertThat(verdict.rule()).isEqualTo(Rule.BASE);
      assertThat(verdict.state()).isEqualTo(lead == 24 ? State.MARGINAL : State.OK);
      // A pad: the roadbed's 5.5 in, or the block's 1.5 in, and 1 in for screws all round.
      assertThat(told)
          .contains(
              lead == 24
                  ? "E1, X1 stand beside the base or over its edge; fix: set a pad under each, 7 1/2 in across the track and 3 1/2 in along it"
                  : "the base reaches under every support");
    }
  }

  /** Ears stand out, the roadbed itself stays as it is; without them the rods go through it. */
  @Test
  void ears_takenAwayAndPutBack_changeOutlinesOnly() {
    Ear ear = new Ear(mm(50), mm(40));
    HelixPlan eared =
        new SpecBuilder().segment(60).supports(SpecBuilder.rods(12, Optional.of(ear))).plan();
    HelixPlan plain = eared.withoutEars().orElseThrow();
    HelixPlan again = plain.withEars(ear).orElseThrow();

    assertThat(again.spec()).isEqualTo(eared.spec());
    assertThat(plain.roadbed().area()).isLessThan(eared.roadbed().area());
    assertThat(plain.joints().all()).isEqualTo(eared.joints().all());
    assertThat(plain.roadbed().pieces()).hasSameSizeAs(eared.roadbed().pieces());
    assertThat(new SpecBuilder().plan().withoutEars()).isEmpty();
  }
}
