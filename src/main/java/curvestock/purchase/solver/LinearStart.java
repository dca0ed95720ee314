package curvestock.purchase.solver;

import java.util.Optional;
import java.util.function.IntPredicate;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * A start by rounding the linear programme over the columns: take the whole parts, round the
 * largest fraction up, solve again for what is still wanted. Needs about one small linear programme
 * for each kind. The result is judged exactly afterwards, so rounding errors do no harm.
 */
final class LinearStart {

  private static final double WHOLE = 1e-6;

  private final Choice choice;
  private final double[] price;
  private final IntPredicate productAllowed;

  LinearStart(Choice choice, IntPredicate productAllowed) {
    this.choice = choice;
    this.productAllowed = productAllowed;
    this.price = new double[choice.products()];
    for (int p = 0; p < price.length; p++) {
      // The small addition prefers fewer sheets among equal money.
      price[p] = choice.available[p] > 0 ? choice.leastCostEach(p) + 1e-3 : 1;
    }
  }

  /** The uses, or empty if the allowed products cannot cover the demand. */
  Optional<int[]> uses() {
    Tally tally = new Tally(choice);
    while (tally.levels().missing() > 0) {
      Optional<double[]> relaxed = relaxed(tally);
      if (relaxed.isEmpty() || !round(relaxed.get(), tally)) {
        return Optional.empty();
      }
    }
    return Optional.of(tally.uses());
  }

  private boolean usable(int column, Tally tally) {
    return productAllowed.test(choice.productOf[column]) && tally.inStock(column);
  }

  private Optional<double[]> relaxed(Tally tally) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Expression[] cover = new Expression[choice.demand.length];
    for (int i = 0; i < cover.length; i++) {
      if (tally.wanted(i) > 0) {
        cover[i] = model.newExpression("kind " + i).lower(tally.wanted(i));
      }
    }
    Expression[] stock = new Expression[choice.products()];
    for (int p = 0; p < stock.length; p++) {
      if (choice.available[p] < choice.mostSheets()) {
        stock[p] = model.newExpression("stock " + p).upper(choice.available[p] - tally.used(p));
      }
    }
    for (int j = 0; j < choice.columns(); j++) {
      int product = choice.productOf[j];
      Variable variable = model.newVariable("column " + j).lower(0).weight(price[product]);
      if (!usable(j, tally)) {
        variable.upper(0);
      }
      for (int kind : choice.kindsIn[j]) {
        if (cover[kind] != null) {
          // A sheet never needs to hold more of a kind than is still wanted.
          cover[kind].set(variable, Math.min(choice.counts[j][kind], tally.wanted(kind)));
        }
      }
      if (stock[product] != null) {
        stock[product].set(variable, 1);
      }
    }
    Optimisation.Result result = model.minimise();
    if (!result.getState().isFeasible()) {
      return Optional.empty();
    }
    double[] values = new double[choice.columns()];
    for (int j = 0; j < values.length; j++) {
      values[j] = result.doubleValue(j);
    }
    return Optional.of(values);
  }

  /** Adds whole parts, or failing that the largest fraction; false if nothing could be added. */
  private boolean round(double[] values, Tally tally) {
    boolean added = false;
    int largest = -1;
    double largestPart = WHOLE;
    for (int j = 0; j < values.length; j++) {
      double whole = Math.floor(values[j] + WHOLE);
      for (int n = 0; n < whole && usable(j, tally); n++) {
        tally.add(j);
        added = true;
      }
      double part = values[j] - whole;
      if (part > largestPart && usable(j, tally)) {
        largestPart = part;
        largest = j;
      }
    }
    if (!added && largest >= 0) {
      tally.add(largest);
      return true;
    }
    return added;
  }
}
