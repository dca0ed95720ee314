package curvestock.purchase.solver;

/** Running sums of a choice in the making; adding or removing a sheet costs its kinds only. */
final class Tally {

  private final Choice choice;
  private final int[] uses;
  private final int[] covered;
  private final int[] panels;
  private final int[] broken;
  private final int[] used;
  private int sheets;

  Tally(Choice choice) {
    this.choice = choice;
    this.uses = new int[choice.layouts()];
    this.covered = new int[choice.demand.length];
    this.panels = new int[choice.perSheet.length];
    this.broken = new int[choice.breakdowns()];
    this.used = new int[choice.products()];
  }

  void add(int layout) {
    change(layout, 1);
  }

  void add(int[] columnUses) {
    for (int j = 0; j < columnUses.length; j++) {
      change(j, columnUses[j]);
    }
  }

  void remove(int layout) {
    change(layout, -1);
  }

  private void change(int layout, int by) {
    uses[layout] += by;
    int panel = choice.panelOf[layout];
    panels[panel] += by;
    int breakdown = choice.breakdownOf[panel];
    int more = -broken[breakdown];
    broken[breakdown] = 0;
    for (int q : choice.panelsOf[breakdown]) {
      broken[breakdown] = Math.max(broken[breakdown], sheetsFor(panels[q], q));
    }
    more += broken[breakdown];
    used[choice.productOf[breakdown]] += more;
    sheets += more;
    int[] counts = choice.counts[layout];
    for (int kind : choice.kindsIn[layout]) {
      covered[kind] += by * counts[kind];
    }
  }

  private int sheetsFor(int count, int panel) {
    return (count + choice.perSheet[panel] - 1) / choice.perSheet[panel];
  }

  /** Whether the layout would need a sheet more, no panel for it being left over. */
  boolean addsSheet(int layout) {
    int panel = choice.panelOf[layout];
    return sheetsFor(panels[panel] + 1, panel) > broken[choice.breakdownOf[panel]];
  }

  /** Whether the layout may be used once more. */
  boolean inStock(int layout) {
    int product = choice.productOf[choice.breakdownOf[choice.panelOf[layout]]];
    return used[product] < choice.available[product] || !addsSheet(layout);
  }

  /** Panels of the kind used so far. */
  int panels(int panel) {
    return panels[panel];
  }

  /** Pieces of the kind still wanted. */
  int wanted(int kind) {
    return Math.max(0, choice.demand[kind] - covered[kind]);
  }

  /** Sheets of the product used so far. */
  int used(int product) {
    return used[product];
  }

  /** Whether nothing is wanted any more. */
  boolean isCovered() {
    for (int i = 0; i < covered.length; i++) {
      if (covered[i] < choice.demand[i]) {
        return false;
      }
    }
    return true;
  }

  /** Whether the layout holds a piece that is still wanted. */
  boolean brings(int layout) {
    for (int kind : choice.kindsIn[layout]) {
      if (covered[kind] < choice.demand[kind]) {
        return true;
      }
    }
    return false;
  }

  int[] uses() {
    return uses.clone();
  }

  int sheets() {
    return sheets;
  }

  /** What the sheets used so far and their cuts cost. */
  long money() {
    long money = 0;
    for (int p = 0; p < used.length; p++) {
      money += choice.cost[p][Math.min(used[p], choice.cost[p].length - 1)];
    }
    for (int b = 0; b < broken.length; b++) {
      money += broken[b] * choice.cutting[b];
    }
    return money;
  }

  Levels levels() {
    long missing = 0;
    long surplus = 0;
    for (int i = 0; i < covered.length; i++) {
      int over = covered[i] - choice.demand[i];
      if (over < 0) {
        missing -= over;
      } else {
        surplus += over;
      }
    }
    for (int p = 0; p < used.length; p++) {
      missing += Math.max(0, used[p] - choice.available[p]) * choice.overrun;
    }
    return new Levels(
        missing, money(), sheets, wood(), late(), missing == 0 ? remnant() : 0, surplus);
  }

  private long wood() {
    long wood = 0;
    for (int p = 0; p < used.length; p++) {
      wood += used[p] * choice.wood[p];
    }
    return wood;
  }

  private long late() {
    long late = 0;
    for (int p = 0; p < used.length; p++) {
      late += (long) used[p] * p;
    }
    return late;
  }

  private long remnant() {
    long best = 0;
    for (int q = 0; q < panels.length; q++) {
      if (broken[choice.breakdownOf[q]] * choice.perSheet[q] > panels[q]) {
        best = Math.max(best, choice.panelArea[q]);
      }
    }
    for (int j = 0; j < uses.length; j++) {
      if (uses[j] > 0) {
        best = Math.max(best, free(j));
      }
    }
    return best;
  }

  private long free(int layout) {
    long area = choice.panelArea[choice.panelOf[layout]];
    int[] counts = choice.counts[layout];
    for (int kind : choice.kindsIn[layout]) {
      int over = Math.max(0, covered[kind] - choice.demand[kind]);
      area -= Math.max(0, counts[kind] - over) * choice.pieceArea[kind];
    }
    return area;
  }
}
