package curvestock.helix.build;

import static curvestock.helix.SpecBuilder.inches;
import static curvestock.helix.SpecBuilder.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.helix.HelixPlan;
import curvestock.helix.SpecBuilder;
import curvestock.helix.build.BaseFrame.Form;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.SplicePlate;
import curvestock.piece.AnnularSector;
import curvestock.units.Angle;
import curvestock.units.Length;
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
}
