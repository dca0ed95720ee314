package curvestock.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PoseTest {

  /** A quarter turn and 10 to the right, undone by hand: (10, 5) came from (5, 0). */
  @Test
  void inverse_bringsPointsBack() {
    Point back = new Pose(10, 0, Math.PI / 2).inverse().apply(new Point(10, 5));
    assertThat(back.x()).isCloseTo(5, within(1e-12));
    assertThat(back.y()).isCloseTo(0, within(1e-12));
  }
}
