package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.purchase.solver.Choice;
import curvestock.purchase.solver.SlotSearch;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Chooses which layouts to cut on which sheets: all demand covered, no stock overrun, then least
 * money, then fewest sheets, then the largest single remnant, then fewest pieces too many.
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
   * The purchase with its bound.
   *
   * @throws ShortageException if no way was found to cover the demand from the stock
   * @throws IllegalArgumentException if the limits do not belong to the problem, or one of its
   *     layouts disproves them
   */
  public Purchase choose() {
    LowerBound lowerBound = new LowerBound(problem, limits);
    int[] uses = new SlotSearch(choice(), settings.seed(), calculations(settings.effort())).uses();
    requireCovered(uses);
    List<Layout> layouts = new ArrayList<>();
    List<PurchaseLine> lines = new ArrayList<>();
    for (int p = 0; p < problem.products().size(); p++) {
      int before = layouts.size();
      for (int j = 0; j < uses.length; j++) {
        Layout layout = problem.layouts().get(j);
        for (int n = 0; n < uses[j] && problem.productOf(layout) == p; n++) {
          layouts.add(layout);
        }
      }
      int used = layouts.size() - before;
      if (used > 0) {
        lines.add(PurchaseLine.of(problem.products().get(p), used));
      }
    }
    Money cost = lines.stream().map(PurchaseLine::cost).reduce(Money.ZERO, Money::plus);
    return new Purchase(problem, layouts, lines, lowerBound.prove(cost, layouts.size()));
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
    return new Choice(
        demand,
        problem.layouts().stream().map(problem::counts).toArray(int[][]::new),
        problem.layouts().stream().mapToInt(problem::productOf).toArray(),
        problem.products().stream().mapToInt(Product::available).toArray(),
        problem.products().stream().map(product -> costs(product, most)).toArray(long[][]::new),
        problem.products().stream().map(Product::tiers).toList(),
        problem.demands().stream()
            .mapToLong(demanded -> Math.round(demanded.piece().shape().area()))
            .toArray(),
        problem.products().stream()
            .mapToLong(product -> Math.round(product.stock().area()))
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
