package curvestock.purchase.solver;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.ToIntFunction;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/**
 * Starts by rounding the linear programme over the layouts, with every product in a given price
 * tier: take the whole parts, round one fraction up, solve again for what is still wanted. Needs
 * about one small linear programme for each kind. The result is judged exactly afterwards, so
 * rounding errors do no harm.
 */
final class LinearStart {

  static final int NOT_BOUGHT = -1;

  private static final double WHOLE = 1e-6;

  /** Prefers fewer sheets among equal money; a thousand of them still weigh one minor unit. */
  private static final double PER_SHEET = 1e-3;

  private final Choice choice;
  private final int[] tiers;

  /**
   * @param tiers for each product the index of its tier, or {@link #NOT_BOUGHT}
   */
  LinearStart(Choice choice, int[] tiers) {
    this.choice = choice;
    this.tiers = tiers;
  }

  /** Money of the linear programme, or empty if these tiers cannot cover the demand. */
  OptionalDouble relaxedMoney() {
    return relaxed(new Tally(choice)).stream()
        .mapToDouble(Optimisation.Result::getValue)
        .findFirst();
  }

  /** Rounds the largest fraction up; empty if these tiers cannot cover the demand. */
  Optional<int[]> uses() {
    return uses(new Tally(choice), LinearStart::largest);
  }

  /** Rounds a random fraction up, each with its value as its chance. */
  Optional<int[]> uses(Random random) {
    return uses(new Tally(choice), parts -> drawn(parts, random));
  }

  /** Keeps the given sheets, and covers what they leave wanted by random rounding. */
  Optional<int[]> uses(int[] kept, Random random) {
    Tally tally = new Tally(choice);
    tally.add(kept);
    return uses(tally, parts -> drawn(parts, random));
  }

  private static int largest(double[] parts) {
    int largest = -1;
    for (int j = 0; j < parts.length; j++) {
      if (parts[j] > WHOLE && (largest < 0 || parts[j] > parts[largest])) {
        largest = j;
      }
    }
    return largest;
  }

  private static int drawn(double[] parts, Random random) {
    double at = random.nextDouble() * Arrays.stream(parts).filter(part -> part > WHOLE).sum();
    int last = -1;
    for (int j = 0; j < parts.length && (at >= 0 || last < 0); j++) {
      if (parts[j] > WHOLE) {
        at -= parts[j];
        last = j;
      }
    }
    return last;
  }

  private Optional<int[]> uses(Tally tally, ToIntFunction<double[]> fractionToRoundUp) {
    while (tally.levels().missing() > 0) {
      Optional<Optimisation.Result> relaxed = relaxed(tally);
      if (relaxed.isEmpty() || !round(relaxed.get(), tally, fractionToRoundUp)) {
        return Optional.empty();
      }
    }
    return Optional.of(tally.uses());
  }

  private boolean usable(int layout, Tally tally) {
    int product = choice.productOf[choice.breakdownOf[choice.panelOf[layout]]];
    return tiers[product] != NOT_BOUGHT
        && (tally.used(product) < tier(product).to() || !tally.addsSheet(layout));
  }

  private Tier tier(int product) {
    return choice.tiers.get(product).get(tiers[product]);
  }

  /** The first variables of the result are the uses of the layouts. */
  private Optional<Optimisation.Result> relaxed(Tally tally) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    Expression[] cover = new Expression[choice.demand.length];
    for (int i = 0; i < cover.length; i++) {
      if (tally.wanted(i) > 0) {
        cover[i] = model.newExpression("kind " + i).lower(tally.wanted(i));
      }
    }
    Variable[] layout = new Variable[choice.layouts()];
    for (int j = 0; j < layout.length; j++) {
      layout[j] = model.newVariable("layout " + j).lower(0);
    }
    Expression[] panels = panels(model, tally);
    for (int j = 0; j < layout.length; j++) {
      panels[choice.panelOf[j]].set(layout[j], 1);
      for (int kind : choice.kindsIn[j]) {
        if (cover[kind] != null) {
          // A sheet never needs to hold more of a kind than is still wanted.
          cover[kind].set(layout[j], Math.min(choice.counts[j][kind], tally.wanted(kind)));
        }
      }
    }
    Optimisation.Result result = model.minimise();
    return result.getState().isFeasible() ? Optional.of(result) : Optional.empty();
  }

  /** Panels used ≤ panels that the broken down sheets give; those sheets ≤ sheets bought. */
  private Expression[] panels(ExpressionsBasedModel model, Tally tally) {
    Expression[] bought = new Expression[choice.products()];
    for (int p = 0; p < bought.length; p++) {
      bought[p] = model.newExpression("bought " + p).upper(0);
      buy(model, bought[p], p);
    }
    Expression[] panels = new Expression[choice.perSheet.length];
    for (int b = 0; b < choice.breakdowns(); b++) {
      Variable sheets = model.newVariable("broken " + b).lower(0);
      sheets.weight(choice.cutting[b] + PER_SHEET);
      bought[choice.productOf[b]].set(sheets, 1);
      for (int q : choice.panelsOf[b]) {
        panels[q] = model.newExpression("panel " + q).upper(-tally.panels(q));
        panels[q].set(sheets, -choice.perSheet[q]);
      }
    }
    return panels;
  }

  /** Sheets bought lie in the tier and cost its price. */
  private void buy(ExpressionsBasedModel model, Expression bought, int product) {
    Variable number = model.newVariable("number " + product);
    if (tiers[product] == NOT_BOUGHT) {
      number.lower(0).upper(0);
    } else {
      Tier tier = tier(product);
      // A tier from one sheet on stands for no sheet, too.
      number.lower(tier.from() == 1 ? 0 : tier.from()).upper(tier.to()).weight(tier.each());
    }
    bought.set(number, -1);
  }

  /** Adds whole parts, or failing that one fraction; false if nothing could be added. */
  private boolean round(
      Optimisation.Result relaxed, Tally tally, ToIntFunction<double[]> fractionToRoundUp) {
    boolean added = false;
    double[] parts = new double[choice.layouts()];
    for (int j = 0; j < parts.length; j++) {
      double value = relaxed.doubleValue(j);
      double whole = Math.floor(value + WHOLE);
      for (int n = 0; n < whole && usable(j, tally); n++) {
        tally.add(j);
        added = true;
      }
      parts[j] = usable(j, tally) ? value - whole : 0;
    }
    int up = added ? -1 : fractionToRoundUp.applyAsInt(parts);
    if (up >= 0) {
      tally.add(up);
    }
    return added || up >= 0;
  }
}
