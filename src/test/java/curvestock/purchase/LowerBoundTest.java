package curvestock.purchase;

import static org.assertj.core.api.Assertions.assertThat;

import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LowerBoundTest {

  private static final SheetStock SHEET = Shop.sheet("ply", 10_000, 5000);
  private static final List<Product> ONE = List.of(Product.of(SHEET));
  private static final Money MUCH = new Money(100_000_000);

  private static CostBound bound(
      List<Piece> pieces, int[] wanted, List<Product> products, SheetLimit... limits) {
    List<Layout> layouts =
        IntStream.range(0, pieces.size())
            .mapToObj(
                i ->
                    Shop.layout(
                        products.get(0).stock(),
                        pieces,
                        IntStream.range(0, pieces.size()).map(k -> k == i ? 1 : 0).toArray()))
            .toList();
    CuttingStockInstance instance =
        new CuttingStockInstance(Shop.demands(pieces, wanted), products, layouts);
    return new LowerBound(instance, new PackingLimits(List.of(limits))).prove(MUCH, 10_000);
  }

  /** By hand: the larger of ⌈wanted / count⌉ and ⌈wanted · area / capacity⌉. */
  @ParameterizedTest
  @CsvSource({"13, 700, 13, 1", "13, 700, 14, 2", "14, 900, 23, 3", "20, 500, 41, 3"})
  void prove_oneKind_countOrAreaWhicheverIsStronger(
      int count, double area, int wanted, int sheets) {
    CostBound bound =
        bound(
            List.of(Shop.piece("A", 500)),
            new int[] {wanted},
            ONE,
            new SheetLimit(10_000, List.of(area), List.of(count), "hand"));
    assertThat(bound.sheets()).isEqualTo(sheets);
    assertThat(bound.money()).isEqualTo(new Money(5000L * sheets));
  }

  @Test
  void prove_countsOfTwoKinds_areNotAddedUp() {
    // 4 of A or 4 of B by count, but a sheet may hold 4 of each: their areas are small.
    CostBound bound =
        bound(
            List.of(Shop.piece("A", 500), Shop.piece("B", 500)),
            new int[] {4, 4},
            ONE,
            new SheetLimit(10_000, List.of(500.0, 500.0), List.of(4, 4), "hand"));
    assertThat(bound.sheets()).isEqualTo(1);
  }

  @Test
  void prove_piecesAboveHalfASheet_oneASheet() {
    // Areas of 0.51 to 0.6 of a sheet: by area alone 3 sheets would do for 5 pieces.
    CostBound bound =
        bound(
            List.of(Shop.piece("A", 5100), Shop.piece("B", 6000)),
            new int[] {3, 2},
            ONE,
            new SheetLimit(10_000, List.of(5100.0, 6000.0), List.of(9, 9), "hand"));
    assertThat(bound.sheets()).isEqualTo(5);
  }

  @Test
  void prove_cheapSheetInShortStock_countsItOnlySoOften() {
    SheetStock cheap = Shop.limited(Shop.sheet("cheap", 10_000, 1000), 2);
    SheetLimit ten = new SheetLimit(10_000, List.of(1000.0), List.of(10), "hand");
    CostBound bound =
        bound(
            List.of(Shop.piece("A", 1000)),
            new int[] {45},
            List.of(Product.of(SHEET), Product.of(cheap)),
            ten,
            ten);
    assertThat(bound.money()).isEqualTo(new Money(3 * 5000 + 2 * 1000));
  }

  @Test
  void prove_manyRemnantsOnHand_countsWhatMustStillBeBought() {
    List<Product> products = new ArrayList<>(List.of(Product.of(SHEET)));
    List<SheetLimit> limits = new ArrayList<>();
    limits.add(new SheetLimit(10_000, List.of(1000.0, 700.0), List.of(10, 14), "hand"));
    for (int r = 0; r < 20; r++) {
      double area = 2000 + 100 * r;
      products.add(Product.of(Shop.limited(Shop.sheet("remnant " + r, area, 0), 1)));
      limits.add(new SheetLimit(area, List.of(1000.0, 700.0), List.of(3, 5), "hand"));
    }
    CostBound bound =
        bound(
            List.of(Shop.piece("A", 1000), Shop.piece("B", 700)),
            new int[] {60, 100},
            products,
            limits.toArray(SheetLimit[]::new));
    // By hand: 130,000 mm² wanted, 59,000 on hand, so 71,000 to buy: 8 sheets.
    assertThat(bound.money()).isGreaterThanOrEqualTo(new Money(8 * 5000));
  }

  @Test
  void prove_priceBreaksAndMinimum_trueTotals() {
    Product product = new Product(SHEET, 2, List.of(new PriceBreak(5, new Money(3900))));
    SheetLimit ten = new SheetLimit(10_000, List.of(1000.0), List.of(10), "hand");
    List<Piece> pieces = List.of(Shop.piece("A", 1000));
    assertThat(bound(pieces, new int[] {40}, List.of(product), ten).money())
        .isEqualTo(new Money(5 * 3900));
    assertThat(bound(pieces, new int[] {7}, List.of(product), ten).money())
        .isEqualTo(new Money(2 * 5000));
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  /**
   * Every layout that the limits allow is listed, so that CP-SAT's optimum is the least that the
   * limits permit at all: the hardest judge of the bound.
   */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void prove_allAllowedLayouts_notAboveTheOptimum(long seed) {
    Random random = new Random(seed);
    int kinds = 1 + random.nextInt(3);
    List<Piece> pieces = new ArrayList<>();
    int[] wanted = new int[kinds];
    for (int i = 0; i < kinds; i++) {
      pieces.add(Shop.piece("P" + i, 1200 + random.nextInt(4000)));
      wanted[i] = 1 + random.nextInt(15);
    }
    List<Demand> demands = Shop.demands(pieces, wanted);
    List<Product> products = new ArrayList<>(List.of(new Product(SHEET, 1, List.of())));
    if (random.nextBoolean()) {
      products.add(Product.of(Shop.limited(Shop.sheet("half", 5_000, 2300), random.nextInt(5))));
    }
    if (random.nextBoolean()) {
      products.add(
          new Product(
              Shop.sheet("large", 15_000, 7600), 2, List.of(new PriceBreak(4, new Money(7100)))));
    }
    PackingLimits limits = Shop.areaLimits(demands, products);
    List<Layout> layouts = new ArrayList<>();
    for (int p = 0; p < products.size(); p++) {
      allowed(products.get(p), limits.sheets().get(p), pieces, new int[kinds], 0, layouts);
    }
    CuttingStockInstance instance = new CuttingStockInstance(demands, products, layouts);

    CostBound bound = new LowerBound(instance, limits).prove(MUCH, 10_000);
    ExactPurchase.Optimum optimum = new ExactPurchase(instance).solve().orElseThrow();

    assertThat(bound.money().minorUnits())
        .isLessThanOrEqualTo(optimum.money())
        .isGreaterThanOrEqualTo(optimum.money() * 3 / 4);
    assertThat((long) bound.sheets()).isLessThanOrEqualTo(optimum.sheets());
    assertInequalitiesHold(bound, instance);
  }

  private static void allowed(
      Product product, SheetLimit limit, List<Piece> pieces, int[] counts, int i, List<Layout> to) {
    double area = IntStream.range(0, i).mapToDouble(k -> counts[k] * limit.areas().get(k)).sum();
    if (i == pieces.size()) {
      if (area > 0) {
        to.add(Shop.layout(product.stock(), pieces, counts));
      }
      return;
    }
    for (int n = 0;
        n <= limit.counts().get(i) && area + n * limit.areas().get(i) <= limit.capacity();
        n++) {
      counts[i] = n;
      allowed(product, limit, pieces, counts, i + 1, to);
    }
    counts[i] = 0;
  }

  /** Each inequality is an inequality that every single layout obeys. */
  private static void assertInequalitiesHold(CostBound bound, CuttingStockInstance instance) {
    assertThat(bound.inequalities()).isNotEmpty();
    for (DualFeasibleInequality inequality : bound.inequalities()) {
      for (Layout layout : instance.layouts()) {
        int[] counts = instance.counts(layout);
        long weight =
            IntStream.range(0, counts.length)
                .mapToLong(
                    i ->
                        inequality.weights().get(i)
                            * Math.min(counts[i], instance.demands().get(i).count()))
                .sum();
        assertThat(weight)
            .as(inequality.name())
            .isLessThanOrEqualTo(inequality.perSheet().get(instance.panelOf(layout)));
      }
    }
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void exactOptimumAndBound_oneMoreSheetInStock_neverRise(long seed) {
    RandomPurchases random = RandomPurchases.small(seed);
    CuttingStockInstance more = withOneMore(random.instance());
    Optional<ExactPurchase.Optimum> before = new ExactPurchase(random.instance()).solve();
    Optional<ExactPurchase.Optimum> after = new ExactPurchase(more).solve();
    assertThat(after.orElseThrow().money()).isLessThanOrEqualTo(before.orElseThrow().money());
    assertThat(chosen(more, random.limits())).isLessThanOrEqualTo(chosen(random));
  }

  private static Money chosen(RandomPurchases random) {
    return chosen(random.instance(), random.limits());
  }

  private static Money chosen(CuttingStockInstance instance, PackingLimits limits) {
    return new CheapestPurchase(instance, limits, new SearchSettings(1, Effort.QUICK))
        .choose()
        .sheetCost();
  }

  private static CuttingStockInstance withOneMore(CuttingStockInstance instance) {
    List<Product> products = new ArrayList<>();
    List<Layout> layouts = new ArrayList<>();
    for (Product product : instance.products()) {
      SheetStock stock =
          product.stock().available().isPresent()
              ? Shop.limited(product.stock(), product.available() + 1)
              : product.stock();
      products.add(new Product(stock, product.minimumBuy(), product.breaks()));
      instance.layouts().stream()
          .filter(layout -> layout.sheet().equals(product.stock()))
          .forEach(layout -> layouts.add(new Layout(stock, layout.cutting(), layout.placements())));
    }
    return new CuttingStockInstance(instance.demands(), products, layouts);
  }
}
