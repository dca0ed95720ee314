package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BoundedKnapsackBoundTest {

  static LongStream seeds() {
    return LongStream.range(0, 50);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void weight_threeKinds_equalsTryingEverything(long seed) {
    Random random = new Random(seed);
    long[] weights = new long[3];
    int[] most = new int[3];
    List<Double> areas = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      weights[i] = random.nextInt(20);
      most[i] = random.nextInt(6);
      areas.add(10.0 + random.nextInt(60));
    }
    SheetLimit limit =
        new SheetLimit(100 + random.nextInt(100), areas, List.of(most[0], most[1], most[2]), "x");
    long best = 0;
    for (int a = 0; a <= most[0]; a++) {
      for (int b = 0; b <= most[1]; b++) {
        for (int c = 0; c <= most[2]; c++) {
          if (a * areas.get(0) + b * areas.get(1) + c * areas.get(2) <= limit.capacity()) {
            best = Math.max(best, a * weights[0] + b * weights[1] + c * weights[2]);
          }
        }
      }
    }
    assertThat(new BoundedKnapsackBound(limit, weights, new int[] {9, 9, 9}).weight())
        .isEqualTo(best);
  }

  @Test
  void weight_pieceThatJustFits_roundingDoesNotLoseIt() {
    double third = 1.0 / 3;
    SheetLimit limit =
        new SheetLimit(third + third + third, List.of(third), List.of(5), "three thirds");
    assertThat(new BoundedKnapsackBound(limit, new long[] {1}, new int[] {5}).weight())
        .isEqualTo(3);
  }

  /** Too many combinations to try: the answer may then be too large, never too small. */
  @Test
  void weight_twentyKindsCutShort_notBelowARealSheet() {
    Random random = new Random(7);
    List<Double> areas = new ArrayList<>();
    long[] weights = new long[20];
    for (int i = 0; i < 20; i++) {
      areas.add(1000.0 + random.nextInt(500));
      weights[i] = 1_000_000L + random.nextInt(500_000);
    }
    SheetLimit limit = new SheetLimit(100_000, areas, Collections.nCopies(20, 9), "twenty kinds");
    long bound =
        new BoundedKnapsackBound(limit, weights, IntStream.generate(() -> 9).limit(20).toArray())
            .weight();
    for (int tries = 0; tries < 2000; tries++) {
      double room = limit.capacity();
      int[] counts = new int[20];
      long weight = 0;
      for (int n = 0; n < 200; n++) {
        int i = random.nextInt(20);
        if (counts[i] < 9 && areas.get(i) <= room) {
          counts[i]++;
          room -= areas.get(i);
          weight += weights[i];
        }
      }
      assertThat(weight).isLessThanOrEqualTo(bound);
    }
  }
}
