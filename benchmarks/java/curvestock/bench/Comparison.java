package curvestock.bench;

/**
 * One case: the engine and its three rivals, in pieces (single kind) or square millimetres (several
 * kinds).
 *
 * @param even seconds of a fresh run of the engine until it has as many pieces as the grid model's
 *     best; of several kinds the whole run
 */
record Comparison(
    BenchCase which,
    EngineRun engine,
    double rows,
    double stack,
    GridModel.Result grid,
    double even) {

  static Comparison of(BenchCase c, Settings settings) {
    EngineRun engine = EngineRun.of(c, settings.search());
    double rows = c.isMixed() ? BoundingRows.area(c) : BoundingRows.count(c);
    double stack = c.isMixed() ? AxisStack.area(c) : AxisStack.count(c);
    GridModel.Result grid = GridModel.solve(c, settings.placements(), settings.seconds());
    double even =
        c.isMixed()
            ? engine.whole()
            : EngineRun.secondsTo((int) grid.value(), c, settings.search());
    return new Comparison(c, engine, rows, stack, grid, even);
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

  /** Seconds of building and solving the grid model, over the engine's to as many pieces. */
  double timesSoonerEven() {
    return (grid.building() + grid.toBest()) / even;
  }
}
