package curvestock.answer;

import curvestock.layout.Layout;
import curvestock.plan.Plan;
import curvestock.sheet.SizeTolerance;
import curvestock.units.Length;
import curvestock.units.Money;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What is left between pieces and edge if a sheet comes as small as it may, laid out from its lower
 * left corner.
 *
 * @param sheet number of the sheet with the least
 * @param left below zero where a piece would reach over the edge
 */
public record SheetRoom(int sheet, SizeTolerance tolerance, Length left) {

  /** The tightest of the sheets that are bought; empty if none may be smaller than stated. */
  static Optional<SheetRoom> of(Plan plan) {
    return IntStream.range(0, plan.layouts().size())
        .mapToObj(i -> of(plan, i))
        .flatMap(Optional::stream)
        .min(Comparator.comparing(SheetRoom::left));
  }

  private static Optional<SheetRoom> of(Plan plan, int index) {
    Layout layout = plan.layouts().get(index);
    boolean bought = layout.sheet().price().compareTo(Money.ZERO) > 0;
    SizeTolerance tolerance = plan.job().tolerance(layout.sheet());
    if (!bought || tolerance.isNone() || !plan.job().sheets().contains(layout.sheet())) {
      return Optional.empty();
    }
    double along = layout.sheet().length().millimetres() - layout.reach().x();
    double across = layout.sheet().width().millimetres() - layout.reach().y();
    Length left = Length.ofMillimetres(Math.min(along, across)).minus(tolerance.shortBy());
    return Optional.of(new SheetRoom(index + 1, tolerance, left));
  }
}
