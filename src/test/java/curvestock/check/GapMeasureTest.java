package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.geometry.Clearance;
import curvestock.geometry.Outline;
import curvestock.geometry.Pose;
import curvestock.piece.AnnularSector;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The halving search against the closed forms, which it shares no line with. */
class GapMeasureTest {

  private static double gap(Outline a, Outline b, double ceiling) throws CheckException {
    return GapMeasure.between(TraceShape.of(a).edges(), TraceShape.of(b).edges(), ceiling)
        .distance();
  }

  private static Outline randomShape(Random random) {
    Pose pose =
        new Pose(
            random.nextDouble() * 900,
            random.nextDouble() * 900,
            random.nextDouble() * 2 * Math.PI);
    if (random.nextInt(4) == 0) {
      return Outline.rectangle(20 + random.nextDouble() * 300, 20 + random.nextDouble() * 100)
          .at(pose);
    }
    double radius = 100 + random.nextDouble() * 700;
    double degrees = random.nextInt(6) == 0 ? 360 : 5 + random.nextDouble() * 300;
    return new AnnularSector(
            Length.ofMillimetres(radius),
            Length.ofMillimetres(20 + random.nextDouble() * 150),
            Angle.ofDegrees(degrees))
        .outline()
        .at(pose);
  }

  @Test
  void between_randomShapes_agreesWithTheClosedForms() throws Exception {
    long seed = 7;
    Random random = new Random(seed);
    int apart = 0;
    for (int i = 0; i < 400; i++) {
      Outline a = randomShape(random);
      Outline b = randomShape(random);
      double closed = Math.max(0, Clearance.between(a, b));
      boolean nested =
          closed == 0
              && (TraceShape.of(a).holds(TraceShape.of(b).outer().edges().get(0).at(0.5))
                  || TraceShape.of(b).holds(TraceShape.of(a).outer().edges().get(0).at(0.5)));
      if (!nested) {
        apart += closed > 0 ? 1 : 0;
        assertThat(gap(a, b, 1e9))
            .as("seed %d, case %d", seed, i)
            .isBetween(closed - 1e-9, closed + GapMeasure.ACCURACY + 1e-9);
      }
    }
    assertThat(apart).as("cases with a true gap").isGreaterThan(80);
  }

  @Test
  @Tag("slow")
  void between_concentricRings_isTheDifferenceOfRadii() throws Exception {
    // The hardest case for a search by halving: the gap is the same everywhere.
    Outline outer =
        new AnnularSector(
                Length.ofMillimetres(700), Length.ofMillimetres(100), Angle.ofDegrees(360))
            .outline();
    Outline inner =
        new AnnularSector(
                Length.ofMillimetres(596.825), Length.ofMillimetres(100), Angle.ofDegrees(360))
            .outline();

    assertThat(gap(outer, inner, 1e9)).isCloseTo(3.175, Offset.offset(GapMeasure.ACCURACY + 1e-9));
  }

  @Test
  void between_fartherThanTheCeiling_saysTheCeiling() throws Exception {
    Outline a = Outline.rectangle(10, 10);
    assertThat(gap(a, a.at(new Pose(110, 0, 0)), 50)).isEqualTo(50);
    assertThat(gap(a, a.at(new Pose(55, 0, 0)), 50)).isEqualTo(45);
  }

  @Test
  void between_crossingOutlines_isZeroWithinTheAccuracy() throws Exception {
    Outline a =
        new AnnularSector(Length.ofMillimetres(700), Length.ofMillimetres(100), Angle.ofDegrees(90))
            .outline();
    assertThat(gap(a, a.at(new Pose(3, 4, 0.2)), 1e9)).isBetween(0.0, GapMeasure.ACCURACY);
  }

  @Test
  void windings_pointsInAndOutOfARing_areCounted() {
    TraceShape ring =
        TraceShape.of(
            new AnnularSector(
                    Length.ofMillimetres(100), Length.ofMillimetres(20), Angle.ofDegrees(360))
                .outline());
    assertThat(ring.holds(new curvestock.geometry.Point(0, 0))).isFalse();
    assertThat(ring.holds(new curvestock.geometry.Point(0, 100))).isTrue();
    assertThat(ring.holds(new curvestock.geometry.Point(-90.001, 0))).isTrue();
    assertThat(ring.holds(new curvestock.geometry.Point(-89.999, 0))).isFalse();
    assertThat(ring.holds(new curvestock.geometry.Point(0, 110.001))).isFalse();
  }
}
