package curvestock.bench;

/**
 * One case: the engine and its three rivals, in pieces (single kind) or square millimetres (several
 * kinds).
 */
record Comparison(
    BenchCase which, EngineRun engine, double rows, double stack, GridModel.Result grid) {

  static Comparison of(BenchCase c, Settings settings) {
    EngineRun engine = EngineRun.of(c, settings.search());
    double rows = c.isMixed() ? BoundingRows.area(c) : BoundingRows.count(c);
    double stack = c.isMixed() ? AxisStack.area(c) : AxisStack.count(c);
    GridModel.Result grid = GridModel.solve(c, settings.placements(), settings.seconds());
    return new Comparison(c, engine, rows, stack, grid);
  }

  double bestRival() {
    return Math.max(Math.max(rows, stack), grid.value());
  }

  /** Areas of the grid model are rounded to square centimetres. */
  boolean isBelowRival() {
    double slack = which.isMixed() ? 50.0 * engine.pieces() + 1 : 0;
    return engine.value() < bestRival() - slack;
  }

  /** Seconds of solving alone until CP-SAT's best, over the engine's seconds to its own. */
  double timesSooner() {
    return grid.toBest() / engine.toBest();
  }

  /** The same with the building of the grid counted as well. */
  double timesSoonerInAll() {
    return (grid.building() + grid.toBest()) / engine.toBest();
  }
}
