package curvestock.helix.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.geometry.Arc;
import curvestock.geometry.Edge;
import curvestock.geometry.Point;
import curvestock.helix.spec.Direction;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EasementTest {

  private static final Waypoint RING = new Waypoint(new Point(700, 100), 1.1);

  /** Lengths of NEM 113 (2016) for H0 and N, and one much longer than anybody needs. */
  @ParameterizedTest
  @CsvSource({
    "700, 390, 4",
    "350, 275, 4",
    "1000, 465, 4",
    "300, 170, 4",
    "660, 100, 2",
    "700, 1200, 8"
  })
  void arcs_ofAnEasement_lieWithinATenthOfAMillimetreOfTheSpiral(
      double radius, double length, int arcs) {
    List<Edge> edges = Easement.outOf(RING, radius, length, Direction.COUNTER_CLOCKWISE);

    double worst = 0;
    for (Waypoint place : Easement.spiral(RING, radius, length, 1, 400)) {
      worst = Math.max(worst, distance(edges, place.point()));
    }
    assertThat(worst).isLessThanOrEqualTo(Easement.TOLERANCE * 1.02);
    assertThat(edges).hasSize(arcs);
  }

  /** Even the distance from an arc whose angle covers the point, else from its ends. */
  private static double distance(List<Edge> edges, Point point) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      Arc arc = (Arc) edge;
      double ahead = point.minus(arc.centre()).angle() - arc.startAngle();
      double within = Math.IEEEremainder(ahead - arc.sweep() / 2, 2 * Math.PI);
      if (Math.abs(within) <= Math.abs(arc.sweep()) / 2) {
        least = Math.min(least, Math.abs(point.distance(arc.centre()) - arc.radius()));
      }
      least = Math.min(least, Math.min(point.distance(arc.start()), point.distance(arc.end())));
    }
    return least;
  }

  /** A spiral of length L onto a radius R turns through L/2R (railway handbooks). */
  @Test
  void spiral_atItsEnd_hasTurnedThroughHalfItsLengthOverTheRadius() {
    List<Waypoint> places = Easement.spiral(RING, 700, 390, 1, 5);

    assertThat(places.get(4).heading() - RING.heading()).isCloseTo(390 / 1400.0, within(1e-12));
  }

  /**
   * The first terms of the spiral's series, x = L·(1 − θ²/10 + θ⁴/216 − ...), y = L·(θ/3 − θ³/42 +
   * θ⁵/1320) with θ = L/2R (railway handbooks).
   */
  @Test
  void spiral_seenFromItsStraightEnd_agreesWithTheSeries() {
    double theta = 390 / 1400.0;
    Waypoint end = Easement.spiral(RING, 700, 390, 1, 3).get(2);
    Point back = RING.point().minus(end.point());
    Point ahead = Point.polar(1, end.heading() + Math.PI);

    double x =
        390 * (1 - theta * theta / 10 + Math.pow(theta, 4) / 216 - Math.pow(theta, 6) / 9360);
    double y = 390 * (theta / 3 - Math.pow(theta, 3) / 42 + Math.pow(theta, 5) / 1320);
    assertThat(back.dot(ahead)).isCloseTo(x, within(1e-5));
    assertThat(Math.abs(ahead.cross(back))).isCloseTo(y, within(1e-5));
  }

  /** Each arc goes on where, and in the direction in which, the last one ended. */
  @Test
  void arcs_followOneAnother_withoutAKink() {
    List<Edge> edges = Easement.into(RING, 700, 390, Direction.CLOCKWISE);

    for (int i = 1; i < edges.size(); i++) {
      Arc last = (Arc) edges.get(i - 1);
      Arc next = (Arc) edges.get(i);
      assertThat(next.start().distance(last.end())).isLessThan(1e-9);
      double turned = next.startAngle() - last.startAngle() - last.sweep();
      assertThat(Math.abs(Math.sin(turned / 2))).isLessThan(1e-9);
      assertThat(Math.signum(next.sweep())).isEqualTo(-1);
    }
    Arc last = (Arc) edges.get(edges.size() - 1);
    assertThat(last.end().distance(RING.point())).isLessThan(1e-9);
  }
}
