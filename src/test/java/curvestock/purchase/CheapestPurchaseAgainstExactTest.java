package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Small random purchases against the optimum that CP-SAT proves. */
class CheapestPurchaseAgainstExactTest {

  static LongStream seeds() {
    return LongStream.range(0, 60);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void choose_smallRandomPurchase_costsTheOptimumAndNotLessThanItsBound(long seed) {
    RandomPurchases random = RandomPurchases.small(seed);
    ExactPurchase.Optimum optimum = new ExactPurchase(random.problem()).solve().orElseThrow();

    Purchase purchase =
        new CheapestPurchase(random.problem(), random.limits(), new SearchSettings(1, Effort.QUICK))
            .choose();

    assertThat(purchase.sheetCost().minorUnits()).as("money").isEqualTo(optimum.money());
    assertThat(purchase.sheets()).as("sheets").isEqualTo((int) optimum.sheets());
    assertThat(purchase.bound().money().minorUnits()).isLessThanOrEqualTo(optimum.money());
    assertThat(purchase.surplus()).allMatch(surplus -> surplus >= 0);
  }
}
