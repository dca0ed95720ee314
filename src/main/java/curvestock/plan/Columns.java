package curvestock.plan;

import curvestock.bound.Bound;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.packing.Effort;
import curvestock.packing.Packed;
import curvestock.packing.Packer;
import curvestock.packing.Packers;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.purchase.Breakdown;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Packed layouts to choose a purchase from: for every kind of sheet or panel the fullest layout of
 * each piece, and where several kinds are wanted, mixed layouts that use up the demand sheet by
 * sheet.
 */
final class Columns {

  /** A job that needs more mixed sheets than this repeats the last ones. */
  private static final int MOST_MIXED = 60;

  /** Sheets of which the area alone allows more pieces than this hold too many for other proofs. */
  private static final int MOST_PROVEN = 16;

  private final Job job;
  private final PlanListener listener;
  private final Packers packers;
  private final List<Layout> layouts = new ArrayList<>();
  private final List<Capacity> capacities = new ArrayList<>();
  private final Set<SheetStock> packed = new HashSet<>();

  Columns(Job job, PlanListener listener, Packers packers) {
    this.packers = packers;
    this.job = job;
    this.listener = listener;
  }

  /** Packs every panel of the products that can be had and is not packed yet. */
  Columns with(List<Product> products) {
    for (Product product : products) {
      for (Breakdown breakdown : product.breakdowns()) {
        for (Panel panel : breakdown.panels()) {
          if (product.available() > 0 && packed.add(panel.stock())) {
            pack(panel.stock());
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

  List<Capacity> capacities() {
    return List.copyOf(capacities);
  }

  private void pack(SheetStock sheet) {
    List<Demand> demands =
        job.demands().stream().filter(demand -> job.suits(demand.piece(), sheet)).toList();
    Packer packer = packers.of(sheet, job.cutting(), job.search());
    for (Demand demand : demands) {
      listener.step("packing " + demand.piece().id() + " on " + sheet.name());
      Bound bound = Bound.quick(demand.piece(), sheet, job.cutting());
      boolean provable = isProvable(bound, demand.piece()) && !listener.stopped();
      int byPattern = provable ? pattern(packer, demand.piece()) : 0;
      if (provable) {
        bound = proven(bound, demand.piece(), sheet, byPattern);
      }
      int sought = Math.min(bound.count(), demand.count());
      Packed packed = packer.most(demand.piece(), sought, listener);
      int found = packed.layout().placements().size();
      // From the pattern's count on it was tried before.
      if (found < sought && found != byPattern && !listener.stopped()) {
        bound = bound.byCases(demand.piece(), sheet, job.cutting(), found, proofTests(), listener);
      }
      capacities.add(new Capacity(demand.piece(), sheet, found, sought, bound, packed.how()));
      keep(packed.layout());
    }
    if (demands.size() > 1) {
      mix(sheet, demands, packer);
    }
  }

  /** Proofs by cases are for few sectors only, and even to try them takes a regular layout. */
  private static boolean isProvable(Bound bound, Piece piece) {
    return bound.count() >= 2
        && bound.count() <= MOST_PROVEN
        && piece.shape().blank() instanceof AnnularSector;
  }

  private static int pattern(Packer packer, Piece piece) {
    return packer.structured(piece).layout().placements().size();
  }

  /**
   * A limit before the search, so that nothing is sought that is proven impossible. A regular
   * layout shows from which count on a proof may be tried.
   */
  private Bound proven(Bound bound, Piece piece, SheetStock sheet, int byPattern) {
    listener.step("proving a limit for " + piece.id() + " on " + sheet.name());
    Bound byCases = bound.byCases(piece, sheet, job.cutting(), byPattern, proofTests(), listener);
    return job.search().effort() == Effort.THOROUGH && byCases.count() > byPattern
        ? byCases.or(Bound.thorough(piece, sheet, job.cutting()))
        : byCases;
  }

  private long proofTests() {
    return switch (job.search().effort()) {
      case QUICK -> 500_000;
      case NORMAL -> 3_000_000;
      case THOROUGH -> 60_000_000;
    };
  }

  private void mix(SheetStock sheet, List<Demand> demands, Packer packer) {
    List<Demand> rest = demands;
    for (int k = 0; k < MOST_MIXED && !rest.isEmpty(); k++) {
      listener.step("filling " + sheet.name() + " with what is left, sheet " + (k + 1));
      Layout layout = packer.fill(rest, listener).layout();
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
