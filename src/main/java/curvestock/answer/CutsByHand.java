package curvestock.answer;

import curvestock.plan.Plan;
import java.util.List;

/**
 * The order in which each sheet of a plan is cut by hand. It is worked out when somebody first asks
 * for it, and then kept: to know which trammel pivots lose their wood is to take each sheet apart.
 */
public final class CutsByHand {

  private final Plan plan;

  /** Empty until they are worked out; a plan has a layout at least. */
  private List<HandCuts> sheets = List.of();

  CutsByHand(Plan plan) {
    this.plan = plan;
  }

  /** One for each layout, in their order. */
  public synchronized List<HandCuts> list() {
    if (sheets.isEmpty()) {
      sheets = HandCuts.of(plan);
    }
    return sheets;
  }
}
