package curvestock.plan;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.purchase.Cheaper;
import curvestock.purchase.CuttingStockInstance;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Decides what to buy. The first purchase follows from lattices at once. From then on the question
 * is not how many pieces a sheet can hold but which cheaper purchase there could be, and what its
 * fullest sheet would have to hold: only that is looked for, the nearest first, and nothing where
 * no cheaper purchase is plausible.
 *
 * <p>Stopped at any time, the purchase is as good as the first one or better.
 */
final class Deciding {

  private final PlanListener listener;
  private final LayoutPool pool;
  private final Choosing choosing;

  Deciding(Job job, PlanListener listener, LayoutPool pool) {
    this.listener = listener;
    this.pool = pool;
    this.choosing = new Choosing(job, pool, listener);
  }

  /** What a cheaper purchase needs of one slot. */
  private record Need(Slot slot, int count, int together) {
    double gain() {
      return (double) count / Math.max(1, slot.found());
    }

    double wood() {
      return count * slot.piece().shape().area();
    }

    Obstacle obstacle() {
      return new Obstacle(
          slot.piece(),
          slot.sheet,
          count,
          slot.found(),
          slot.plausible(),
          together,
          slot.isExhausted());
    }
  }

  /** What is tried in turn while a cheaper purchase is plausible. */
  private enum Stage {
    FULLEST_SHEETS,
    MIXED,
    ALL_COUNTS,
    MIXED_AGAIN,
    END;

    @SuppressWarnings("EnumOrdinal") // their order is what they are
    Stage next() {
      return values()[ordinal() + 1];
    }
  }

  /**
   * @param products of which all panels that can be had are packed
   * @throws Infeasible if the sheets that can be had do not suffice, with what would help
   */
  Purchase decide(List<Product> products) throws Infeasible {
    Purchase best = first(products);
    Stage stage = Stage.FULLEST_SHEETS;
    while (stage != Stage.END && !listener.stopped() && choosing.cheaper(best).isPossible()) {
      boolean found = look(stage, best);
      Purchase next = found ? better(products, best) : best;
      boolean cheaper = isCheaper(next, best);
      best = next;
      boolean ended = stage != Stage.FULLEST_SHEETS || nearest(best).isEmpty();
      if (cheaper) {
        stage = Stage.FULLEST_SHEETS;
      } else if (ended) {
        stage = stage == Stage.ALL_COUNTS && !found ? Stage.END : stage.next();
      }
    }
    return choosing.proven(best);
  }

  /**
   * A purchase as cheap whose fullest sheets hold more, so that the last one is emptier; the same
   * if none was found. A short search: only the remnant hangs on it.
   *
   * @param budget pairs of pieces that the search for each piece more may test
   */
  Purchase emptiedLast(Purchase purchase, List<Product> products, long budget) throws Infeasible {
    boolean found = false;
    for (Slot slot : pool.slots()) {
      if (isFullest(slot, purchase) && !listener.stopped()) {
        listener.step("trying to fit more of " + slot.piece().id() + " on the fullest sheet");
        found |= pool.searchOn(slot, budget);
      }
    }
    if (!found) {
      return purchase;
    }
    return better(products, purchase);
  }

  /**
   * Whether a sheet holds as many of the piece alone as were found, and another holds more of it.
   */
  private static boolean isFullest(Slot slot, Purchase purchase) {
    List<Layout> layouts = purchase.trimmed();
    return slot.found() > 1
        && layouts.stream().anyMatch(layout -> layout.equals(slot.best().layout()))
        && layouts.stream()
            .anyMatch(
                layout -> !layout.equals(slot.best().layout()) && layout.count(slot.piece()) > 0);
  }

  /** Most free wood on one sheet, in square millimetres. */
  private static double emptiest(Purchase purchase) {
    return purchase.trimmed().stream()
        .mapToDouble(layout -> layout.sheet().area() - layout.pieceArea())
        .max()
        .orElse(0);
  }

