package curvestock.purchase.solver;

/** Running sums of a choice in the making; adding or removing a sheet costs its kinds only. */
final class Tally {

  private final Choice choice;
  private final int[] uses;
  private final int[] covered;
  private final int[] used;
  private int sheets;

  Tally(Choice choice) {
    this.choice = choice;
    this.uses = new int[choice.columns()];
    this.covered = new int[choice.demand.length];
    this.used = new int[choice.products()];
  }

  void add(int column) {
    change(column, 1);
  }

  void add(int[] columnUses) {
    for (int j = 0; j < columnUses.length; j++) {
      change(j, columnUses[j]);
    }
  }

  void remove(int column) {
    change(column, -1);
  }

  private void change(int column, int by) {
    uses[column] += by;
    used[choice.productOf[column]] += by;
    sheets += by;
    int[] counts = choice.counts[column];
    for (int kind : choice.kindsIn[column]) {
      covered[kind] += by * counts[kind];
    }
  }

  /** Whether another sheet of the column's product may be used. */
  boolean inStock(int column) {
    int product = choice.productOf[column];
    return used[product] < choice.available[product];
  }

  /** Pieces of the kind still wanted. */
  int wanted(int kind) {
    return Math.max(0, choice.demand[kind] - covered[kind]);
  }

  /** Sheets of the product used so far. */
  int used(int product) {
    return used[product];
  }

  int[] uses() {
    return uses.clone();
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
    long money = 0;
    for (int p = 0; p < used.length; p++) {
      missing += Math.max(0, used[p] - choice.available[p]) * choice.overrun;
      money += choice.cost[p][Math.min(used[p], choice.cost[p].length - 1)];
    }
    return new Levels(missing, money, sheets, missing == 0 ? remnant() : 0, surplus);
  }

  private long remnant() {
    long best = 0;
    for (int j = 0; j < uses.length; j++) {
      if (uses[j] > 0) {
        best = Math.max(best, free(j));
      }
    }
    return best;
  }

  private long free(int column) {
    long area = choice.sheetArea[choice.productOf[column]];
    int[] counts = choice.counts[column];
    for (int kind : choice.kindsIn[column]) {
      int over = Math.max(0, covered[kind] - choice.demand[kind]);
      area -= Math.max(0, counts[kind] - over) * choice.pieceArea[kind];
    }
    return area;
  }
}
