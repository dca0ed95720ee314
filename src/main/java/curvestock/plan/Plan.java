package curvestock.plan;

import curvestock.helix.build.PieceKind;
import curvestock.helix.build.Roadbed;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.purchase.Cost;
import curvestock.purchase.Purchase;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The answer to a job.
 *
 * @param purchase what to buy, and the bound beside its cost
 * @param layouts one for each sheet or panel that is cut, with exactly the pieces wanted in all; at
 *     least one
 * @param capacities how many of each piece each kind of sheet or panel holds
 * @param carriedWhole what would be bought if the store need not rip any sheet; empty if it need
 *     not, or if that is not known
 * @param obstacles what keeps a cheaper purchase from being found, where none is proven impossible
 * @param stopped whether planning was stopped before its budget was used
 * @param numbers what somebody has written on the pieces, in the order of the layouts; empty to
 *     have them numbered
 */
public record Plan(
    Job job,
    Purchase purchase,
    List<Layout> layouts,
    List<Capacity> capacities,
    Optional<Purchase> carriedWhole,
    List<Obstacle> obstacles,
    boolean stopped,
    List<List<String>> numbers) {

  public Plan {
    layouts = List.copyOf(layouts);
    capacities = List.copyOf(capacities);
    obstacles = List.copyOf(obstacles);
    numbers = numbers.stream().map(List::copyOf).toList();
  }

  /** A plan whose pieces are numbered by their order. */
  public Plan(
      Job job,
      Purchase purchase,
      List<Layout> layouts,
      List<Capacity> capacities,
      Optional<Purchase> carriedWhole,
      List<Obstacle> obstacles,
      boolean stopped) {
    this(job, purchase, layouts, capacities, carriedWhole, obstacles, stopped, List.of());
  }

  /**
   * The same with these numbers on the pieces of its layouts, if they are those that it would give,
   * in another order.
   */
  public Plan numbered(List<List<String>> others) {
    boolean same = byKind(others).equals(byKind(labels()));
    return same
        ? new Plan(job, purchase, layouts, capacities, carriedWhole, obstacles, stopped, others)
        : this;
  }

  /** The numbers of each kind of piece, sorted; nothing if they are not one for each piece. */
  private Map<String, List<String>> byKind(List<List<String>> labels) {
    Map<String, List<String>> byKind = new HashMap<>();
    for (int i = 0; i < layouts.size(); i++) {
      List<Placement> placements = layouts.get(i).placements();
      if (labels.size() != layouts.size() || labels.get(i).size() != placements.size()) {
        return Map.of();
      }
      for (int k = 0; k < placements.size(); k++) {
        byKind
            .computeIfAbsent(placements.get(k).piece().id(), id -> new ArrayList<>())
            .add(labels.get(i).get(k));
      }
    }
    byKind.values().forEach(list -> list.sort(null));
    return byKind;
  }

  /** The same purchase with other layouts, or another purchase of the same job. */
  public Plan with(Purchase other, List<Layout> otherLayouts) {
    return new Plan(job, other, otherLayouts, capacities, carriedWhole, obstacles, stopped);
  }

  /**
   * What is written on each piece, by sheet in the order of its placements: the number of the
   * assembly schedule for a piece of a whole helix's roadbed, for any other the piece's id and a
   * number that counts on over all sheets, for example {@code S-14}; spares of roadbed come last
   * and say so. In several jobs together the job's letter comes first: {@code B/14}, {@code
   * B.plate-3}.
   */
  public List<List<String>> labels() {
    if (!numbers.isEmpty()) {
      return numbers;
    }
    Map<String, Iterator<String>> scheduled = new HashMap<>();
    for (Job.Bed bed : job.beds()) {
      Roadbed roadbed = bed.plan().roadbed();
      for (PieceKind kind : roadbed.kinds()) {
        scheduled.put(
            bed.ids() + kind.id(),
            roadbed.numbersOf(kind).stream().map(number -> bed.numbers() + number).iterator());
      }
    }
    return labels(layouts, scheduled);
  }

  /** Labels from the numbers scheduled for a piece id; pieces of other ids are counted. */
  static List<List<String>> labels(List<Layout> layouts, Map<String, Iterator<String>> scheduled) {
    Map<String, Integer> last = new HashMap<>();
    List<List<String>> labels = new ArrayList<>();
    for (Layout layout : layouts) {
      List<String> onSheet = new ArrayList<>();
      for (Placement placement : layout.placements()) {
        String id = placement.piece().id();
        Iterator<String> numbers = scheduled.get(id);
        if (numbers == null) {
          onSheet.add(id + "-" + last.merge(id, 1, Integer::sum));
        } else {
          onSheet.add(
              numbers.hasNext()
                  ? numbers.next()
                  : id + "-spare-" + last.merge(id, 1, Integer::sum));
        }
      }
      labels.add(List.copyOf(onSheet));
    }
    return labels;
  }

  /** The sheet (from 1) on which each label is cut. */
  public Map<String, Integer> sheetOfLabel() {
    Map<String, Integer> sheets = new HashMap<>();
    List<List<String>> labels = labels();
    for (int sheet = 0; sheet < labels.size(); sheet++) {
      for (String label : labels.get(sheet)) {
        sheets.put(label, sheet + 1);
      }
    }
    return Map.copyOf(sheets);
  }

  /** What its sheets cost, with the job's tax, and what of that is proven. */
  public Cost cost() {
    return Cost.of(purchase.sheetCost(), purchase.bound(), job.terms().tax());
  }

  /** What is left once all is cut, as sheets on hand for the next job. */
  public List<SheetStock> stockAfter() {
    return new StockAfter(job, purchase.lines(), layouts).list();
  }

  /** Number of pieces on all sheets. */
  public int pieces() {
    return layouts.stream().mapToInt(layout -> layout.placements().size()).sum();
  }

  /** Share of the area of the sheets cut that becomes pieces, 0 to 1. */
  public double areaYield() {
    double pieces = layouts.stream().mapToDouble(Layout::pieceArea).sum();
    return pieces / layouts.stream().mapToDouble(layout -> layout.sheet().area()).sum();
  }
}
