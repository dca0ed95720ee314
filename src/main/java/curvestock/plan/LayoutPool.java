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
import curvestock.purchase.Breakdown;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Packed layouts to choose a purchase from: for every kind of sheet or panel the fullest layout of
 * each piece, and where several kinds are wanted, mixed layouts that use up the demand sheet by
 * sheet. At first without any search; {@link #search} and {@link #mixLonger} look for more.
 */
final class LayoutPool {

  /** A job that needs more mixed sheets than this repeats the last ones. */
  private static final int MOST_MIXED = 60;

  private final Job job;
  private final PlanListener listener;
  private final Packers packers;
  private final List<Layout> layouts = new ArrayList<>();
  private final List<Slot> slots = new ArrayList<>();
  private final Map<SheetStock, Packer> packed = new LinkedHashMap<>();

  LayoutPool(Job job, PlanListener listener, Packers packers) {
    this.packers = packers;
    this.job = job;
    this.listener = listener;
  }

  /** Packs every panel of the products that can be had and is not packed yet, without a search. */
  LayoutPool with(List<Product> products) {
    for (Product product : products) {
      for (Breakdown breakdown : product.breakdowns()) {
        for (Panel panel : breakdown.panels()) {
          if (product.available() > 0 && !packed.containsKey(panel.stock())) {
            packed.put(panel.stock(), packers.of(panel.stock(), job.cutting(), job.search()));
            packAtOnce(panel.stock());
          }
        }
      }
    }
    return this;
  }

  /** The layouts that lie on a panel of one of the products. */
  List<Layout> layouts(List<Product> products) {
    Set<SheetStock> stocks = new HashSet<>();
    for (Product product : products) {
      for (Breakdown breakdown : product.breakdowns()) {
        breakdown.panels().forEach(panel -> stocks.add(panel.stock()));
      }
    }
    return layouts.stream().filter(layout -> stocks.contains(layout.sheet())).toList();
  }

  /** The layouts that lie on the sheet. */
  List<Layout> layouts(SheetStock sheet) {
    return layouts.stream().filter(layout -> layout.sheet().equals(sheet)).toList();
  }

  List<Capacity> capacities() {
    return slots.stream().map(Slot::capacity).toList();
  }

  List<Slot> slots() {
    return List.copyOf(slots);
  }

  /** The slot; nothing if the sheet is of another thickness, or cannot be had. */
  Optional<Slot> slot(Demand demand, SheetStock sheet) {
    return slots.stream()
        .filter(slot -> slot.piece().equals(demand.piece()) && slot.sheet.equals(sheet))
        .findFirst();
  }

  private List<Demand> suiting(SheetStock sheet) {
    return job.demands().stream().filter(demand -> job.suits(demand.piece(), sheet)).toList();
  }

  private void packAtOnce(SheetStock sheet) {
    listener.step("trying layouts on " + sheet.name());
    List<Demand> demands = suiting(sheet);
    for (Demand demand : demands) {
      Slot slot = new Slot(demand, sheet, job.cutting(), packed.get(sheet));
      slots.add(slot);
      keep(slot.best().layout());
    }
    if (demands.size() > 1) {
      mix(demands, rest -> packed.get(sheet).fillAtOnce(rest, Control.NONE), Control.NONE);
    }
  }

  /**
   * Looks for so many of a piece on a panel, with the whole budget.
   *
   * @return whether more were found than before
   */
  boolean search(Slot slot, int count) {
    listener.step(
        "trying to fit " + count + " of " + slot.piece().id() + " on " + slot.sheet.name());
    boolean fuller = slot.offer(slot.packer.most(slot.piece(), count, listener));
    if (fuller) {
      keep(slot.best().layout());
    }
    if (slot.found() < count && !listener.stopped()) {
      slot.exhaust();
    }
    return fuller;
  }

  /** Looks for more of a piece on a panel, one by one, each with a budget of its own. */
  boolean searchOn(Slot slot, long budget) {
    boolean found = false;
    while (slot.found() < Math.min(slot.wanted(), slot.plausible()) && !listener.stopped()) {
      Optional<Packed> more = slot.packer.oneMore(slot.piece(), slot.best(), budget, listener);
      if (more.isEmpty()) {
        break;
      }
      found |= slot.offer(more.get());
      keep(slot.best().layout());
    }
    return found;
  }

  /** A sharper limit by edge waste, where more of a piece are wanted than were found. */
  void sharpen(Slot slot) {
    if (slot.found() < slot.wanted() && !listener.stopped()) {
      boolean closely = job.search().effort() == Effort.THOROUGH;
      slot.prove(slot.bound().byEdges(slot.piece(), slot.sheet, job.cutting(), closely));
    }
  }

  /**
   * A sharper limit for few large pieces, which takes longer. A regular layout shows from which
   * count on a proof may be tried.
   */
  void prove(Slot slot) {
    if (!slot.isProvable() || listener.stopped()) {
      return;
    }
    listener.step("working out the limit for " + slot.piece().id() + " on " + slot.sheet.name());
    Bound byCases =
        slot.bound()
            .byCases(slot.piece(), slot.sheet, job.cutting(), slot.found(), proofTests(), listener);
    slot.prove(byCases);
    if (job.search().effort() == Effort.THOROUGH && byCases.count() > slot.found()) {
      slot.prove(Bound.thorough(slot.piece(), slot.sheet, job.cutting()));
    }
  }

  private long proofTests() {
    return switch (job.search().effort()) {
      case QUICK -> 500_000;
      case NORMAL -> 3_000_000;
      case THOROUGH -> 60_000_000;
    };
  }

  /**
   * Fills every panel with what is left, sheet by sheet, all pieces free to move.
   *
   * @return whether a new layout was found
   */
  boolean mixLonger() {
    int before = layouts.size();
    packed.forEach(
        (sheet, packer) -> {
          List<Demand> demands = suiting(sheet);
          if (demands.size() > 1 && !listener.stopped()) {
            listener.step("filling a sheet of " + sheet.name() + " with mixed pieces");
            mix(
                demands,
                rest -> packer.fill(rest, demand -> known(demand, sheet), listener),
                listener);
          }
        });
    return layouts.size() > before;
  }

  private Packed known(Demand demand, SheetStock sheet) {
    return slot(demand, sheet).orElseThrow().best();
  }

  /** Fills a sheet with as many of the pieces as it can. */
  private interface Filling {
    Packed of(List<Demand> rest);
  }

  private void mix(List<Demand> demands, Filling filling, Control control) {
    List<Demand> rest = demands;
    for (int k = 0; k < MOST_MIXED && !rest.isEmpty() && !control.stopped(); k++) {
      Layout layout = filling.of(rest).layout();
      if (layout.placements().isEmpty()) {
        return;
      }
      keep(layout);
      rest = layout.rest(rest, repeats(rest, layout));
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
}
