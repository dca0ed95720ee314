package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;

import com.sun.management.ThreadMXBean;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.lang.management.ManagementFactory;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One test for each constraint and each level of the choice. All offers are invented. */
class CheapestPurchaseTest {

  private static final SearchSettings QUICK = new SearchSettings(1, Effort.QUICK);
  private static final List<Piece> A = List.of(Shop.piece("A", 1000));
  private static final List<Piece> AB = List.of(Shop.piece("A", 1000), Shop.piece("B", 500));
  private static final SheetStock WHOLE = Shop.sheet("whole", 10_000, 5000);
  private static final SheetStock HALF = Shop.sheet("half", 5_000, 3000);

  private static Purchase choose(
      List<Piece> pieces, int[] wanted, List<Product> products, Layout... layouts) {
    CuttingStockInstance instance =
        new CuttingStockInstance(Shop.demands(pieces, wanted), products, List.of(layouts));
    return new CheapestPurchase(instance, Shop.areaLimits(instance.demands(), products), QUICK)
        .choose();
  }

  private static int[] wanted(int... counts) {
    return counts;
  }

  @Test
  void choose_twoKinds_coversTheDemand() {
    Layout onlyA = Shop.layout(WHOLE, AB, 10, 0);
    Layout both = Shop.layout(WHOLE, AB, 4, 12);
    Purchase purchase = choose(AB, wanted(24, 12), List.of(Product.of(WHOLE)), onlyA, both);
    assertThat(purchase.layouts()).containsExactly(onlyA, onlyA, both);
    assertThat(purchase.surplus()).containsExactly(0, 0);
  }

  /** Four sheets of ten for forty: no search can better that. Bytes, as time is the machine's. */
  @Test
  void choose_startMeetsTheBound_searchesNoFurther() {
    CuttingStockInstance instance =
        new CuttingStockInstance(
            Shop.demands(A, wanted(40)),
            List.of(Product.of(WHOLE)),
            List.of(Shop.layout(WHOLE, A, 10), Shop.layout(WHOLE, A, 9)));
    PackingLimits limits = Shop.areaLimits(instance.demands(), instance.products());
    SearchSettings thorough = new SearchSettings(1, Effort.THOROUGH);
    new CheapestPurchase(instance, limits, QUICK).choose();
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long before = threads.getCurrentThreadAllocatedBytes();

    Purchase purchase = new CheapestPurchase(instance, limits, thorough).choose();

    assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(50_000_000);
    assertThat(purchase.gap()).isEqualTo(Money.ZERO);
    assertThat(purchase.layouts()).hasSize(4);
  }

  @Test
  void choose_cheapSheetScarce_doesNotOverrunTheStock() {
    SheetStock cheap = Shop.limited(Shop.sheet("cheap", 10_000, 1000), 2);
    Purchase purchase =
        choose(
            A,
            wanted(45),
            List.of(Product.of(WHOLE), Product.of(cheap)),
            Shop.layout(WHOLE, A, 10),
            Shop.layout(cheap, A, 10));
    assertThat(purchase.lines())
        .extracting(line -> line.product().stock().name(), PurchaseLine::used)
        .containsExactly(tuple("whole", 3), tuple("cheap", 2));
    assertThat(purchase.gap()).isEqualTo(Money.ZERO);
  }

  @Test
  void choose_stockTooSmall_saysWhatIsMissing() {
    SheetStock two = Shop.limited(WHOLE, 2);
    assertThatThrownBy(
            () -> choose(A, wanted(25), List.of(Product.of(two)), Shop.layout(two, A, 10)))
        .isInstanceOf(ShortageException.class)
        .hasMessage(
            "the sheets in stock do not suffice with the layouts found: still missing 5 of piece"
                + " A");
  }

