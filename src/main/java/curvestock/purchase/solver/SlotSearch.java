package curvestock.purchase.solver;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.optaplanner.core.api.solver.Solver;
import org.optaplanner.core.api.solver.SolverFactory;
import org.optaplanner.core.config.heuristic.selector.move.MoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.composite.CartesianProductMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import org.optaplanner.core.config.heuristic.selector.move.factory.MoveIteratorFactoryConfig;
import org.optaplanner.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import org.optaplanner.core.config.localsearch.LocalSearchPhaseConfig;
import org.optaplanner.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import org.optaplanner.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import org.optaplanner.core.config.score.director.ScoreDirectorFactoryConfig;
import org.optaplanner.core.config.solver.EnvironmentMode;
import org.optaplanner.core.config.solver.SolverConfig;
import org.optaplanner.core.config.solver.termination.TerminationConfig;

/**
 * Chooses the uses of the layouts: the best of {@link EveryChoice} where these are few. Else the
 * best of a greedy start and of rounded linear programmes, then OptaPlanner's late acceptance,
 * which exchanges one to three sheets at a time or takes some out and refills them; not if a start
 * is proven to cost the least already. One thread, a fixed seed and a limit on score calculations:
 * the same input gives the same output. Nothing is proven here of layouts that were not given.
 *
 * <p>Measured on three orders of 20 kinds, 300 layouts and some 1000 pieces: greedy alone costs 4
 * to 19 % more than the optimum, with OptaPlanner 3 to 6 %, with the linear programmes 0 to 0.05 %.
 */
public final class SlotSearch {

  /**
   * Sheets that the search may use beyond the largest start: cheap small ones may replace a large.
   * Each may be ripped into panels, which take a slot each.
   */
  private static final int SPARE_SLOTS = 2;

  /** One rounding of each way for so many score calculations. */
  private static final long CALCULATIONS_PER_START = 10_000;

  /** Share of refills, where each kind of exchange has 1. */
  private static final double REFILLS = 0.3;

  /** How many times likelier the search tries a layout that some start uses. */
  private static final int FAVOUR = 10;

  private final Choice choice;
  private final long seed;
  private final long calculations;
  private final Predicate<Levels> isLeast;
  private final BooleanSupplier stopped;

  /**
   * @param calculations score calculations, at most
   * @param isLeast whether no choice can cost less money, nor fewer sheets for that money
   * @param stopped asked now and then whether to end with the best so far: the starts at least
   */
  public SlotSearch(
      Choice choice,
      long seed,
      long calculations,
      Predicate<Levels> isLeast,
      BooleanSupplier stopped) {
    this.choice = choice;
    this.seed = seed;
    this.calculations = calculations;
    this.isLeast = isLeast;
    this.stopped = stopped;
  }

  /** Uses of each layout; some pieces are missing if no way to cover them was found. */
  public int[] uses() {
    int[] greedy = new Greed(choice).uses();
    if (choice.levels(greedy).missing() > 0) {
      return searched();
    }
    return new EveryChoice(choice).from(greedy).orElseGet(this::searched);
  }

  private int[] searched() {
    List<int[]> starts =
        new StartingChoices(choice, seed, calculations / CALCULATIONS_PER_START).all();
    int[] best = Collections.min(starts, (a, b) -> choice.levels(a).compareTo(choice.levels(b)));
    Levels levels = choice.levels(best);
    if (levels.missing() == 0 && (stopped.getAsBoolean() || isLeast.test(levels))) {
      return exchanged(best);
    }
    int most = starts.stream().mapToInt(uses -> IntStream.of(uses).sum()).max().orElse(0);
    Solver<SlotPlan> solver = SolverFactory.<SlotPlan>create(config()).buildSolver();
    SlotPlan start = plan(best, most, favoured(starts));
    if (levels.missing() == 0) {
      start.watch(
          () -> {
            if (stopped.getAsBoolean()) {
              solver.terminateEarly();
            }
          });
    }
    SlotPlan found = solver.solve(start);
    int[] improved = found.uses();
    return choice.levels(improved).compareTo(choice.levels(best)) <= 0 ? improved : best;
  }

  /**
   * A choice that no exchange of one sheet makes better: where money and sheets are proven, only
   * the remnant and the pieces too many are left to improve.
   */
  private int[] exchanged(int[] uses) {
    int[] best = uses.clone();
    Levels least = choice.levels(best);
    boolean better = true;
    while (better) {
      better = false;
      for (int out = 0; out < best.length; out++) {
        for (int in = 0; in < best.length && best[out] > 0; in++) {
          best[out]--;
          best[in]++;
          Levels levels = choice.levels(best);
          if (levels.compareTo(least) < 0) {
            least = levels;
            better = true;
          } else {
            best[out]++;
            best[in]--;
          }
        }
      }
    }
    return best;
  }

  /** All layouts and the empty one; those that a start uses occur more often. */
  private List<Integer> favoured(List<int[]> starts) {
    List<Integer> layouts = new ArrayList<>(Collections.nCopies(FAVOUR, SheetSlot.UNUSED));
    for (int j = 0; j < choice.layouts(); j++) {
      int layout = j;
      boolean used = starts.stream().anyMatch(uses -> uses[layout] > 0);
      layouts.addAll(Collections.nCopies(used ? FAVOUR : 1, layout));
    }
    return layouts;
  }

  private SlotPlan plan(int[] uses, int most, List<Integer> layouts) {
    List<SheetSlot> slots = new ArrayList<>();
    for (int j = 0; j < uses.length; j++) {
      for (int n = 0; n < uses[j]; n++) {
        slots.add(new SheetSlot(slots.size(), j));
      }
    }
    while (slots.size() < most + SPARE_SLOTS * choice.mostPanels()) {
      slots.add(new SheetSlot(slots.size(), SheetSlot.UNUSED));
    }
    return new SlotPlan(choice, layouts, slots);
  }

  private SolverConfig config() {
    LocalSearchPhaseConfig search =
        new LocalSearchPhaseConfig()
            .withMoveSelectorConfig(
                new UnionMoveSelectorConfig()
                    .withMoveSelectors(
                        exchange(1),
                        exchange(2),
                        exchange(3),
                        new MoveIteratorFactoryConfig()
                            .withMoveIteratorFactoryClass(RefillMoves.class)
                            .withFixedProbabilityWeight(REFILLS)))
            .withAcceptorConfig(new LocalSearchAcceptorConfig().withLateAcceptanceSize(400))
            .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    return new SolverConfig()
        .withEnvironmentMode(EnvironmentMode.REPRODUCIBLE)
        .withRandomSeed(seed)
        .withSolutionClass(SlotPlan.class)
        .withEntityClasses(SheetSlot.class)
        .withScoreDirectorFactory(
            new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(SlotScore.class))
        .withPhases(search)
        .withTerminationConfig(
            new TerminationConfig().withScoreCalculationCountLimit(calculations));
  }

  /** A move that gives {@code sheets} random slots other layouts at once. */
  private static MoveSelectorConfig<?> exchange(int sheets) {
    ChangeMoveSelectorConfig[] changes = new ChangeMoveSelectorConfig[sheets];
    Arrays.setAll(changes, n -> new ChangeMoveSelectorConfig());
    return sheets == 1
        ? changes[0].withFixedProbabilityWeight(1.0)
        : new CartesianProductMoveSelectorConfig()
            .withMoveSelectors(changes)
            .withFixedProbabilityWeight(1.0);
  }
}
