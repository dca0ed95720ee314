package curvestock.bound;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.packing.Control;
import curvestock.units.Length;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class KnownProofsTest {

  private record Asked(Length length, int below) {}

  private final AtomicInteger worked = new AtomicInteger();

  private double limit(double length, int below, Control control) {
    return KnownProofs.of(
        new Asked(Length.ofMillimetres(length), below), control, worked::incrementAndGet);
  }

  @Test
  void theSameQuestionIsWorkedOutOnce() {
    double first = limit(613, 20, Control.NONE);

    assertThat(limit(613, 20, Control.NONE)).isEqualTo(first);
    assertThat(worked).hasValue(1);
    assertThat(limit(614, 20, Control.NONE)).isNotEqualTo(first);
    assertThat(limit(613, 19, Control.NONE)).isNotEqualTo(first);
    assertThat(worked).hasValue(3);
  }

  @Test
  void whatWasStoppedIsNotKept() {
    Control stopped = () -> true;

    limit(99, 1, stopped);
    limit(99, 1, Control.NONE);

    assertThat(worked).hasValue(2);
  }
}
