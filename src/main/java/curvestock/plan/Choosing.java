package curvestock.plan;

import curvestock.bound.InflatedArea;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.piece.Demand;
import curvestock.purchase.Cheaper;
import curvestock.purchase.CheapestPurchase;
import curvestock.purchase.CostBound;
import curvestock.purchase.CuttingStockInstance;
import curvestock.purchase.PackingLimits;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.purchase.SheetLimit;
import curvestock.purchase.ShortageException;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;

/** Chooses the purchase from packed layouts. */
final class Choosing {

  private final Job job;
  private final LayoutPool pool;
  private final Control control;

  Choosing(Job job, LayoutPool pool, Control control) {
    this.job = job;
    this.control = control;
    this.pool = pool;
  }

  /**
   * The cheapest purchase found.
   *
   * @param products of which all panels that can be had are packed
   * @throws Infeasible if the sheets that can be had do not suffice, with what would help
   */
  Purchase choose(List<Product> products) throws Infeasible {
    try {
      return cheapest(products);
    } catch (ShortageException e) {
      throw new Infeasible(new Shortage(job, e.missing()).sentences(this::cheapest, products));
    }
  }

  private Purchase cheapest(List<Product> products) {
    CuttingStockInstance instance =
        new CuttingStockInstance(job.demands(), products, pool.layouts(products));
    return new CheapestPurchase(instance, proven(instance), job.search()).choose(control::stopped);
  }

  /** The same purchase, its bound by the limits proven since. */
  Purchase proven(Purchase chosen) {
    CuttingStockInstance instance = chosen.instance();
    return new CheapestPurchase(instance, proven(instance), job.search()).proven(chosen);
  }

  /**
   * Whether sharper limits could prove more of this purchase than is proven, or prove that there is
   * no cheaper one to look for: at best that no sheet holds more than was found.
   */
  boolean isWorthProving(Purchase known) {
    CuttingStockInstance instance = known.instance();
    CheapestPurchase ideal =
        new CheapestPurchase(instance, limits(instance, this::atBest), job.search());
    CostBound bound = ideal.proven(known).bound();
    boolean raised =
        !bound.money().equals(known.bound().money()) || bound.sheets() > known.bound().sheets();
    return raised
        || (cheaper(known).isPossible() && !cheaper(known, this::plausibleAtBest).isPossible());
  }

  /** The limit that a proof would have to reach to be of use. */
  private int atBest(Slot slot) {
    int most =
        pool.layouts(slot.sheet).stream()
            .mapToInt(layout -> layout.count(slot.piece()))
            .max()
            .orElse(0);
    return slot.isProvable() ? Math.max(most, slot.found()) : slot.bound().count();
  }

  private int plausibleAtBest(Slot slot) {
    return Math.min(slot.plausible(), atBest(slot));
  }

  private PackingLimits proven(CuttingStockInstance instance) {
    return limits(instance, slot -> slot.bound().count());
  }

  private PackingLimits limits(CuttingStockInstance instance, ToIntFunction<Slot> most) {
    List<SheetLimit> limits = new ArrayList<>();
    for (Panel panel : instance.panels()) {
      SheetStock sheet = panel.stock();
      List<Double> areas = new ArrayList<>();
      List<Integer> counts = new ArrayList<>();
      for (Demand demand : job.demands()) {
        areas.add(InflatedArea.ofPiece(demand.piece(), job.cutting()));
        // Zero for a sheet of another thickness, and for one that cannot be had.
        counts.add(pool.slot(demand, sheet).map(most::applyAsInt).orElse(0));
      }
      limits.add(
          new SheetLimit(
              InflatedArea.ofSheet(sheet, job.cutting()), areas, counts, "by area and fit"));
    }
    return new PackingLimits(limits);
  }

  /** What a purchase cheaper than this one would have to hold, by what is proven. */
  Cheaper cheaperByProof(Purchase known) {
    return new Cheaper(known.instance(), proven(known.instance()), known);
  }

  /** What a purchase cheaper than this one would have to hold, by the densest layouts known. */
  Cheaper cheaper(Purchase known) {
    return cheaper(known, Slot::plausible);
  }

  private Cheaper cheaper(Purchase known, ToIntFunction<Slot> most) {
    CuttingStockInstance instance = known.instance();
    List<SheetLimit> limits = new ArrayList<>();
    for (Panel panel : instance.panels()) {
      limits.add(plausible(instance, panel.stock(), most));
    }
    return new Cheaper(instance, new PackingLimits(limits), known);
  }

  /** Fuller than any layout known for such pieces, but not fuller than one that was found. */
  private SheetLimit plausible(
      CuttingStockInstance instance, SheetStock sheet, ToIntFunction<Slot> most) {
    List<Optional<Slot>> slots =
        job.demands().stream().map(demand -> pool.slot(demand, sheet)).toList();
    double densest = densest(slots);
    List<Double> areas = new ArrayList<>();
    List<Integer> counts = new ArrayList<>();
    for (Optional<Slot> slot : slots) {
      areas.add(slot.map(each -> each.woodAmongOthers(densest)).orElse(1.0));
      counts.add(slot.map(most::applyAsInt).orElse(0));
    }
    double capacity = InflatedArea.ofSheet(sheet, job.cutting());
    for (Layout layout : instance.layouts()) {
      if (layout.sheet().equals(sheet)) {
        capacity = Math.max(capacity, wood(instance.counts(layout), areas));
      }
    }
    return new SheetLimit(capacity, areas, counts, "by the densest layouts known");
  }

  private static double wood(int[] counts, List<Double> areas) {
    double wood = 0;
    for (int i = 0; i < counts.length; i++) {
      wood += counts[i] * areas.get(i);
    }
    return wood;
  }

  /** Share of a sheet that pieces can fill at best: of one shape alone, its densest lattice. */
  private static double densest(List<Optional<Slot>> slots) {
    List<Slot> some =
        slots.stream().flatMap(Optional::stream).filter(slot -> !slot.isConvex()).toList();
    double alone = some.stream().mapToDouble(Slot::density).max().orElse(1);
    return some.size() == 1 ? alone : Math.max(alone, Slot.FULLEST_MIX);
  }
}
