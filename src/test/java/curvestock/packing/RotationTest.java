package curvestock.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Held against StrictMath, which is fdlibm itself. */
class RotationTest {

  private static final Offset<Double> ROUNDING = Offset.offset(1e-15);

  @Test
  void turn_anyAngle_agreesWithStrictMath() {
    SplittableRandom random = new SplittableRandom(3);
    Rotation rotation = new Rotation();
    for (int k = 0; k < 20_000; k++) {
      double angle = (random.nextDouble() - 0.5) * (k % 2 == 0 ? 8 : 2000);
      rotation.turn(angle);
      assertThat(rotation.cos).as("cos %s", angle).isCloseTo(StrictMath.cos(angle), ROUNDING);
      assertThat(rotation.sin).as("sin %s", angle).isCloseTo(StrictMath.sin(angle), ROUNDING);
    }
  }

  @Test
  void turn_quarters_areExactToRounding() {
    Rotation rotation = new Rotation();
    for (int quarter = -8; quarter <= 8; quarter++) {
      rotation.turn(quarter * Math.PI / 2);
      assertThat(rotation.cos * rotation.cos + rotation.sin * rotation.sin).isCloseTo(1, ROUNDING);
      assertThat(rotation.sin).isCloseTo(StrictMath.sin(quarter * Math.PI / 2), ROUNDING);
    }
  }
}
