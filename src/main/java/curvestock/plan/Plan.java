package curvestock.plan;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.purchase.Purchase;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The answer to a job.
 *
 * @param purchase what to buy, and the bound beside its cost
 * @param layouts one for each sheet that is cut, with exactly the pieces wanted in all; at least
 *     one
 * @param capacities how many of each piece each kind of sheet holds
 * @param stopped whether planning was stopped before its budget was used
 */
public record Plan(
    Job job, Purchase purchase, List<Layout> layouts, List<Capacity> capacities, boolean stopped) {

  public Plan {
    layouts = List.copyOf(layouts);
    capacities = List.copyOf(capacities);
  }

  /**
   * What is written on each piece, by sheet in the order of its placements: the piece's id and a
   * number that counts on over all sheets, for example {@code S-14}.
   */
  public List<List<String>> labels() {
    Map<String, Integer> last = new HashMap<>();
    return layouts.stream()
        .map(
            layout ->
                layout.placements().stream()
                    .map(placement -> placement.piece().id())
                    .map(id -> id + "-" + last.merge(id, 1, Integer::sum))
                    .toList())
        .toList();
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