  @Test
  void choose_minimumBuy_isPaidFor() {
    Product pack = new Product(Shop.sheet("pack", 10_000, 2000), 3, List.of());
    Purchase purchase =
        choose(
            A,
            wanted(10),
            List.of(Product.of(WHOLE), pack),
            Shop.layout(WHOLE, A, 10),
            Shop.layout(pack.stock(), A, 10));
    assertThat(purchase.sheetCost()).isEqualTo(new Money(5000));

    Purchase twice =
        choose(
            A,
            wanted(20),
            List.of(Product.of(WHOLE), pack),
            Shop.layout(WHOLE, A, 10),
            Shop.layout(pack.stock(), A, 10));
    assertThat(twice.lines()).containsExactly(new PurchaseLine(pack, 2, 3, new Money(2000)));
  }

  @Test
  void choose_priceBreakInReach_buysOneMoreForLess() {
    Product product = new Product(WHOLE, 1, List.of(new PriceBreak(5, new Money(3900))));
    Purchase purchase = choose(A, wanted(40), List.of(product), Shop.layout(WHOLE, A, 10));
    assertThat(purchase.lines()).containsExactly(new PurchaseLine(product, 4, 5, new Money(3900)));
    assertThat(purchase.sheetCost()).isEqualTo(new Money(19_500));
    assertThat(purchase.gap()).isEqualTo(Money.ZERO);
  }

  @Test
  void choose_moneyBeforeSheets_takesTwoHalvesIfCheaper() {
    SheetStock cheapHalf = Shop.sheet("half", 5_000, 2400);
    Purchase purchase =
        choose(
            A,
            wanted(10),
            List.of(Product.of(WHOLE), Product.of(cheapHalf)),
            Shop.layout(WHOLE, A, 10),
            Shop.layout(cheapHalf, A, 5));
    assertThat(purchase.sheetCost()).isEqualTo(new Money(4800));
    assertThat(purchase.sheets()).isEqualTo(2);
  }

  @Test
  void choose_equalMoney_takesFewestSheets() {
    SheetStock evenHalf = Shop.sheet("half", 5_000, 2500);
    Purchase purchase =
        choose(
            A,
            wanted(10),
            List.of(Product.of(evenHalf), Product.of(WHOLE)),
            Shop.layout(evenHalf, A, 5),
            Shop.layout(WHOLE, A, 10));
    assertThat(purchase.sheetCost()).isEqualTo(new Money(5000));
    assertThat(purchase.sheets()).isEqualTo(1);
  }

  @Test
  void choose_equalMoneyAndSheets_leavesOneLargeRemnant() {
    Layout full = Shop.layout(WHOLE, A, 10);
    Layout part = Shop.layout(WHOLE, A, 7);
    // 14 wanted: 7 + 7 would leave two scraps, 10 + 4 leaves six tenths of one sheet.
    Purchase purchase = choose(A, wanted(14), List.of(Product.of(WHOLE)), full, part);
    assertThat(purchase.layouts()).containsExactly(full, part);
    assertThat(purchase.trimmed().stream().map(layout -> layout.count(A.get(0))))
        .containsExactly(10, 4);
  }

  @Test
  void choose_equalRemnant_takesFewestPiecesTooMany() {
    Layout full = Shop.layout(WHOLE, A, 10);
    Layout part = Shop.layout(WHOLE, A, 4);
    Purchase purchase = choose(A, wanted(14), List.of(Product.of(WHOLE)), full, part);
    assertThat(purchase.surplus()).containsExactly(0);
  }

  @Test
  void choose_remnantOnHand_isUsedBeforeBuying() {
    SheetStock onHand = Shop.limited(Shop.sheet("remnant", 3_000, 0), 1);
    Purchase purchase =
        choose(
            A,
            wanted(8),
            List.of(Product.of(WHOLE), Product.of(HALF), Product.of(onHand)),
            Shop.layout(WHOLE, A, 10),
            Shop.layout(HALF, A, 5),
            Shop.layout(onHand, A, 3));
    assertThat(purchase.sheetCost()).isEqualTo(new Money(3000));
    assertThat(purchase.lines())
        .extracting(line -> line.product().stock().name())
        .containsExactly("half", "remnant");
  }

