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
import curvestock.units.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;

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
    List<Layout> emptiest = new ArrayList<>(plan.layouts());
    emptiest.sort(Comparator.comparingDouble(Layout::areaYield));
    SmallFit fit = SmallFit.none(emptiest);
    for (List<Demand> alike : byThickness(small)) {
      fit = fit(plan, alike, fit);
    }
    return fit;
  }

  /** Plates may be of another thickness than the roadbed: each thickness has sheets of its own. */
  private Collection<List<Demand>> byThickness(List<Demand> small) {
    return small.stream()
        .collect(
            Collectors.groupingBy(
                demand -> demand.piece().thickness().orElse(main.thickness()),
                TreeMap::new,
                Collectors.toList()))
        .values();
  }

  private SmallFit fit(Plan plan, List<Demand> small, SmallFit before) {
    Length thick = small.get(0).piece().thickness().orElse(main.thickness());
    int wanted = Design.count(small);
    double area = small.stream().mapToDouble(d -> d.count() * d.piece().shape().area()).sum();
    SearchSettings quick = plan.job().search().at(Effort.QUICK);
    List<Demand> rest = small;
    List<Layout> layouts = new ArrayList<>();
    for (Layout layout : before.layouts()) {
      Layout filled = layout;
      if (!rest.isEmpty() && layout.sheet().isAsThickAs(thick)) {
        Packer packer = packers.of(layout.sheet(), plan.job().cutting(), quick);
        filled = packer.fillUp(layout, rest, Control.NONE).layout();
        rest = filled.rest(rest, 1);
      }
      layouts.add(filled);
    }
    int nested = wanted - Design.count(rest);
    SheetStock fresh = fresh(plan, thick);
    Packer packer = packers.of(fresh, plan.job().cutting(), quick);
    int extra = 0;
    long left = left(plan, fresh);
    double perRound = -1;
    while (!rest.isEmpty() && extra < left && perRound != 0) {
      Layout empty = new Layout(fresh, plan.job().cutting(), List.of());
      Layout filled = packer.fillUp(empty, rest, Control.NONE).layout();
      perRound = filled.placements().size();
      rest = filled.rest(rest, 1);
      extra += perRound > 0 ? 1 : 0;
      layouts.add(filled);
    }
    return new SmallFit(
        before.wanted() + wanted,
        before.nested() + nested,
        before.extraSheets() + extra,
        before.extraCost().plus(fresh.price().times(extra)),
        before.area() + area,
        before.extraArea() + extra * fresh.area(),
        before.complete() && rest.isEmpty(),
        layouts);
  }

  /** The sheet to buy for what has no room: the main one, else the cheapest that is as thick. */
  private SheetStock fresh(Plan plan, Length thick) {
    return main.isAsThickAs(thick)
        ? main
        : plan.job().sheets().stream()
            .filter(sheet -> sheet.isAsThickAs(thick))
            .min(Comparator.comparing(SheetStock::price))
            .orElse(main);
  }

  /** How many of a sheet can still be had. */
  private static long left(Plan plan, SheetStock sheet) {
    long used = plan.layouts().stream().filter(layout -> layout.sheet().equals(sheet)).count();
    return sheet.available().isPresent() ? sheet.available().getAsInt() - used : Long.MAX_VALUE;
  }
}
