package curvestock.purchase;

import java.util.ArrayList;
import java.util.List;

/**
 * A proof in small: give each kind of piece a weight; if no sheet can hold more than so much
 * weight, then the sheets used must together be able to hold the weight that is wanted:
 *
 * <p>Σ over products (perSheet · sheets used) ≥ wanted.
 *
 * <p>Valid for every purchase, whatever its layouts, because a sheet's wanted pieces obey its
 * {@link SheetLimit}. All numbers are whole, so nothing is lost to rounding.
 *
 * @param name what the weights stand for
 * @param weights of each kind, in the order of the demands
 * @param perSheet most weight on one sheet of each product, whichever way it is ripped, in the
 *     order of the products
 * @param wanted weight of all wanted pieces
 */
public record DualFeasibleInequality(
    String name, List<Long> weights, List<Long> perSheet, long wanted) {

  public DualFeasibleInequality {
    weights = List.copyOf(weights);
    perSheet = List.copyOf(perSheet);
  }

  /**
   * Proves, for the given weights, how much each sheet can hold at most.
   *
   * @throws ArithmeticException if areas or weights are too large for whole numbers of 64 bits
   */
  static DualFeasibleInequality prove(
      String name, long[] weights, CuttingStockInstance instance, PackingLimits limits) {
    long wanted = 0;
    List<Long> listed = new ArrayList<>();
    int[] demand = new int[weights.length];
    for (int i = 0; i < weights.length; i++) {
      demand[i] = instance.demands().get(i).count();
      wanted = Math.addExact(wanted, Math.multiplyExact(weights[i], demand[i]));
      listed.add(weights[i]);
    }
    List<Long> perSheet = new ArrayList<>();
    int panel = 0;
    for (Product product : instance.products()) {
      long most = 0;
      for (Breakdown breakdown : product.breakdowns()) {
        long together = 0;
        for (Panel part : breakdown.panels()) {
          long one =
              new BoundedKnapsackBound(limits.sheets().get(panel++), weights, demand).weight();
          together = Math.addExact(together, Math.multiplyExact(one, (long) part.perSheet()));
        }
        most = Math.max(most, together);
      }
      perSheet.add(most);
    }
    return new DualFeasibleInequality(name, listed, perSheet, wanted);
  }
}
