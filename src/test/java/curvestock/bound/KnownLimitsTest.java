package curvestock.bound;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.piece.AnnularSector;
import curvestock.sheet.Cutting;
import curvestock.units.Angle;
import curvestock.units.Length;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class KnownLimitsTest {

  private final AtomicInteger worked = new AtomicInteger();

  private double limit(double width, int below) {
    AnnularSector sector =
        new AnnularSector(
            Length.ofMillimetres(613), Length.ofMillimetres(width), Angle.ofDegrees(77));
    Length small = Length.ofMillimetres(3);
    return KnownLimits.of(
        new KnownLimits.Asked(
            sector,
            Length.ofMillimetres(2000),
            Length.ofMillimetres(1000),
            Cutting.leaving(small, small, small),
            EdgeWeightBound.Grain.COARSE,
            below),
        worked::incrementAndGet);
  }

  @Test
  void theSameQuestionIsWorkedOutOnce() {
    double first = limit(71, 20);

    assertThat(limit(71, 20)).isEqualTo(first);
    assertThat(worked).hasValue(1);
    assertThat(limit(72, 20)).isNotEqualTo(first);
    assertThat(limit(71, 19)).isNotEqualTo(first);
    assertThat(worked).hasValue(3);
  }
}
