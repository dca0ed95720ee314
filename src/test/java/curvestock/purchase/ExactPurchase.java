package curvestock.purchase;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import curvestock.piece.Demand;
import java.util.Optional;

/**
 * The same choice, solved to proven optimality by OR-Tools CP-SAT (Google, Apache-2.0), a
 * general-purpose solver that shares no code with ours. Price tiers and minimum buy are modelled
 * here anew, not by {@link Product#cost}.
 */
final class ExactPurchase {

  /** Least money, and fewest sheets among the cheapest purchases. */
  record Optimum(long money, long sheets) {}

  private final CuttingStockInstance instance;
  private final CpModel model = new CpModel();
  private final LinearExprBuilder money = LinearExpr.newBuilder();
  private final LinearExprBuilder sheets = LinearExpr.newBuilder();

  ExactPurchase(CuttingStockInstance instance) {
    Loader.loadNativeLibraries();
    this.instance = instance;
    int most = instance.demands().stream().mapToInt(Demand::count).sum();
    IntVar[] uses = new IntVar[instance.layouts().size()];
    for (int j = 0; j < uses.length; j++) {
      uses[j] = model.newIntVar(0, most, "uses " + j);
    }
    for (int i = 0; i < instance.demands().size(); i++) {
      LinearExprBuilder held = LinearExpr.newBuilder();
      for (int j = 0; j < uses.length; j++) {
        held.addTerm(uses[j], instance.counts(instance.layouts().get(j))[i]);
      }
      model.addGreaterOrEqual(held, instance.demands().get(i).count());
    }
    for (Product product : instance.products()) {
      LinearExprBuilder used = LinearExpr.newBuilder();
      for (Breakdown breakdown : product.breakdowns()) {
        IntVar broken = model.newIntVar(0, most, "broken");
        used.add(broken);
        sheets.add(broken);
        money.addTerm(broken, breakdown.cutting().minorUnits());
        for (Panel panel : breakdown.panels()) {
          LinearExprBuilder cut = LinearExpr.newBuilder();
          for (int j = 0; j < uses.length; j++) {
            if (instance.layouts().get(j).sheet().equals(panel.stock())) {
              cut.add(uses[j]);
            }
          }
          model.addLessOrEqual(cut, LinearExpr.term(broken, panel.perSheet()));
        }
      }
      buy(product, used, most);
    }
  }

  private void buy(Product product, LinearExprBuilder used, int most) {
    LinearExprBuilder bought = LinearExpr.newBuilder();
    LinearExprBuilder tiers = LinearExpr.newBuilder();
    for (int t = 0; t <= product.breaks().size(); t++) {
      long from = t == 0 ? 1 : product.breaks().get(t - 1).from();
      long to =
          Math.min(
              product.available(),
              t == product.breaks().size()
                  ? most + from + product.minimumBuy()
                  : product.breaks().get(t).from() - 1L);
      from = Math.max(from, product.minimumBuy());
      if (from <= to) {
        long price =
            (t == 0 ? product.stock().price() : product.breaks().get(t - 1).each()).minorUnits();
        BoolVar chosen = model.newBoolVar("tier " + t);
        IntVar count = model.newIntVar(0, to, "bought in tier " + t);
        model.addGreaterOrEqual(count, LinearExpr.term(chosen, from));
        model.addLessOrEqual(count, LinearExpr.term(chosen, to));
        bought.add(count);
        tiers.add(chosen);
        money.addTerm(count, price);
      }
    }
    model.addLessOrEqual(tiers, 1);
    model.addLessOrEqual(used, bought);
  }

  /** The optimum, or empty if the demand cannot be covered. */
  Optional<Optimum> solve() {
    model.minimize(money);
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1);
    CpSolverStatus status = solver.solve(model);
    if (status == CpSolverStatus.INFEASIBLE) {
      return Optional.empty();
    }
    requireOptimal(status);
    long least = Math.round(solver.objectiveValue());
    model.addLessOrEqual(money, least);
    model.minimize(sheets);
    requireOptimal(solver.solve(model));
    return Optional.of(new Optimum(least, Math.round(solver.objectiveValue())));
  }

  private static void requireOptimal(CpSolverStatus status) {
    if (status != CpSolverStatus.OPTIMAL) {
      throw new IllegalStateException("CP-SAT ended with " + status);
    }
  }

  @Override
  public String toString() {
    return "exact purchase of " + instance.demands().size() + " kinds";
  }
}
