package curvestock.plan;

import curvestock.bound.InflatedArea;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.purchase.CheapestPurchase;
import curvestock.purchase.PackingLimits;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.purchase.PurchaseProblem;
import curvestock.purchase.SheetLimit;
import curvestock.purchase.ShortageException;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Plans a job: packs every kind of sheet, then chooses the cheapest purchase. */
public final class Planner {

  private final Job job;
  private final PlanListener listener;
  private final Packers packers;

  public Planner(Job job, PlanListener listener) {
    this(job, listener, Packers.FORGETFUL);
  }

  /** A planner that may find packings in a store. */
  public Planner(Job job, PlanListener listener, Packers packers) {
    this.job = job;
    this.listener = listener;
    this.packers = packers;
  }

  /**
   * The plan; the same for the same job, whatever the machine, unless the listener stops it.
   *
   * @throws Infeasible if a piece fits on no sheet, or the sheets that can be had do not suffice
   */
  public Plan plan() throws Infeasible {
    requireOneThickness();
    Columns columns = new Columns(job, listener, packers);
    requireAllFit(columns);
    listener.step("choosing the sheets");
    Purchase purchase = purchase(columns);
    List<Layout> layouts = new ArrayList<>(purchase.trimmed());
    // The fullest sheet first: the last one is the one with wood to spare.
    layouts.sort(Comparator.comparingDouble(Layout::pieceArea).reversed());
    return new Plan(job, purchase, layouts, columns.capacities(), listener.stopped());
  }

  private void requireOneThickness() throws Infeasible {
    SheetStock first = job.sheets().get(0);
    for (SheetStock sheet : job.sheets()) {
      double apart = sheet.thickness().minus(first.thickness()).millimetres();
      if (Math.abs(apart) > PurchaseProblem.SAME_THICKNESS.millimetres()) {
        throw new Infeasible(
            List.of(
                "All sheets of a job must have one thickness, but "
                    + first.name()
                    + " is "
                    + job.style().formatGiven(first.thickness())
                    + " and "
                    + sheet.name()
                    + " is "
                    + job.style().formatGiven(sheet.thickness())
                    + ".",
                "Make one job for each thickness, or leave out the sheets that are not wanted."));
      }
    }
  }

  private void requireAllFit(Columns columns) throws Infeasible {
    List<String> sentences = new ArrayList<>();
    for (Demand demand : job.demands()) {
      Piece piece = demand.piece();
      boolean fits =
          columns.capacities().stream()
              .anyMatch(capacity -> capacity.piece().equals(piece) && capacity.found() > 0);
      if (!fits) {
        sentences.addAll(new Advice(job).forUnfit(piece));
      }
    }
    if (!sentences.isEmpty()) {
      throw new Infeasible(sentences);
    }
  }

  private Purchase purchase(Columns columns) throws Infeasible {
    List<Product> products = job.sheets().stream().map(Product::of).toList();
    PurchaseProblem problem = new PurchaseProblem(job.demands(), products, columns.layouts());
    try {
      return new CheapestPurchase(problem, limits(columns), job.search()).choose();
    } catch (ShortageException e) {
      throw new Infeasible(List.of(e.getMessage()));
    }
  }

  private PackingLimits limits(Columns columns) {
    List<SheetLimit> limits = new ArrayList<>();
    for (SheetStock sheet : job.sheets()) {
      List<Double> areas = new ArrayList<>();
      List<Integer> counts = new ArrayList<>();
      for (Demand demand : job.demands()) {
        areas.add(InflatedArea.ofPiece(demand.piece(), job.cutting()));
        counts.add(bound(columns, demand.piece(), sheet));
      }
      limits.add(
          new SheetLimit(
              InflatedArea.ofSheet(sheet, job.cutting()), areas, counts, "by area and fit"));
    }
    return new PackingLimits(limits);
  }

  private static int bound(Columns columns, Piece piece, SheetStock sheet) {
    return columns.capacities().stream()
        .filter(c -> c.piece().equals(piece) && c.sheet().equals(sheet))
        .mapToInt(capacity -> capacity.bound().count())
        .findFirst()
        .orElse(0);
  }
}
