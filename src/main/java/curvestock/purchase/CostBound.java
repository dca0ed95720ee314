package curvestock.purchase;

import curvestock.units.Money;
import java.util.List;

/**
 * What no purchase can go below, whatever its layouts.
 *
 * @param money least cost of the sheets
 * @param sheets fewest sheets cut, if only their number counted
 * @param covers the inequalities that prove both; anyone can check them again by hand
 * @param proof how it is proven, in plain words
 */
public record CostBound(Money money, int sheets, List<Cover> covers, String proof) {

  public CostBound {
    covers = List.copyOf(covers);
  }
}
