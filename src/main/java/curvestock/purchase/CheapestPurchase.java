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
import java.util.stream.IntStream;

/**
 * Chooses which layouts to cut on which sheets: all demand covered, no stock overrun, then least
 * money, then fewest sheets, then the largest single remnant, then fewest pieces too many. Joints
 * do not enter: they are decided by the pieces, before any sheet is chosen.
 *
 * <p>The choice is a search (see {@link SlotSearch}) and repeats exactly for the same input and
 * settings; how far it may be from the best is proven apart (see {@link LowerBound}).
 */
public final class CheapestPurchase {

  private final PurchaseProblem problem;
  private final PackingLimits limits;
  private final SearchSettings settings;

  public CheapestPurchase(PurchaseProblem problem, PackingLimits limits, SearchSettings settings) {
    this.problem = problem;
    this.limits = limits;
    this.settings = settings;
  }

  /**
   * The purchase with its bound. What shares no sheet, such as pieces of different thickness, is
   * chosen apart and added up.
   *
   * @throws ShortageException if no way was found to cover the demand from the stock
   * @throws IllegalArgumentException if the limits do not belong to the problem, or one of its
   *     layouts disproves them
   */
  public Purchase choose() {
    limits.requireFits(problem);
    List<Purchase> parts = new ArrayList<>();
    List<Demand> missing = new ArrayList<>();
    for (Separate.Part part : new Separate(problem, limits).parts()) {
      try {
        parts.add(new CheapestPurchase(part.problem(), part.limits(), settings).chooseTogether());
      } catch (ShortageException e) {
        missing.addAll(e.missing());
      }
    }
    if (!missing.isEmpty()) {
      throw new ShortageException(missing);
    }
    return Purchase.sum(problem, parts);
  }

  /**
   * A purchase that was chosen before, its bound proven anew by these limits.
   *
   * @throws IllegalArgumentException as {@link #choose}
   */
  public Purchase proven(Purchase chosen) {
    limits.requireFits(problem);
    List<CostBound> bounds = new ArrayList<>();
    for (Separate.Part part : new Separate(problem, limits).parts()) {
      List<PurchaseLine> lines =
          chosen.lines().stream()
              .filter(line -> part.problem().products().contains(line.product()))
              .toList();
      Money cost = lines.stream().map(PurchaseLine::cost).reduce(Money.ZERO, Money::plus);
      int sheets = lines.stream().mapToInt(PurchaseLine::used).sum();
      bounds.add(new LowerBound(part.problem(), part.limits()).prove(cost, sheets));
    }
    return new Purchase(problem, chosen.layouts(), chosen.lines(), CostBound.sum(bounds));
  }

  private Purchase chooseTogether() {
    LowerBound lowerBound = new LowerBound(problem, limits);
    int[] uses =
        new SlotSearch(
                choice(),
                settings.seed(),
                calculations(settings.effort()),
                start -> isLeast(lowerBound, start))
            .uses();
    requireCovered(uses);
    List<Layout> layouts = new ArrayList<>();
    List<PurchaseLine> lines = new ArrayList<>();
    int panel = 0;
    for (Product product : problem.products()) {
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
    return new Purchase(problem, layouts, lines, lowerBound.prove(cost, sheets));
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
      Layout layout = problem.layouts().get(j);
      if (problem.panelOf(layout) == panel) {
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
    int[] demand = problem.demands().stream().mapToInt(Demand::count).toArray();
    int most = IntStream.of(demand).sum();
    List<PanelSupply> panels = new ArrayList<>();
    List<BreakdownSupply> breakdowns = new ArrayList<>();
    for (int p = 0; p < problem.products().size(); p++) {
      for (Breakdown breakdown : problem.products().get(p).breakdowns()) {
        int index = breakdowns.size();
        breakdowns.add(new BreakdownSupply(p, breakdown.cutting().minorUnits()));
        for (Panel part : breakdown.panels()) {
          panels.add(new PanelSupply(index, part.perSheet(), Math.round(part.stock().area())));
        }
      }
    }
    return new Choice(
        demand,
        problem.layouts().stream().map(problem::counts).toArray(int[][]::new),
        problem.layouts().stream().mapToInt(problem::panelOf).toArray(),
        panels,
        breakdowns,
        problem.products().stream().mapToInt(Product::available).toArray(),
        problem.products().stream().map(product -> costs(product, most)).toArray(long[][]::new),
        problem.products().stream().map(Product::tiers).toList(),
        problem.demands().stream()
            .mapToLong(demanded -> Math.round(demanded.piece().shape().area()))
            .toArray());
  }

  private static long[] costs(Product product, int most) {
    return IntStream.rangeClosed(0, Math.min(most, product.available()))
        .mapToLong(used -> product.cost(used).minorUnits())
        .toArray();
  }

  private void requireCovered(int[] uses) {
    int[] held = new int[problem.demands().size()];
    for (int j = 0; j < uses.length; j++) {
      int[] counts = problem.counts(problem.layouts().get(j));
      for (int i = 0; i < held.length; i++) {
        held[i] += uses[j] * counts[i];
      }
    }
    List<Demand> missing = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      Demand demand = problem.demands().get(i);
      if (held[i] < demand.count()) {
        missing.add(new Demand(demand.piece(), demand.count() - held[i]));
      }
    }
    if (!missing.isEmpty()) {
      throw new ShortageException(missing);
    }
  }
}
