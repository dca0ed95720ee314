package curvestock.piece;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Loop;
import curvestock.geometry.Outline;
import curvestock.geometry.Point;
import curvestock.geometry.Pose;
import curvestock.geometry.Segment;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class BendTest {

  @Test
  void of_sector_isTheWholeOfIt() {
    AnnularSector sector =
        new AnnularSector(Length.ofMillimetres(500), Length.ofMillimetres(80), Angle.ofDegrees(60));
    assertThat(Bend.of(sector)).contains(new Bend(sector, Pose.HOME));
  }

  /** A straight of 300 mm, then a left bend of 90°, radius 400 mm, 100 mm wide. */
  @Test
  void of_roadbedWithALead_isItsArcWhereItLies() {
    Bend bend = Bend.of(lead(300)).orElseThrow();
    assertThat(bend.sector().radius().millimetres()).isCloseTo(400, within(1e-9));
    assertThat(bend.sector().width().millimetres()).isCloseTo(100, within(1e-9));
    assertThat(bend.sector().sweep().degrees()).isCloseTo(90, within(1e-9));
    Point middle = bend.pose().apply(new Point(400, 0));
    double aside = 400 * Math.sqrt(0.5);
    assertThat(middle.x()).isCloseTo(300 + aside, within(1e-9));
    assertThat(middle.y()).isCloseTo(400 - aside, within(1e-9));
  }

  @Test
  void of_roadbedNearlyAllStraight_isNone() {
    assertThat(Bend.of(lead(1300))).isPresent();
    assertThat(Bend.of(lead(2700))).isEmpty();
  }

  @Test
  void of_plateOrPie_isNone() {
    Length side = Length.ofMillimetres(100);
    assertThat(Bend.of(new Strip(side, side))).isEmpty();
    AnnularSector pie = new AnnularSector(side, side.times(2), Angle.ofDegrees(60));
    assertThat(Bend.of(pie)).isEmpty();
    assertThat(Bend.of(new FreeShape(pie.outline()))).isEmpty();
  }

  private static FreeShape lead(double straight) {
    Point centre = new Point(straight, 400);
    List<Edge> course =
        List.of(
            new Segment(Point.ORIGIN, new Point(straight, 0)),
            new Arc(centre, 400, -Math.PI / 2, Math.PI / 2));
    Arc outer = new Arc(centre, 450, -Math.PI / 2, Math.PI / 2);
    Arc inner = new Arc(centre, 350, 0, -Math.PI / 2);
    Outline outline =
        Outline.of(
            new Loop(
                List.of(
                    new Segment(new Point(0, -50), outer.start()),
                    outer,
                    Segment.joining(outer, inner),
                    inner,
                    new Segment(inner.end(), new Point(0, 50)),
                    new Segment(new Point(0, 50), new Point(0, -50)))));
    return new FreeShape(outline, course);
  }
}
