package curvestock.machine;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.drawing.SampleLayouts;
import curvestock.geometry.Point;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class DowelPlacesTest {

  /** Both must stand in the waste on either side, in the same two holes. */
  @Test
  void dowels_lieInTheWasteAndFitTheTurnedSheet() {
    Layout layout = SampleLayouts.mixed();
    Turning turning = DowelPlaces.of(layout, Optional.empty(), true);

    assertThat(turning.dowels()).hasSize(2);
    double radius = turning.diameter().millimetres() / 2;
    for (Point dowel : turning.dowels()) {
      Point turned = turning.line().apply(dowel);
      assertThat(turning.dowels()).anyMatch(other -> other.distance(turned) < 1e-6);
      for (Placement placement : layout.placements()) {
        assertThat(placement.outline().contains(dowel)).isFalse();
        assertThat(placement.outline().depth(dowel))
            .isGreaterThan(radius + layout.cutting().kerf().millimetres());
      }
      assertThat(layout.sheet().outline().contains(dowel)).isTrue();
      assertThat(layout.sheet().outline().depth(dowel)).isGreaterThan(radius);
    }
    assertThat(turning.dowels().get(0).distance(turning.dowels().get(1))).isGreaterThan(1000);
  }

  @Test
  void mirror_turnsPointsBack() {
    Turning turning = DowelPlaces.of(SampleLayouts.stack(), Optional.empty(), false);
    Point point = new Point(12, 34);

    assertThat(turning.line().apply(turning.line().apply(point))).isEqualTo(point);
  }
}
