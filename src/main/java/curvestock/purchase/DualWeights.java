package curvestock.purchase;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Suggests weights for a {@link DualFeasibleInequality}: the dual of the linear relaxation
 *
 * <p>least Σ price·y with x[i,p] ≤ count[i,p]·y[p], Σ area[i,p]·x[i,p] ≤ capacity[p]·y[p], Σ over p
 * of x[i,p] ≥ demand[i], y[p] ≤ stock[p],
 *
 * <p>where y are sheets and x pieces. The dual's prices of the demands say how scarce the room for
 * each kind is. They are found in floating point and only suggest: {@link
 * DualFeasibleInequality#prove} proves.
 */
final class DualWeights {

  private final CuttingStockInstance instance;
  private final PackingLimits limits;

  DualWeights(CuttingStockInstance instance, PackingLimits limits) {
    this.instance = instance;
    this.limits = limits;
  }

  /** Weights of 0 to {@code largest}, the scarcest kind at {@code largest}; all 0 if none help. */
  long[] suggest(ToDoubleFunction<Product> price, long largest) {
    int kinds = instance.demands().size();
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Variable[] worth = new Variable[kinds];
    for (int i = 0; i < kinds; i++) {
      worth[i] = model.newVariable("worth " + i).lower(0).weight(instance.demands().get(i).count());
    }
    int panel = 0;
    for (Product product : instance.products()) {
      for (Breakdown breakdown : product.breakdowns()) {
        List<SheetLimit> parts = new ArrayList<>();
        for (Panel part : breakdown.panels()) {
          parts.addAll(Collections.nCopies(part.perSheet(), limits.sheets().get(panel++)));
        }
        addSheet(model, worth, product, parts, price.applyAsDouble(product));
      }
    }
    Optimisation.Result result = model.maximise();
    double[] values = new double[kinds];
    double top = 0;
    for (int i = 0; i < kinds && result.getState().isFeasible(); i++) {
      values[i] = Math.max(0, result.doubleValue(i));
      top = Math.max(top, values[i]);
    }
    long[] weights = new long[kinds];
    for (int i = 0; i < kinds && top > 0; i++) {
      weights[i] = Math.round(values[i] / top * largest);
    }
    return weights;
  }

  /** All pieces on one sheet together must not be worth more than the sheet. */
  private void addSheet(
      ExpressionsBasedModel model,
      Variable[] worth,
      Product product,
      List<SheetLimit> parts,
      double price) {
    Expression sheet = model.newExpression("sheet " + model.countExpressions()).upper(price);
    if (product.stock().available().isPresent()) {
      Variable scarce = model.newVariable("scarce").lower(0).weight(-product.available());
      sheet.set(scarce, -1);
    }
    parts.forEach(limit -> addPanel(model, worth, sheet, limit));
  }

  private void addPanel(
      ExpressionsBasedModel model, Variable[] worth, Expression sheet, SheetLimit limit) {
    Variable room = model.newVariable("room").lower(0);
    sheet.set(room, 1);
    for (int i = 0; i < worth.length; i++) {
      Variable excess = model.newVariable("excess").lower(0);
      double share = limit.areas().get(i) / Math.max(limit.capacity(), Double.MIN_NORMAL);
      Expression piece = model.newExpression("piece " + model.countExpressions()).upper(0);
      piece.set(worth[i], 1);
      piece.set(excess, -1);
      piece.set(room, -Math.min(share, 1e6));
      int most = Math.min(limit.counts().get(i), instance.demands().get(i).count());
      sheet.set(excess, most);
    }
  }
}
