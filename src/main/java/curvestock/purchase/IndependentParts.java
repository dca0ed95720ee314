package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.piece.Demand;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;

/**
 * Splits a purchase into parts that share no sheet: two pieces belong together if both could lie on
 * one product, by what is proven, not by what was found. So their costs and bounds add up.
 */
final class IndependentParts {

  /** A purchase of its own, with its limits. */
  record Part(CuttingStockInstance instance, PackingLimits limits) {}

  private final CuttingStockInstance instance;
  private final PackingLimits limits;
  private final List<Panel> panels;

  /** For each panel the index of its product. */
  private final List<Integer> productOf = new ArrayList<>();

  IndependentParts(CuttingStockInstance instance, PackingLimits limits) {
    this.instance = instance;
    this.limits = limits;
    this.panels = instance.panels();
    for (int p = 0; p < instance.products().size(); p++) {
      for (Breakdown breakdown : instance.products().get(p).breakdowns()) {
        productOf.addAll(Collections.nCopies(breakdown.panels().size(), p));
      }
    }
  }

  /** The parts, in the order of the demands; products that nobody needs are in none. */
  List<Part> parts() {
    List<Part> parts = new ArrayList<>();
    BitSet done = new BitSet();
    for (int i = 0; i < instance.demands().size(); i++) {
      if (!done.get(i)) {
        BitSet kinds = new BitSet();
        kinds.set(i);
        BitSet products = new BitSet();
        while (grow(kinds, products)) {
          // Until nothing more belongs to them.
        }
        done.or(kinds);
        parts.add(part(kinds, products));
      }
    }
    return parts;
  }

  private boolean grow(BitSet kinds, BitSet products) {
    int before = kinds.cardinality() + products.cardinality();
    for (int q = 0; q < panels.size(); q++) {
      for (int i = 0; i < instance.demands().size(); i++) {
        boolean belongs = kinds.get(i) || products.get(productOf.get(q));
        if (belongs && limits.sheets().get(q).counts().get(i) > 0) {
          kinds.set(i);
          products.set(productOf.get(q));
        }
      }
    }
    return kinds.cardinality() + products.cardinality() > before;
  }

  private Part part(BitSet kinds, BitSet products) {
    List<Demand> demands = kinds.stream().mapToObj(instance.demands()::get).toList();
    List<Product> offers = products.stream().mapToObj(instance.products()::get).toList();
    List<Layout> layouts =
        instance.layouts().stream()
            .filter(layout -> products.get(productOf.get(instance.panelOf(layout))))
            .toList();
    List<SheetLimit> kept = new ArrayList<>();
    for (int q = 0; q < panels.size(); q++) {
      if (products.get(productOf.get(q))) {
        kept.add(limits.sheets().get(q).only(kinds));
      }
    }
    return new Part(new CuttingStockInstance(demands, offers, layouts), new PackingLimits(kept));
  }
}
