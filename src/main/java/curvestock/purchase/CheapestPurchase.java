package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.purchase.solver.BreakdownSupply;
import curvestock.purchase.solver.Choice;
import curvestock.purchase.solver.Levels;
import curvestock.purchase.solver.PanelSupply;
import curvestock.purchase.solver.SlotSearch;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Chooses which layouts to cut on which sheets: all demand covered, no stock overrun, then least
 * money, then fewest sheets, then what {@link Levels} says. Joints do not enter: they are decided
 * by the pieces, before any sheet is chosen.
 *
 * <p>The choice is a search (see {@link SlotSearch}) and repeats exactly for the same input and
 * settings; how far it may be from the best is proven apart (see {@link LowerBound}).
 */
public final class CheapestPurchase {

  private final CuttingStockInstance instance;
  private final PackingLimits limits;
  private final SearchSettings settings;

  public CheapestPurchase(
      CuttingStockInstance instance, PackingLimits limits, SearchSettings settings) {
    this.instance = instance;
    this.limits = limits;
    this.settings = settings;
  }

  /**
   * The purchase with its bound. What shares no sheet, such as pieces of different thickness, is
   * chosen apart and added up.
   *
   * @throws ShortageException if no way was found to cover the demand from the stock
   * @throws IllegalArgumentException if the limits do not belong to the instance, or one of its
   *     layouts disproves them
   */
  public Purchase choose() {
    return choose(() -> false);
  }

  /**
   * The same, ended early with the best so far: at least as good as the better of a greedy choice
   * and rounded linear programmes.
   *
   * @param stopped whether to end; asked now and then on the calling thread
   * @throws ShortageException as the other
   */
  public Purchase choose(BooleanSupplier stopped) {
    limits.requireFits(instance);
    List<Purchase> parts = new ArrayList<>();
    List<Demand> missing = new ArrayList<>();
    for (IndependentParts.Part part : new IndependentParts(instance, limits).parts()) {
      try {
        parts.add(
            new CheapestPurchase(part.instance(), part.limits(), settings).chooseTogether(stopped));
      } catch (ShortageException e) {
        missing.addAll(e.missing());
      }
    }
    if (!missing.isEmpty()) {
      throw new ShortageException(missing);
    }
    return Purchase.sum(instance, parts);
  }

  /**
   * A purchase that was chosen before, its bound proven anew by these limits.
   *
   * @throws IllegalArgumentException as {@link #choose}
   */
  public Purchase proven(Purchase chosen) {
    limits.requireFits(instance);
    List<CostBound> bounds = new ArrayList<>();
    for (IndependentParts.Part part : new IndependentParts(instance, limits).parts()) {
      List<PurchaseLine> lines =
          chosen.lines().stream()
              .filter(line -> part.instance().products().contains(line.product()))
              .toList();
      Money cost = lines.stream().map(PurchaseLine::cost).reduce(Money.ZERO, Money::plus);
      int sheets = lines.stream().mapToInt(PurchaseLine::used).sum();
      bounds.add(new LowerBound(part.instance(), part.limits()).prove(cost, sheets));
    }
    return new Purchase(instance, chosen.layouts(), chosen.lines(), CostBound.sum(bounds));
  }

  private Purchase chooseTogether(BooleanSupplier stopped) {
    LowerBound lowerBound = new LowerBound(instance, limits);
    int[] uses =
        new SlotSearch(
                choice(),
                settings.seed(),
                calculations(settings.effort()),
                start -> isLeast(lowerBound, start),
                stopped)
            .uses();
    requireCovered(uses);
    List<Layout> layouts = new ArrayList<>();
    List<PurchaseLine> lines = new ArrayList<>();
    int panel = 0;
    for (Product product : instance.products()) {
      List<BrokenSheets> broken = new ArrayList<>();
      for (Breakdown breakdown : product.breakdowns()) {
        int sheets = 0;
        for (Panel part : breakdown.panels()) {
          List<Layout> cut = layoutsOn(panel++, uses);
          layouts.addAll(cut);
          sheets = Math.max(sheets, (cut.size() + part.perSheet() - 1) / part.perSheet());
        }
        if (sheets > 0) {
          broken.add(new BrokenSheets(breakdown, sheets));
        }
      }
      if (!broken.isEmpty()) {
        lines.add(PurchaseLine.of(product, broken));
      }
    }
    Money cost = lines.stream().map(PurchaseLine::cost).reduce(Money.ZERO, Money::plus);
    int sheets = lines.stream().mapToInt(PurchaseLine::used).sum();
    return new Purchase(instance, layouts, lines, lowerBound.prove(cost, sheets));
  }

  private static boolean isLeast(LowerBound lowerBound, Levels start) {
    Money money = new Money(start.money());
    int sheets = Math.toIntExact(start.sheets());
    CostBound least = lowerBound.prove(money, sheets);
    return least.money().equals(money) && least.sheets() == sheets;
  }

  private List<Layout> layoutsOn(int panel, int[] uses) {
    List<Layout> layouts = new ArrayList<>();
    for (int j = 0; j < uses.length; j++) {
      Layout layout = instance.layouts().get(j);
      if (instance.panelOf(layout) == panel) {
        layouts.addAll(Collections.nCopies(uses[j], layout));
      }
    }
    return layouts;
  }

  private static long calculations(Effort effort) {
    return switch (effort) {
      case QUICK -> 50_000;
      case NORMAL -> 300_000;
      case THOROUGH -> 2_000_000;
    };
  }

  private Choice choice() {
    int[] demand = instance.demands().stream().mapToInt(Demand::count).toArray();
    int most = IntStream.of(demand).sum();
    List<PanelSupply> panels = new ArrayList<>();
    List<BreakdownSupply> breakdowns = new ArrayList<>();
    for (int p = 0; p < instance.products().size(); p++) {
      for (Breakdown breakdown : instance.products().get(p).breakdowns()) {
        int index = breakdowns.size();
        breakdowns.add(new BreakdownSupply(p, breakdown.cutting().minorUnits()));
        for (Panel part : breakdown.panels()) {
          panels.add(new PanelSupply(index, part.perSheet(), Math.round(part.stock().area())));
        }
      }
    }
    return new Choice(
        demand,
        instance.layouts().stream().map(instance::counts).toArray(int[][]::new),
        instance.layouts().stream().mapToInt(instance::panelOf).toArray(),
        panels,
        breakdowns,
        instance.products().stream().mapToInt(Product::available).toArray(),
        instance.products().stream().map(product -> costs(product, most)).toArray(long[][]::new),
        instance.products().stream().map(Product::tiers).toList(),
        instance.demands().stream()
            .mapToLong(demanded -> Math.round(demanded.piece().shape().area()))
            .toArray());
  }

  private static long[] costs(Product product, int most) {
    return IntStream.rangeClosed(0, Math.min(most, product.available()))
        .mapToLong(used -> product.cost(used).minorUnits())
        .toArray();
  }

  private void requireCovered(int[] uses) {
    int[] held = new int[instance.demands().size()];
    for (int j = 0; j < uses.length; j++) {
      int[] counts = instance.counts(instance.layouts().get(j));
      for (int i = 0; i < held.length; i++) {
        held[i] += uses[j] * counts[i];
      }
    }
    List<Demand> missing = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      Demand demand = instance.demands().get(i);
      if (held[i] < demand.count()) {
        missing.add(new Demand(demand.piece(), demand.count() - held[i]));
      }
    }
    if (!missing.isEmpty()) {
      throw new ShortageException(missing);
    }
  }
}