  /** The purchase from lattices; where these do not suffice, from all that can be found. */
  private Purchase first(List<Product> products) throws Infeasible {
    listener.step("choosing the sheets to buy");
    Purchase first;
    try {
      first = choosing.choose(products);
    } catch (Infeasible tooFew) {
      searchAll();
      pool.mixLonger();
      first = choosing.choose(products);
    }
    if (first.gap().equals(Money.ZERO) && !first.sheetCost().equals(Money.ZERO)) {
      return first;
    }
    pool.slots().forEach(pool::sharpen);
    if (choosing.isWorthProving(first)) {
      pool.slots().forEach(pool::prove);
    }
    return choosing.proven(first);
  }

  /** Whether anything new was found. */
  private boolean look(Stage stage, Purchase best) {
    return switch (stage) {
      case FULLEST_SHEETS ->
          nearest(best).map(need -> pool.search(need.slot, need.count)).orElse(false);
      case ALL_COUNTS -> searchAll();
      case MIXED, MIXED_AGAIN -> pool.mixLonger();
      case END -> false;
    };
  }

  /**
   * From all layouts found by now: cheaper, or as cheap from other sheets that the choice puts
   * first, or with more room on the emptiest sheet.
   */
  private Purchase better(List<Product> products, Purchase best) throws Infeasible {
    listener.step("choosing the sheets to buy");
    Purchase next = choosing.choose(products);
    boolean asCheap = next.sheetCost().equals(best.sheetCost()) && next.sheets() == best.sheets();
    boolean better = !next.lines().equals(best.lines()) || emptiest(next) > emptiest(best);
    return isCheaper(next, best) || (asCheap && better) ? next : best;
  }

  private static boolean isCheaper(Purchase some, Purchase other) {
    int byMoney = some.sheetCost().compareTo(other.sheetCost());
    return byMoney < 0 || (byMoney == 0 && some.sheets() < other.sheets());
  }

  private boolean searchAll() {
    boolean found = false;
    for (Slot slot : pool.slots()) {
      int most = Math.min(slot.wanted(), slot.plausible());
      if (slot.found() < most && !listener.stopped()) {
        found |= pool.search(slot, most);
      }
    }
    return found;
  }

  /** The least gain that a cheaper purchase cannot do without; nothing if counts do not hinder. */
  private Optional<Need> nearest(Purchase best) {
    Cheaper cheaper = choosing.cheaper(best);
    return needs(cheaper, best.instance()).stream()
        .filter(need -> need.count > need.slot.found() && !need.slot.isExhausted())
        .min(Comparator.comparingDouble(Need::gain));
  }

  private List<Need> needs(Cheaper cheaper, CuttingStockInstance instance) {
    List<Need> needs = new ArrayList<>();
    List<Panel> panels = instance.panels();
    boolean one = cheaper.isOneSheet();
    int all = instance.demands().stream().mapToInt(Demand::count).sum();
    for (int p = 0; p < panels.size(); p++) {
      for (int i = 0; i < instance.demands().size(); i++) {
        Demand demand = instance.demands().get(i);
        Optional<Slot> slot = pool.slot(demand, panels.get(p).stock());
        if (slot.isPresent() && demand.count() > 1) {
          int needed = cheaper.needed(i, p);
          needs.add(new Need(slot.get(), needed, one ? all : needed));
        }
      }
    }
    return needs;
  }

  /** What keeps any cheaper purchase from being found; nothing where none is possible. */
  List<Obstacle> obstacles(Purchase purchase) {
    Cheaper proven = choosing.cheaperByProof(purchase);
    if (!proven.isPossible()) {
      return List.of();
    }
    return needs(proven, purchase.instance()).stream()
        .filter(need -> need.count > need.slot.found())
        .sorted(Comparator.comparingDouble(Need::wood).reversed())
        .map(Need::obstacle)
        .toList();
  }
}
