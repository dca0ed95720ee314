package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.sheet.SheetStock;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** Seeded random purchases, with limits that are true of all their layouts. */
record RandomPurchases(CuttingStockInstance instance, PackingLimits limits) {

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
        new CuttingStockInstance(demands, products, layouts), Shop.areaLimits(demands, products));
  }

  /**
   * A store that rips sheets: each product leaves it in one or two of these ways, at a price for
   * each sheet: whole, two equal panels, three equal ones, a large and a small one. The first is in
   * any number.
   */
  static RandomPurchases ripped(long seed) {
    Random random = new Random(seed);
    List<Piece> pieces = new ArrayList<>();
    List<Demand> demands = new ArrayList<>();
    for (int i = 0; i < 1 + random.nextInt(4); i++) {
      pieces.add(Shop.piece("P" + i, 300 + random.nextInt(2000)));
      demands.add(new Demand(pieces.get(i), 1 + random.nextInt(15)));
    }
    List<Product> products = new ArrayList<>();
    for (int p = 0; p < 1 + random.nextInt(2); p++) {
      Product whole = product(random, "S" + p, p == 0);
      List<Breakdown> ways = new ArrayList<>();
      int first = random.nextInt(4);
      ways.add(breakdown(random, whole.stock(), first));
      if (random.nextBoolean()) {
        ways.add(breakdown(random, whole.stock(), (first + 1 + random.nextInt(3)) % 4));
      }
      products.add(new Product(whole.stock(), whole.minimumBuy(), whole.breaks(), ways));
    }
    List<Panel> panels =
        products.stream()
            .flatMap(product -> product.breakdowns().stream())
            .flatMap(breakdown -> breakdown.panels().stream())
            .toList();
    List<Layout> layouts = new ArrayList<>();
    for (int j = 0; j < pieces.size() + 3 * panels.size(); j++) {
      Panel panel = panels.get(j < pieces.size() ? 0 : j % panels.size());
      layouts.add(layout(random, panel.stock(), pieces, j));
    }
    return new RandomPurchases(
        new CuttingStockInstance(demands, products, layouts), Shop.areaLimits(demands, products));
  }

  private static Breakdown breakdown(Random random, SheetStock sheet, int way) {
    Money cutting = new Money(random.nextInt(300));
    double area = sheet.area();
    return switch (way) {
      case 0 -> Breakdown.whole(sheet);
      case 1 -> new Breakdown(List.of(panel(sheet, "half", area * 0.49, 2)), 1, cutting);
      case 2 -> new Breakdown(List.of(panel(sheet, "third", area * 0.32, 3)), 2, cutting);
      default ->
          new Breakdown(
              List.of(panel(sheet, "large", area * 0.61, 1), panel(sheet, "small", area * 0.37, 1)),
              1,
              cutting);
    };
  }

  private static Panel panel(SheetStock sheet, String name, double area, int perSheet) {
    return new Panel(Shop.sheet(sheet.name() + " " + name, area, 0), perSheet);
  }

  /** Two purchases that share nothing but the order: pieces and sheets of two thicknesses. */
  static RandomPurchases twoThicknesses(long seed) {
    RandomPurchases thin = small(seed);
    RandomPurchases thick = small(seed + 1000);
    List<Demand> demands = new ArrayList<>();
    List<Product> products = new ArrayList<>();
    List<Layout> layouts = new ArrayList<>();
    List<SheetLimit> limits = new ArrayList<>();
    int kinds = thin.instance.demands().size() + thick.instance.demands().size();
    double thickness = 0;
    for (RandomPurchases part : List.of(thin, thick)) {
      int before = demands.size();
      thickness += 6;
      Map<Piece, Piece> pieces = new HashMap<>();
      for (Demand demand : part.instance.demands()) {
        Piece old = demand.piece();
        Piece piece =
            Piece.of(thickness + old.id(), old.name(), old.shape())
                .ofThickness(Length.ofMillimetres(thickness));
        pieces.put(old, piece);
        demands.add(new Demand(piece, demand.count()));
      }
      for (Product old : part.instance.products()) {
        SheetStock stock = ofThickness(old.stock(), thickness);
        products.add(new Product(stock, old.minimumBuy(), old.breaks()));
        for (Layout layout : part.instance.layouts()) {
          if (layout.sheet().equals(old.stock())) {
            layouts.add(
                new Layout(
                    stock,
                    layout.cutting(),
                    layout.placements().stream()
                        .map(at -> new Placement(pieces.get(at.piece()), at.pose()))
                        .toList()));
          }
        }
      }
      for (SheetLimit limit : part.limits.sheets()) {
        List<Double> areas = new ArrayList<>(Collections.nCopies(kinds, 1.0));
        List<Integer> counts = new ArrayList<>(Collections.nCopies(kinds, 0));
        for (int i = 0; i < limit.areas().size(); i++) {
          areas.set(before + i, limit.areas().get(i));
          counts.set(before + i, limit.counts().get(i));
        }
        limits.add(new SheetLimit(limit.capacity(), areas, counts, limit.proof()));
      }
    }
    return new RandomPurchases(
        new CuttingStockInstance(demands, products, layouts), new PackingLimits(limits));
  }

  private static SheetStock ofThickness(SheetStock stock, double thickness) {
    Length given = Length.ofMillimetres(thickness);
    return new SheetStock(
        thickness + " mm " + stock.name(),
        stock.outline(),
        stock.defects(),
        given,
        given,
        stock.price(),
        stock.available(),
        stock.grain());
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
        new CuttingStockInstance(demands, products, layouts), Shop.areaLimits(demands, products));
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
