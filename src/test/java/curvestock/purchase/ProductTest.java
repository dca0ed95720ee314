package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import curvestock.units.Money;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ProductTest {

  /** 10.00 each; from 5 on 9.00 each, from 10 on 8.00 each; at least 2. */
  private static final Product BIRCH =
      new Product(
          Shop.sheet("birch", 10_000, 1000),
          2,
          List.of(new PriceBreak(5, new Money(900)), new PriceBreak(10, new Money(800))));

  @ParameterizedTest(name = "{0} used: buy {1} for {2}")
  @CsvSource({
    "0, 0, 0",
    "1, 2, 2000", // the minimum buy
    "2, 2, 2000",
    "4, 4, 4000", // 5 for 45.00 are dearer
    "5, 5, 4500",
    "8, 8, 7200",
    "9, 10, 8000", // 10 for 80.00 instead of 9 for 81.00
    "11, 11, 8800"
  })
  void toBuy_minimumAndBreaks_cheapestNumber(int used, int bought, long cost) {
    assertThat(BIRCH.toBuy(used)).isEqualTo(bought);
    assertThat(BIRCH.cost(used)).isEqualTo(new Money(cost));
  }

  @Test
  void toBuy_breakBeyondStock_isNotReached() {
    Product few =
        new Product(
            Shop.limited(Shop.sheet("birch", 10_000, 1000), 9),
            1,
            List.of(new PriceBreak(10, new Money(100))));
    assertThat(few.toBuy(9)).isEqualTo(9);
    assertThat(few.leastPrice()).isEqualTo(new Money(1000));
  }

  @Test
  void cost_moreSheets_neverFalls() {
    for (int used = 1; used < 30; used++) {
      assertThat(BIRCH.cost(used)).isGreaterThanOrEqualTo(BIRCH.cost(used - 1));
    }
  }

  @Test
  void new_minimumAboveStock_isRefused() {
    assertThatThrownBy(
            () -> new Product(Shop.limited(Shop.sheet("birch", 10_000, 1000), 3), 4, List.of()))
        .hasMessage("minimum buy of birch must not exceed the 3 available, but was 4");
  }

  @Test
  void new_breakThatIsDearer_isRefused() {
    assertThatThrownBy(
            () ->
                new Product(
                    Shop.sheet("birch", 10_000, 1000),
                    1,
                    List.of(new PriceBreak(5, new Money(1100)))))
        .hasMessageContaining("rise in quantity and fall in price, but 5 for 11.00 each");
  }
}
