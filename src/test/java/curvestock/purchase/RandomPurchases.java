package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Seeded random purchases, with limits that are true of all their layouts. */
record RandomPurchases(PurchaseProblem problem, PackingLimits limits) {

  /** 1 to 5 kinds, 1 to 3 sheets with terms, 4 to 15 layouts. */
  static RandomPurchases small(long seed) {
    Random random = new Random(seed);
    return of(random, 1 + random.nextInt(5), 1 + random.nextInt(3), 4 + random.nextInt(12), 30);
  }

  /** A shop with a rack of twelve different remnants, each there once and free. */
  static RandomPurchases withRemnants(long seed) {
    Random random = new Random(seed);
    List<Piece> pieces = new ArrayList<>();
    List<Demand> demands = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      pieces.add(Shop.piece("P" + i, 700 + random.nextInt(2000)));
      demands.add(new Demand(pieces.get(i), 5 + random.nextInt(20)));
    }
    List<Product> products = new ArrayList<>(List.of(product(random, "S0", true)));
    for (int r = 0; r < 12; r++) {
      int area = 2800 + random.nextInt(2000);
      products.add(Product.of(Shop.limited(Shop.sheet("remnant " + r, area, 0), 1)));
    }
    List<Layout> layouts = new ArrayList<>();
    for (int j = 0; j < 2 * products.size() + 6; j++) {
      Product product = products.get(j < 6 ? 0 : (j - 6) % products.size());
      layouts.add(layout(random, product.stock(), pieces, j));
    }
    return new RandomPurchases(
        new PurchaseProblem(demands, products, layouts), Shop.areaLimits(demands, products));
  }

  /** A club's order: many kinds and layouts. */
  static RandomPurchases large(long seed, int kinds, int layouts, int pieces) {
    return of(new Random(seed), kinds, 3, layouts, 2 * pieces / kinds);
  }

  private static RandomPurchases of(
      Random random, int kinds, int sheets, int columns, int mostWanted) {
    List<Piece> pieces = new ArrayList<>();
    List<Demand> demands = new ArrayList<>();
    for (int i = 0; i < kinds; i++) {
      pieces.add(Shop.piece("P" + i, 400 + random.nextInt(4000)));
      demands.add(new Demand(pieces.get(i), 1 + random.nextInt(mostWanted)));
    }
    List<Product> products = new ArrayList<>();
    for (int p = 0; p < sheets; p++) {
      products.add(product(random, "S" + p, p == 0));
    }
    List<Layout> layouts = new ArrayList<>();
    for (int j = 0; j < Math.max(columns, kinds); j++) {
      Product product = products.get(j < kinds ? 0 : random.nextInt(sheets));
      layouts.add(layout(random, product.stock(), pieces, j));
    }
    return new RandomPurchases(
        new PurchaseProblem(demands, products, layouts), Shop.areaLimits(demands, products));
  }

  /** The first product is in any number, so that some purchase exists. */
  private static Product product(Random random, String name, boolean any) {
    int area = any ? 10_000 : 5_000 + 2_500 * random.nextInt(3);
    boolean limited = !any && random.nextInt(2) == 0;
    boolean onHand = limited && random.nextInt(2) == 0;
    long price = onHand ? 0 : area / 10 + random.nextInt(500);
    SheetStock sheet = Shop.sheet(name, area, price);
    int available = limited ? 1 + random.nextInt(6) : Integer.MAX_VALUE;
    List<PriceBreak> breaks = new ArrayList<>();
    if (price > 0 && random.nextInt(2) == 0) {
      breaks.add(new PriceBreak(3 + random.nextInt(4), new Money(price * 9 / 10)));
      breaks.add(new PriceBreak(8 + random.nextInt(6), new Money(price * 8 / 10)));
    }
    int minimum = random.nextInt(3) == 0 ? Math.min(available, 1 + random.nextInt(4)) : 1;
    return new Product(limited ? Shop.limited(sheet, available) : sheet, minimum, breaks);
  }

  /** Fills the sheet at random; the first layouts each begin with a piece of their own. */
  private static Layout layout(Random random, SheetStock sheet, List<Piece> pieces, int j) {
    int[] counts = new int[pieces.size()];
    double room = sheet.area();
    int kind = j < pieces.size() ? j : random.nextInt(pieces.size());
    for (int tries = 0; tries < 12; tries++) {
      double area = pieces.get(kind).shape().area();
      if (area <= room) {
        counts[kind]++;
        room -= area;
      }
      kind = random.nextInt(pieces.size());
    }
    return Shop.layout(sheet, pieces, counts);
  }
}
