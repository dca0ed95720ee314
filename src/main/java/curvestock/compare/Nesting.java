package curvestock.compare;

import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.packing.SearchSettings;
import curvestock.piece.Demand;
import curvestock.plan.Plan;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Lays small parts into what planned sheets leave over, the emptiest sheet first, and the rest on
 * sheets of their own. Not even a stop cuts that short: a choice whose small parts are not counted
 * would seem cheaper than it is.
 */
final class Nesting {

  private final Packers packers;
  private final SheetStock main;

  Nesting(Packers packers, SheetStock main) {
    this.packers = packers;
    this.main = main;
  }

  SmallFit fit(Plan plan, List<Demand> small) {
    if (small.isEmpty()) {
      return SmallFit.none(plan.layouts());
    }
    int wanted = Design.count(small);
    double area = small.stream().mapToDouble(d -> d.count() * d.piece().shape().area()).sum();
    SearchSettings quick = plan.job().search().at(Effort.QUICK);
    List<Demand> rest = small;
    List<Layout> emptiest = new ArrayList<>(plan.layouts());
    emptiest.sort(Comparator.comparingDouble(Layout::areaYield));
    List<Layout> layouts = new ArrayList<>();
    for (Layout layout : emptiest) {
      Layout filled = layout;
      if (!rest.isEmpty()) {
        Packer packer = packers.of(layout.sheet(), plan.job().cutting(), quick);
        filled = packer.fillUp(layout, rest, Control.NONE).layout();
        rest = filled.rest(rest, 1);
      }
      layouts.add(filled);
    }
    int nested = wanted - Design.count(rest);
    Packer packer = packers.of(main, plan.job().cutting(), quick);
    int extra = 0;
    long left = left(plan);
    double perRound = -1;
    while (!rest.isEmpty() && extra < left && perRound != 0) {
      Layout empty = new Layout(main, plan.job().cutting(), List.of());
      Layout filled = packer.fillUp(empty, rest, Control.NONE).layout();
      perRound = filled.placements().size();
      rest = filled.rest(rest, 1);
      extra += perRound > 0 ? 1 : 0;
      layouts.add(filled);
    }
    return new SmallFit(
        wanted,
        nested,
        extra,
        main.price().times(extra),
        area,
        extra * main.area(),
        rest.isEmpty(),
        layouts);
  }

  /** How many of the main sheet can still be had. */
  private long left(Plan plan) {
    long used = plan.layouts().stream().filter(layout -> layout.sheet().equals(main)).count();
    return main.available().isPresent() ? main.available().getAsInt() - used : Long.MAX_VALUE;
  }
}
