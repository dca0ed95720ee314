package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import java.util.ArrayList;
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
 * @param products each sheet once; they may be of several thicknesses
 * @param layouts each on a panel of one of the products, with pieces that may be as thick as it is;
 *     each may be used many times
 */
public record CuttingStockInstance(
    List<Demand> demands, List<Product> products, List<Layout> layouts) {

  /**
   * @throws IllegalArgumentException if a list is empty, a piece or panel occurs twice, a layout is
   *     not on a product's panel, holds a piece nobody wants or one of another thickness, or a
   *     wanted piece is in no layout
   */
  public CuttingStockInstance {
    demands = List.copyOf(demands);
    products = List.copyOf(products);
    layouts = List.copyOf(layouts);
    requireSome(demands, "wanted piece");
    requireSome(products, "sheet on offer");
    requireOnce(demands.stream().map(demand -> demand.piece().id()).toList(), "piece");
    requireOnce(panels(products).stream().map(panel -> panel.stock().name()).toList(), "sheet");
    requireOfItsThickness(layouts);
    requireKnown(demands, products, layouts);
  }

  /** How many of each wanted piece, in the order of the demands, the layout holds. */
  public int[] counts(Layout layout) {
    return demands.stream().mapToInt(demand -> layout.count(demand.piece())).toArray();
  }

  /** All panels of all products, in the order of the products and their breakdowns. */
  public List<Panel> panels() {
    return panels(products);
  }

  private static List<Panel> panels(List<Product> products) {
    List<Panel> panels = new ArrayList<>();
    for (Product product : products) {
      product.breakdowns().forEach(breakdown -> panels.addAll(breakdown.panels()));
    }
    return panels;
  }

  /** Index in {@link #panels} of the panel that the layout lies on. */
  public int panelOf(Layout layout) {
    return panelOf(panels(), layout);
  }

  private static int panelOf(List<Panel> panels, Layout layout) {
    for (int p = 0; p < panels.size(); p++) {
      if (panels.get(p).stock().equals(layout.sheet())) {
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

  private static void requireOfItsThickness(List<Layout> layouts) {
    for (Layout layout : layouts) {
      for (Placement placement : layout.placements()) {
        Piece piece = placement.piece();
        if (piece.thickness().isPresent() && !layout.sheet().isAsThickAs(piece.thickness().get())) {
          throw new IllegalArgumentException(
              "piece %s must be cut from a sheet of its thickness, but a layout has it on %s"
                  .formatted(piece.id(), layout.sheet().name()));
        }
      }
    }
  }

  private static void requireKnown(
      List<Demand> demands, List<Product> products, List<Layout> layouts) {
    Set<Piece> held = new HashSet<>();
    List<Panel> panels = panels(products);
    List<Panel> had = panels(products.stream().filter(p -> p.available() > 0).toList());
    for (Layout layout : layouts) {
      if (had.contains(panels.get(panelOf(panels, layout)))) {
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
