package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Small random purchases against the optimum that CP-SAT proves. */
class CheapestPurchaseAgainstExactTest {

  static Stream<Arguments> purchases() {
    return Stream.concat(
        LongStream.range(0, 60)
            .mapToObj(seed -> Arguments.of(Effort.QUICK, seed, RandomPurchases.small(seed))),
        LongStream.range(0, 15)
            .mapToObj(
                seed -> Arguments.of(Effort.NORMAL, seed, RandomPurchases.withRemnants(seed))));
  }

  @ParameterizedTest(name = "{0}, seed {1}")
  @MethodSource("purchases")
  void choose_randomPurchase_costsTheOptimumAndNotLessThanItsBound(
      Effort effort, long seed, RandomPurchases random) {
    ExactPurchase.Optimum optimum = new ExactPurchase(random.problem()).solve().orElseThrow();

    Purchase purchase =
        new CheapestPurchase(random.problem(), random.limits(), new SearchSettings(1, effort))
            .choose();

    assertThat(purchase.sheetCost().minorUnits())
        .as("money, %s, seed %d", effort, seed)
        .isEqualTo(optimum.money());
    assertThat(purchase.sheets()).as("sheets").isEqualTo((int) optimum.sheets());
    assertThat(purchase.bound().money().minorUnits()).isLessThanOrEqualTo(optimum.money());
    assertThat(purchase.surplus()).allMatch(surplus -> surplus >= 0);
    assertThat(purchase.lines()).allMatch(line -> line.bought() <= line.product().available());
    assertExactlyWhatIsWanted(purchase);
  }

  private static void assertExactlyWhatIsWanted(Purchase purchase) {
    for (Demand demand : purchase.problem().demands()) {
      assertThat(purchase.trimmed().stream().mapToInt(layout -> layout.count(demand.piece())).sum())
          .isEqualTo(demand.count());
    }
  }
}
