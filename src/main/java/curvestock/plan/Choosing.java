package curvestock.plan;

import curvestock.bound.InflatedArea;
import curvestock.job.Job;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.purchase.CheapestPurchase;
import curvestock.purchase.PackingLimits;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.purchase.PurchaseProblem;
import curvestock.purchase.SheetLimit;
import curvestock.purchase.ShortageException;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/** Chooses the purchase from packed layouts. */
final class Choosing {

  private final Job job;
  private final Columns columns;

  Choosing(Job job, Columns columns) {
    this.job = job;
    this.columns = columns;
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
    PurchaseProblem problem =
        new PurchaseProblem(job.demands(), products, columns.layouts(products));
    return new CheapestPurchase(problem, limits(problem), job.search()).choose();
  }

  private PackingLimits limits(PurchaseProblem problem) {
    List<SheetLimit> limits = new ArrayList<>();
    for (Panel panel : problem.panels()) {
      SheetStock sheet = panel.stock();
      List<Double> areas = new ArrayList<>();
      List<Integer> counts = new ArrayList<>();
      for (Demand demand : job.demands()) {
        areas.add(InflatedArea.ofPiece(demand.piece(), job.cutting()));
        counts.add(bound(demand.piece(), sheet));
      }
      limits.add(
          new SheetLimit(
              InflatedArea.ofSheet(sheet, job.cutting()), areas, counts, "by area and fit"));
    }
    return new PackingLimits(limits);
  }

  /** Zero for a sheet of another thickness, and for one that cannot be had. */
  private int bound(Piece piece, SheetStock sheet) {
    return columns.capacities().stream()
        .filter(c -> c.piece().equals(piece) && c.sheet().equals(sheet))
        .mapToInt(capacity -> capacity.bound().count())
        .findFirst()
        .orElse(0);
  }
}
