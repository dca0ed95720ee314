package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Point;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules of SVG 1.1 (second edition), section 8.3.8 'The elliptical arc curve commands' and appendix
 * F.6 'Elliptical arc implementation notes'. The rules were read there; the figures are derived.
 */
class SvgArcTest {

  private static final Offset<Double> CLOSE = Offset.offset(1e-12);

  private static Trace.Round arc(double radius, boolean large, boolean positive) {
    return (Trace.Round)
        SvgArc.of(new Point(0, 0), radius, large, positive, new Point(1, 1)).orElseThrow();
  }

  /** 8.3.8: of four arcs two are large (≥ 180°), and two run in the positive-angle direction. */
  @ParameterizedTest
  @CsvSource({
    "false, true, 0, 1, 90",
    "false, false, 1, 0, -90",
    "true, true, 1, 0, 270",
    "true, false, 0, 1, -270"
  })
  void of_fourFlagPairs_choosesCentreAndSweep(
      boolean large, boolean positive, double x, double y, double degrees) {
    Trace.Round arc = arc(1, large, positive);

    assertThat(arc.centre().x()).isCloseTo(x, CLOSE);
    assertThat(arc.centre().y()).isCloseTo(y, CLOSE);
    assertThat(Math.toDegrees(arc.sweep())).isCloseTo(degrees, Offset.offset(1e-9));
  }

  /** F.6.2: equal end points omit the segment. */
  @Test
  void of_equalEnds_isOmitted() {
    Point end = new Point(3, 4);
    assertThat(SvgArc.of(end, 5, true, true, end)).isEmpty();
  }

  /** F.6.2: a zero radius makes a straight line. */
  @Test
  void of_zeroRadius_isALine() {
    assertThat(SvgArc.of(new Point(0, 0), 0, false, true, new Point(1, 1)))
        .contains(new Trace.Straight(new Point(0, 0), new Point(1, 1)));
  }

  /** F.6.6 step 1: negative radii lose their sign. */
  @Test
  void of_negativeRadius_losesItsSign() {
    assertThat(arc(-1, false, true)).isEqualTo(arc(1, false, true));
  }

  /** F.6.6 step 3: radii too small are scaled up until there is exactly one solution. */
  @Test
  void of_radiusTooSmall_isScaledToAHalfTurn() {
    Trace.Round arc = arc(0.1, false, true);

    assertThat(arc.radius()).isCloseTo(Math.sqrt(0.5), CLOSE);
    assertThat(arc.centre().x()).isCloseTo(0.5, CLOSE);
    assertThat(Math.abs(arc.sweep())).isCloseTo(Math.PI, Offset.offset(1e-9));
  }

  /** The arc starts and ends where the command says. */
  @ParameterizedTest
  @CsvSource({"1,false,true", "2,true,true", "700,false,false", "5,true,false"})
  void of_anyArc_joinsItsEnds(double radius, boolean large, boolean positive) {
    Trace.Round arc = arc(radius, large, positive);

    assertThat(arc.start().distance(new Point(0, 0))).isLessThan(1e-9);
    assertThat(arc.end().distance(new Point(1, 1))).isLessThan(1e-9);
  }
}
