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
 * sheets of their own.
 */
final class Nesting {

  private final Packers packers;
  private final SheetStock main;
  private final Control control;

  Nesting(Packers packers, SheetStock main, Control control) {
    this.packers = packers;
    this.main = main;
    this.control = control;
  }

  SmallFit fit(Plan plan, List<Demand> small) {
    if (small.isEmpty()) {
      return SmallFit.NONE;
    }
    int wanted = Design.count(small);
    double area = small.stream().mapToDouble(d -> d.count() * d.piece().shape().area()).sum();
    SearchSettings quick = new SearchSettings(plan.job().search().seed(), Effort.QUICK);
    List<Demand> rest = small;
    List<Layout> emptiest = new ArrayList<>(plan.layouts());
    emptiest.sort(Comparator.comparingDouble(Layout::areaYield));
    for (Layout layout : emptiest) {
      if (!rest.isEmpty() && !control.stopped()) {
        Packer packer = packers.of(layout.sheet(), plan.job().cutting(), quick);
        rest = without(rest, packer.fillUp(layout, rest, control).layout());
      }
    }
    int nested = wanted - Design.count(rest);
    Packer packer = packers.of(main, plan.job().cutting(), quick);
    int extra = 0;
    long left = left(plan);
    double perRound = -1;
    while (!rest.isEmpty() && extra < left && perRound != 0 && !control.stopped()) {
      Layout empty = new Layout(main, plan.job().cutting(), List.of());
      Layout filled = packer.fillUp(empty, rest, control).layout();
      perRound = filled.placements().size();
      rest = without(rest, filled);
      extra += perRound > 0 ? 1 : 0;
    }
    return new SmallFit(
        wanted,
        nested,
        extra,
        main.price().times(extra),
        area,
        extra * main.area(),
        rest.isEmpty());
  }

  /** How many of the main sheet can still be had. */
  private long left(Plan plan) {
    long used = plan.layouts().stream().filter(layout -> layout.sheet().equals(main)).count();
    return main.available().isPresent() ? main.available().getAsInt() - used : Long.MAX_VALUE;
  }

  /** What is wanted beyond those that lie on the layout. */
  private static List<Demand> without(List<Demand> wanted, Layout layout) {
    List<Demand> rest = new ArrayList<>();
    for (Demand demand : wanted) {
      int count = demand.count() - layout.count(demand.piece());
      if (count > 0) {
        rest.add(new Demand(demand.piece(), count));
      }
    }
    return rest;
  }
}
