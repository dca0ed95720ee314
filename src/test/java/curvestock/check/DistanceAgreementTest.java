package curvestock.check;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The packing engine's distance, the check's and one of forty digits are the same number. */
class DistanceAgreementTest {

  @Test
  @Tag("slow")
  void distance_ofRandomPairs_isTheSameThreeTimes() {
    long seed = 8;
    PosePairs pairs = new PosePairs(seed);
    for (int i = 0; i < 2000; i++) {
      try {
        pairs.next();
      } catch (AssertionError e) {
        throw new AssertionError("seed " + seed + ", pair " + i + ": " + e.getMessage(), e);
      }
    }
    assertThat(pairs.apart()).isGreaterThan(400);
    assertThat(pairs.near()).isGreaterThan(100);
    assertThat(pairs.sharing()).isGreaterThan(400);
  }

  /** By hand: two squares of 10 mm, one turned by 45° and pointing at the other's side. */
  @Test
  void preciseDistance_ofSquareAndCorner_isThatByHand() {
    PreciseShape square = PreciseShape.rectangle(10, 10, 0, 0, 0);
    PreciseShape turned = PreciseShape.rectangle(10, 10, 20 + 10 / Math.sqrt(2), -3, Math.PI / 4);

    assertThat(PreciseShape.distance(square, turned).doubleValue())
        .isCloseTo(10, Offset.offset(1e-12));
  }

  /** By hand: rings of 100 and 200 mm about one centre, 20 mm wide, are 80 mm apart. */
  @Test
  void preciseDistance_ofConcentricRings_isTheDifferenceOfRadii() {
    PreciseShape small = PreciseShape.sector(100, 20, 2 * Math.PI, 5, 5, 1);
    PreciseShape large = PreciseShape.sector(200, 20, 2 * Math.PI, 5, 5, 2);

    assertThat(PreciseShape.distance(small, large).doubleValue())
        .isCloseTo(80, Offset.offset(1e-12));
  }
}
