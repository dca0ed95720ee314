package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.units.Length;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What is wanted, what is on offer, and the packed layouts to choose from.
 *
 * <p>A layout may hold more of a piece than is wanted: what is too many is left uncut, so a layout
 * stands for all its subsets.
 *
 * @param demands each piece once
 * @param products each sheet once, all of one thickness within {@link #SAME_THICKNESS}
 * @param layouts each on the sheet of one of the products; each may be used many times
 */
public record PurchaseProblem(List<Demand> demands, List<Product> products, List<Layout> layouts) {

  /**
   * How far the measured thicknesses of the products may lie apart: 1/32 in, half the width of the
   * band that PS 1-19 allows a panel of 1/4 to 3/4 in.
   */
  public static final Length SAME_THICKNESS = Length.ofMillimetres(25.4 / 32);

  /**
   * @throws IllegalArgumentException if a list is empty, a piece or sheet occurs twice, thicknesses
   *     differ, a layout is not on a product's sheet or holds a piece nobody wants, or a wanted
   *     piece is in no layout
   */
  public PurchaseProblem {
    demands = List.copyOf(demands);
    products = List.copyOf(products);
    layouts = List.copyOf(layouts);
    requireSome(demands, "wanted piece");
    requireSome(products, "sheet on offer");
    requireOnce(demands.stream().map(demand -> demand.piece().id()).toList(), "piece");
    requireOnce(products.stream().map(product -> product.stock().name()).toList(), "sheet");
    requireOneThickness(products);
    requireKnown(demands, products, layouts);
  }

  /** How many of each wanted piece, in the order of the demands, the layout holds. */
  public int[] counts(Layout layout) {
    return demands.stream().mapToInt(demand -> layout.count(demand.piece())).toArray();
  }

  /** Index in {@link #products} of the sheet that the layout lies on. */
  public int productOf(Layout layout) {
    return productOf(products, layout);
  }

  private static int productOf(List<Product> products, Layout layout) {
    for (int p = 0; p < products.size(); p++) {
      if (products.get(p).stock().equals(layout.sheet())) {
        return p;
      }
    }
    throw new IllegalArgumentException(
        "every layout must lie on a sheet on offer, but one lies on " + layout.sheet().name());
  }

  private static void requireSome(List<?> list, String what) {
    if (list.isEmpty()) {
      throw new IllegalArgumentException("a purchase must have at least one " + what);
    }
  }

  private static void requireOnce(List<String> names, String what) {
    Set<String> seen = new HashSet<>();
    for (String name : names) {
      if (!seen.add(name)) {
        throw new IllegalArgumentException(
            "each %s must be given once, but %s occurs twice".formatted(what, name));
      }
    }
  }

  private static void requireOneThickness(List<Product> products) {
    Product first = products.get(0);
    for (Product other : products) {
      double apart =
          first.stock().thickness().millimetres() - other.stock().thickness().millimetres();
      if (Math.abs(apart) > SAME_THICKNESS.millimetres()) {
        throw new IllegalArgumentException(
            "all sheets of one purchase must have one thickness, but %s is %s mm and %s is %s mm"
                .formatted(
                    first.stock().name(),
                    first.stock().thickness().millimetres(),
                    other.stock().name(),
                    other.stock().thickness().millimetres()));
      }
    }
  }

  private static void requireKnown(
      List<Demand> demands, List<Product> products, List<Layout> layouts) {
    Set<Piece> held = new HashSet<>();
    for (Layout layout : layouts) {
      int product = productOf(products, layout);
      if (products.get(product).available() > 0) {
        layout.placements().forEach(placement -> held.add(placement.piece()));
      }
    }
    Set<Piece> wanted = new HashSet<>();
    for (Demand demand : demands) {
      wanted.add(demand.piece());
      if (!held.contains(demand.piece())) {
        throw new IllegalArgumentException("no layout holds piece " + demand.piece().id());
      }
    }
    for (Piece piece : held) {
      if (!wanted.contains(piece)) {
        throw new IllegalArgumentException(
            "layouts must hold wanted pieces only, but one holds piece " + piece.id());
      }
    }
  }
}
