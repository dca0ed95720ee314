package curvestock.plan;

import curvestock.bound.Bound;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Control;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;

/**
 * Packed layouts to choose a purchase from: for every kind of sheet the fullest layout of each
 * piece, and where several kinds are wanted, mixed layouts that use up the demand sheet by sheet.
 */
final class Columns {

  /** A job that needs more mixed sheets than this repeats the last ones. */
  private static final int MOST_MIXED = 60;

  private final Job job;
  private final List<Demand> demands;
  private final PlanListener listener;
  private final Packers packers;
  private final Control control;
  private final List<Layout> layouts = new ArrayList<>();
  private final List<Capacity> capacities = new ArrayList<>();

  Columns(Job job, PlanListener listener, Packers packers) {
    this.packers = packers;
    this.job = job;
    this.demands = job.demands();
    this.listener = listener;
    this.control =
        new Control() {
          @Override
          public boolean stopped() {
            return listener.stopped();
          }

          @Override
          public void worked(long done, long budget) {
            listener.worked(done, budget);
          }
        };
    for (SheetStock sheet : job.sheets()) {
      if (sheet.available().orElse(1) > 0) {
        pack(sheet);
      }
    }
  }

  List<Layout> layouts() {
    return List.copyOf(layouts);
  }

  List<Capacity> capacities() {
    return List.copyOf(capacities);
  }

  private void pack(SheetStock sheet) {
    Packer packer = packers.of(sheet, job.cutting(), job.search());
    for (Demand demand : demands) {
      listener.step("packing " + demand.piece().id() + " on " + sheet.name());
      Bound bound = bound(demand, sheet);
      int sought = Math.min(bound.count(), demand.count());
      Packed packed = packer.most(demand.piece(), sought, control);
      int found = packed.layout().placements().size();
      capacities.add(new Capacity(demand.piece(), sheet, found, sought, bound, packed.how()));
      keep(packed.layout());
    }
    if (demands.size() > 1) {
      mix(sheet, packer);
    }
  }

  private Bound bound(Demand demand, SheetStock sheet) {
    if (job.search().effort() != Effort.THOROUGH) {
      return Bound.quick(demand.piece(), sheet, job.cutting());
    }
    listener.step("proving a limit for " + demand.piece().id() + " on " + sheet.name());
    return Bound.thorough(demand.piece(), sheet, job.cutting());
  }

  private void mix(SheetStock sheet, Packer packer) {
    List<Demand> rest = demands;
    for (int k = 0; k < MOST_MIXED && !rest.isEmpty(); k++) {
      listener.step("filling " + sheet.name() + " with what is left, sheet " + (k + 1));
      Layout layout = packer.fill(rest, control).layout();
      if (layout.placements().isEmpty()) {
        return;
      }
      keep(layout);
      rest = without(rest, layout, repeats(rest, layout));
    }
  }

  private void keep(Layout layout) {
    if (!layout.placements().isEmpty() && !layouts.contains(layout)) {
      layouts.add(layout);
    }
  }

  /**
   * How often the whole layout can be cut before one of its pieces is no longer wanted so often.
   */
  private static int repeats(List<Demand> rest, Layout layout) {
    int repeats = Integer.MAX_VALUE;
    for (Demand demand : rest) {
      int count = layout.count(demand.piece());
      if (count > 0) {
        repeats = Math.min(repeats, demand.count() / count);
      }
    }
    return Math.max(1, repeats);
  }

  private static List<Demand> without(List<Demand> rest, Layout layout, int times) {
    List<Demand> left = new ArrayList<>();
    for (Demand demand : rest) {
      int count = demand.count() - times * layout.count(demand.piece());
      if (count > 0) {
        left.add(new Demand(demand.piece(), count));
      }
    }
    return left;
  }
}
