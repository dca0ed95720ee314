package curvestock.purchase;

import curvestock.layout.Layout;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;

/**
 * The decision: what to buy and which layout to cut on each sheet, with the proven bound.
 *
 * @param layouts one for each sheet, in the order of the problem's products and layouts; they may
 *     hold more pieces than are wanted, see {@link #trimmed}
 * @param lines one for each product that is used, in the order of the problem
 */
public record Purchase(
    PurchaseProblem problem, List<Layout> layouts, List<PurchaseLine> lines, CostBound bound) {

  public Purchase {
    layouts = List.copyOf(layouts);
    lines = List.copyOf(lines);
  }

  /**
   * The purchase of the sheets under the given layouts, which somebody else has chosen.
   *
   * @param bound proven for the problem
   * @throws IllegalArgumentException if a layout lies on no product's sheet
   */
  public static Purchase of(PurchaseProblem problem, List<Layout> layouts, CostBound bound) {
    List<PurchaseLine> lines = new ArrayList<>();
    for (int p = 0; p < problem.products().size(); p++) {
      int product = p;
      long used = layouts.stream().filter(each -> problem.productOf(each) == product).count();
      if (used > 0) {
        lines.add(PurchaseLine.of(problem.products().get(p), Math.toIntExact(used)));
      }
    }
    return new Purchase(problem, layouts, lines, bound);
  }

  /** Price of all sheets bought. */
  public Money sheetCost() {
    return lines.stream().map(PurchaseLine::cost).reduce(Money.ZERO, Money::plus);
  }

  /** Number of sheets cut. */
  public int sheets() {
    return layouts.size();
  }

  /** Pieces too many of each kind, in the order of the demands. */
  public List<Integer> surplus() {
    int[] held = new int[problem.demands().size()];
    for (Layout layout : layouts) {
      int[] counts = problem.counts(layout);
      for (int i = 0; i < held.length; i++) {
        held[i] += counts[i];
      }
    }
    List<Integer> surplus = new ArrayList<>();
    for (int i = 0; i < held.length; i++) {
      surplus.add(held[i] - problem.demands().get(i).count());
    }
    return surplus;
  }

  /** Most money that any other purchase, with any layouts at all, could save. */
  public Money gap() {
    return sheetCost().minus(bound.money());
  }

  /** The gap as a sentence for the reader. */
  public String gapSentence(String currency) {
    return gap().equals(Money.ZERO)
        ? "proven cheapest: no layout at all could save money"
        : "at most " + gap().format(currency) + " could be saved by any layout";
  }

  /** The layouts with exactly the wanted pieces; see {@link Trimming}. */
  public List<Layout> trimmed() {
    return new Trimming(problem, layouts).trimmed();
  }
}