  @Test
  void choose_panelsOfOneSheet_areBoughtTogether() {
    SheetStock half = Shop.sheet("half of whole", 4_900, 0);
    Breakdown halves = new Breakdown(List.of(new Panel(half, 2)), 1, new Money(150));
    Product ripped = new Product(WHOLE, 1, List.of(), List.of(halves));
    Purchase purchase = choose(A, wanted(9), List.of(ripped), Shop.layout(half, A, 4));
    // 4 on a half: three halves, so two sheets are bought and cut, at 50.00 + 1.50 each.
    assertThat(purchase.layouts()).hasSize(3);
    assertThat(purchase.sheets()).isEqualTo(2);
    assertThat(purchase.sheetCost()).isEqualTo(new Money(10_300));
    assertThat(purchase.lines().get(0).broken()).containsExactly(new BrokenSheets(halves, 2));
    assertThat(purchase.lines().get(0).cutting()).isEqualTo(new Money(300));
    assertThat(purchase.lines().get(0).cuts()).isEqualTo(2);
  }

  @Test
  void choose_wholeOrRipped_countTogetherForThePriceBreak() {
    SheetStock half = Shop.sheet("half of whole", 4_900, 0);
    List<Breakdown> ways =
        List.of(
            Breakdown.whole(WHOLE), new Breakdown(List.of(new Panel(half, 2)), 1, new Money(100)));
    Product product = new Product(WHOLE, 1, List.of(new PriceBreak(2, new Money(4000))), ways);
    Purchase purchase =
        choose(
            AB,
            wanted(10, 8),
            List.of(product),
            Shop.layout(WHOLE, AB, 10, 0),
            Shop.layout(half, AB, 0, 4));
    // B lies on halves only: one sheet whole and one ripped, both at the price for two.
    assertThat(purchase.sheetCost()).isEqualTo(new Money(8_100));
    assertThat(purchase.lines().get(0).broken()).hasSize(2);
  }

  @Test
  void choose_everythingOnHand_buysNothing() {
    SheetStock onHand = Shop.limited(Shop.sheet("remnant", 3_000, 0), 3);
    Purchase purchase =
        choose(
            A,
            wanted(8),
            List.of(Product.of(WHOLE), Product.of(onHand)),
            Shop.layout(WHOLE, A, 10),
            Shop.layout(onHand, A, 3));
    assertThat(purchase.sheetCost()).isEqualTo(Money.ZERO);
    assertThat(purchase.lines())
        .extracting(line -> line.product().stock().name())
        .containsExactly("remnant");
    assertThat(purchase.gap()).isEqualTo(Money.ZERO);
  }

  @Test
  void choose_sameInputTwice_sameResult() {
    RandomPurchases random = RandomPurchases.large(5, 8, 60, 200);
    Purchase first = new CheapestPurchase(random.instance(), random.limits(), QUICK).choose();
    Purchase second = new CheapestPurchase(random.instance(), random.limits(), QUICK).choose();
    assertThat(second).isEqualTo(first);
    assertThat(second.trimmed()).isEqualTo(first.trimmed());
  }

  @Test
  void gap_provenAndUnproven_isWhatCouldBeSaved() {
    Layout poor = Shop.layout(WHOLE, A, 6);
    Purchase purchase = choose(A, wanted(12), List.of(Product.of(WHOLE)), poor);
    assertThat(purchase.gap()).isEqualTo(Money.ZERO);
    Purchase loose = choose(A, wanted(18), List.of(Product.of(WHOLE)), poor);
    // 18 pieces of a tenth of a sheet: the area allows two sheets, the layout needs three.
    assertThat(loose.gap()).isEqualTo(new Money(5000));
  }
}
