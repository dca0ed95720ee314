package curvestock.compare;

import curvestock.geometry.Box;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.plan.Infeasible;
import curvestock.plan.Plan;
import curvestock.plan.Planner;
import curvestock.sheet.SheetStock;
import curvestock.sheet.SizeTolerance;
import curvestock.units.Money;
import java.util.Optional;

/**
 * Tries whether a choice still does with its sheets if these come as small as they may: whether
 * every layout has so much room to spare, or can be pushed together, or else the whole job planned
 * anew. Nobody's money should hang on the last sixteenth of a sheet that he has not measured.
 */
final class SmallestSheets {

  private static final double ROUNDING = 1e-6;

  private final Designs designs;
  private final Packers packers;
  private final CompareListener listener;

  SmallestSheets(Designs designs, Packers packers, CompareListener listener) {
    this.designs = designs;
    this.packers = packers;
    this.listener = listener;
  }

  /** The choice with what was found; as it was where all its sheets were measured. */
  SegmentOption tried(SegmentOption option) {
    Job job = designs.job();
    SizeTolerance tolerance = job.tolerance(designs.mainSheet());
    if (job.onSmallestSheets().sheets().equals(job.sheets())) {
      return option;
    }
    int sheets = option.sheets();
    Money cost = option.sheetCost();
    if (!option.plan().layouts().stream().allMatch(this::holds)) {
      Optional<Plan> anew = planned(option);
      sheets =
          anew.map(plan -> plan.purchase().sheets() + option.small().extraSheets())
              .map(found -> Math.max(found, option.sheets()))
              .orElse(ShortSheets.NONE);
      cost =
          anew.map(plan -> plan.cost().plus(option.small().extraCost()).paid())
              .filter(found -> found.compareTo(option.sheetCost()) > 0)
              .orElse(option.sheetCost());
    }
    return option.with(new ShortSheets(tolerance.shortBy(), tolerance.source(), sheets, cost));
  }

  /** Whether what lies on the sheet finds room on the smallest sheet of its kind. */
  private boolean holds(Layout layout) {
    SheetStock sheet = layout.sheet();
    SizeTolerance tolerance = designs.job().tolerance(sheet);
    SheetStock smallest = tolerance.smallest(sheet);
    boolean panel = !designs.job().sheets().contains(sheet);
    // Panels that a store rips are planned at their least size already.
    if (panel || smallest.equals(sheet)) {
      return true;
    }
    double least = tolerance.shortBy().millimetres() - ROUNDING;
    Box pieces = layout.extent();
    double margins = 2 * layout.cutting().margin().millimetres();
    boolean shifts =
        sheet.length().millimetres() - margins - pieces.width() >= least
            && sheet.width().millimetres() - margins - pieces.height() >= least;
    return shifts
        || packers
            .of(smallest, layout.cutting(), designs.job().search().at(Effort.QUICK))
            .pushed(layout)
            .isPresent();
  }

  private Optional<Plan> planned(SegmentOption option) {
    try {
      Job job = designs.on(designs.job().onSmallestSheets()).in(option.division()).job();
      Job search = job.with(job.search().at(option.effort()));
      String name = "segments of " + option.angle() + " on undersize sheets";
      return Optional.of(new Planner(search, new Named(name, listener), packers).planRoughly());
    } catch (Infeasible | IllegalArgumentException impossible) {
      return Optional.empty();
    }
  }
}
