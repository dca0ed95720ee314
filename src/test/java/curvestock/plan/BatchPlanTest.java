package curvestock.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import curvestock.job.Batch;
import curvestock.job.Job;
import curvestock.job.JobReader;
import curvestock.units.Money;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class BatchPlanTest {

  private static Job job(String title, int radius) {
    return JobReader.read(
        """
        curvestock: 1
        title: %s
        units: in
        sheets:
          - {name: panel, size: 24x16, thickness: 1/2, price: 10.01}
        cutting: {kerf: 1/8, margin: 1/4}
        helix: {turns: 1/2, radius: %d, width: 3, segment-angle: 60}
        search: {effort: quick}
        """
            .formatted(title, radius),
        title);
  }

  @Test
  void shares_ofTwoJobs_splitTheCostByArea_toTheCent_andLabelsSayWhose() throws Exception {
    Batch batch = Batch.of(List.of(job("one", 9), job("two", 12)));
    BatchPlan plan = new BatchPlan(batch, new Planner(batch.together(), PlanListener.NONE).plan());

    List<BatchPlan.Share> shares = plan.shares();
    assertThat(shares).extracting(BatchPlan.Share::pieces).containsExactly(3, 3);
    assertThat(shares.get(0).cost().plus(shares.get(1).cost()))
        .isEqualTo(plan.plan().purchase().sheetCost())
        .isEqualTo(new Money(1001));
    // Widened by hand: A + P·d + π·d² with d half the kerf; A = t·R·w, P = 2·t·R + 2·w.
    double small = widened(9);
    double large = widened(12);
    assertThat(shares.get(0).part()).isCloseTo(small / (small + large), within(1e-9));
    assertThat(shares).allSatisfy(share -> assertThat(share.sheets()).containsExactly(1));
    assertThat(plan.labels().get(0))
        .containsExactlyInAnyOrder("A.S-1", "A.S-2", "A.S-3", "B.S-1", "B.S-2", "B.S-3");
  }

  private static double widened(double radius) {
    double t = Math.PI / 3;
    double d = 1 / 16.0;
    return t * radius * 3 + (2 * t * radius + 2 * 3) * d + Math.PI * d * d;
  }

  @Test
  void split_ofAnyAmount_addsUpAndIsWithinACentOfTheExactPart() {
    SplittableRandom random = new SplittableRandom(7);
    for (int k = 0; k < 500; k++) {
      double[] weights = random.doubles(1 + random.nextInt(20), 0.01, 100).toArray();
      long amount = random.nextLong(100_000);
      long[] parts = BatchPlan.split(amount, weights);

      assertThat(LongStream.of(parts).sum()).as("seed 7, case %d", k).isEqualTo(amount);
      double all = java.util.stream.DoubleStream.of(weights).sum();
      for (int i = 0; i < parts.length; i++) {
        assertThat((double) parts[i]).isCloseTo(amount * weights[i] / all, within(1.0));
      }
    }
  }
}
