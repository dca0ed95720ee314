package curvestock.compare;

import curvestock.layout.Layout;
import curvestock.units.Money;
import java.util.List;

/**
 * How the small parts, plates and blocks, lie in what the roadbed's sheets leave over.
 *
 * @param wanted how many
 * @param nested how many lie in the leftovers
 * @param extraSheets sheets more for the rest
 * @param extraCost their price
 * @param area of all of them in square millimetres
 * @param extraArea area of the extra sheets
 * @param complete whether all found wood; false where no more of the main sheet can be had
 * @param layouts all sheets, with the small parts where they lie
 */
public record SmallFit(
    int wanted,
    int nested,
    int extraSheets,
    Money extraCost,
    double area,
    double extraArea,
    boolean complete,
    List<Layout> layouts) {

  public SmallFit {
    layouts = List.copyOf(layouts);
  }

  /** Small parts that a plan has laid with the others. */
  static SmallFit planned(int wanted, List<Layout> layouts) {
    return new SmallFit(wanted, wanted, 0, Money.ZERO, 0, 0, true, layouts);
  }

  /** Nothing to nest. */
  static SmallFit none(List<Layout> layouts) {
    return new SmallFit(0, 0, 0, Money.ZERO, 0, 0, true, layouts);
  }
}
