package curvestock.plan;

import curvestock.bound.Fit;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.machine.MachineSetup.Bed;
import curvestock.packing.Effort;
import curvestock.packing.Packers;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.purchase.Breakdown;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Plans a job: packs every kind of sheet, then chooses the cheapest purchase. */
public final class Planner {

  private final Job job;
  private final PlanListener listener;
  private final Packers packers;

  public Planner(Job job, PlanListener listener) {
    this(job, listener, Packers.FORGETFUL);
  }

  /** A planner that may find packings in a store. */
  public Planner(Job job, PlanListener listener, Packers packers) {
    this.job = job;
    this.listener = listener;
    this.packers = packers;
  }

  /**
   * The plan; the same for the same job, whatever the machine, unless the listener stops it.
   *
   * @throws Infeasible if a piece fits on no sheet, or the sheets that can be had do not suffice
   */
  public Plan plan() throws Infeasible {
    return plan(true);
  }

  /**
   * The same sheets without the last touches: pieces of a sheet that is not full are not moved
   * together, and what sheets carried whole would cost is not worked out. What comparisons need.
   *
   * @throws Infeasible as {@link #plan}
   */
  public Plan planRoughly() throws Infeasible {
    return plan(false);
  }

  private Plan plan(boolean finished) throws Infeasible {
    requireOnBed();
    List<Product> products = job.products();
    requireThicknesses(products);
    LayoutPool pool = new LayoutPool(job, listener, packers).with(products);
    boolean everyPieceFits = fit(pool);
    if (!everyPieceFits) {
      requireAllFit(pool);
    }
    Deciding deciding = new Deciding(job, listener, pool);
    Purchase purchase = deciding.decide(products);
    if (finished) {
      purchase = deciding.emptiedLast(purchase, products, remnantBudget());
    }
    List<Layout> layouts = new ArrayList<>(purchase.trimmed());
    // The fullest sheet first: the last one is the one with wood to spare.
    layouts.sort(
        Comparator.comparingInt((Layout layout) -> rank(layout.sheet()))
            .thenComparing(Comparator.comparingDouble(Layout::pieceArea).reversed()));
    layouts.removeIf(layout -> layout.placements().isEmpty());
    if (finished) {
      layouts = new Arranging(job, listener, packers).arranged(layouts);
    }
    List<Capacity> capacities = pool.capacities();
    Optional<Purchase> uncut = finished ? carriedWhole(products, pool) : Optional.empty();
    return new Plan(
        job,
        purchase,
        layouts,
        capacities,
        uncut,
        deciding.obstacles(purchase),
        listener.stopped());
  }

  /** Pairs of pieces that are tested for the sake of a remnant. */
  private long remnantBudget() {
    return job.search().effort() == Effort.QUICK ? 1_300_000 : 2_500_000;
  }

  /** Looks longer for pieces that no lattice lays on any sheet; whether all lie on one then. */
  private boolean fit(LayoutPool pool) {
    boolean all = true;
    for (Demand demand : job.demands()) {
      List<Slot> slots =
          pool.slots().stream().filter(slot -> slot.piece().equals(demand.piece())).toList();
      boolean fits = slots.stream().anyMatch(slot -> slot.found() > 0);
      for (int k = 0; k < slots.size() && !fits; k++) {
        fits = slots.get(k).bound().count() > 0 && pool.search(slots.get(k), 1);
      }
      all &= fits;
    }
    return all;
  }

  /** Sheets of one thickness stand together, in the order in which the job lists them. */
  private int rank(SheetStock sheet) {
    for (int i = 0; i < job.sheets().size(); i++) {
      if (job.sheets().get(i).isAsThickAs(sheet.thickness())) {
        return i;
      }
    }
    return job.sheets().size();
  }

  /** What would be bought if no sheet had to be ripped; empty if none has. */
  private Optional<Purchase> carriedWhole(List<Product> products, LayoutPool pool) {
    List<Product> whole = job.wholeProducts();
    boolean ripped =
        products.size() < whole.size()
            || products.stream()
                .flatMap(product -> product.breakdowns().stream())
                .anyMatch(Breakdown::isRipped);
    if (!ripped || listener.stopped()) {
      return Optional.empty();
    }
    listener.step("comparing with sheets taken home whole");
    try {
      Purchase found = new Deciding(job, listener, pool.with(whole)).decide(whole);
      // Stopped half-way it might be dearer than it need be, and ripping seem cheaper.
      return listener.stopped() ? Optional.empty() : Optional.of(found);
    } catch (Infeasible e) {
      return Optional.empty();
    }
  }

  /** A piece larger than the machine's bed can be cut from no sheet: told before any search. */
  private void requireOnBed() throws Infeasible {
    if (job.machine().bed().isEmpty()) {
      return;
    }
    Bed bed = job.machine().bed().get();
    SheetStock whole =
        SheetStock.rectangle(
            "bed", bed.length(), bed.width(), job.sheets().get(0).thickness(), Money.ZERO);
    List<Told> sentences =
        job.demands().stream()
            .map(Demand::piece)
            .filter(piece -> Fit.isImpossible(piece, whole, job.cutting()))
            .map(piece -> new Advice(job).forBed(piece, bed))
            .toList();
    if (!sentences.isEmpty()) {
      throw Infeasible.of(sentences);
    }
  }

  private void requireThicknesses(List<Product> products) throws Infeasible {
    List<String> sentences = new ArrayList<>();
    for (Demand demand : job.demands()) {
      Piece piece = demand.piece();
      boolean offered = job.sheets().stream().anyMatch(sheet -> job.suits(piece, sheet));
      boolean carried = products.stream().anyMatch(product -> job.suits(piece, product.stock()));
      if (!offered) {
        sentences.add(new Advice(job).forThickness(piece));
      } else if (!carried) {
        sentences.add(new Advice(job).forCarrying(piece));
      }
    }
    if (!sentences.isEmpty()) {
      throw new Infeasible(sentences);
    }
  }

  private void requireAllFit(LayoutPool pool) throws Infeasible {
    List<Piece> tooLarge =
        job.demands().stream()
            .map(Demand::piece)
            .filter(
                piece ->
                    pool.capacities().stream()
                        .noneMatch(has -> has.piece().equals(piece) && has.found() > 0))
            .toList();
    if (!tooLarge.isEmpty()) {
      throw Infeasible.of(new Advice(job).forUnfit(tooLarge));
    }
  }
}
