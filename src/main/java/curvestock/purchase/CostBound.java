package curvestock.purchase;

import curvestock.units.Money;
import java.util.List;
import java.util.stream.Collectors;

/**
 * What no purchase can go below, whatever its layouts.
 *
 * @param money least cost of the sheets
 * @param sheets fewest sheets cut, if only their number counted
 * @param inequalities the inequalities that prove both; anyone can check them again by hand
 * @param proof how it is proven, in plain words
 */
public record CostBound(
    Money money, int sheets, List<DualFeasibleInequality> inequalities, String proof) {

  public CostBound {
    inequalities = List.copyOf(inequalities);
  }

  /** The bound of several purchases that share no sheet. */
  static CostBound sum(List<CostBound> parts) {
    if (parts.size() == 1) {
      return parts.get(0);
    }
    return new CostBound(
        parts.stream().map(CostBound::money).reduce(Money.ZERO, Money::plus),
        parts.stream().mapToInt(CostBound::sheets).sum(),
        parts.stream().flatMap(part -> part.inequalities().stream()).toList(),
        parts.stream()
            .map(CostBound::proof)
            .distinct()
            .collect(Collectors.joining("; and, as no sheet is shared, added: ")));
  }
}
