package curvestock.bench;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Rival (c): the {@link DottedBoard} as a set-packing problem, solved by OR-Tools CP-SAT on two
 * workers within a time limit, from a greedy first solution. Its optimum is no bound on what can be
 * cut: the dots limit it.
 */
final class GridModel {

  /**
   * What came of it.
   *
   * @param value pieces (single kind) or square millimetres (several kinds)
   * @param proven whether CP-SAT proved that the grid allows no more
   * @param step distance between dots, in millimetres
   * @param building processor seconds spent on placements, conflicts and cliques
   * @param toBest processor seconds of both workers in solving until the best was reached; 0 if
   *     CP-SAT itself found nothing in time and the greedy first solution stands
   */
  record Result(
      double value,
      boolean proven,
      double step,
      int placements,
      int conflicts,
      double building,
      double toBest) {}

  private static final int WORKERS = 2;

  private GridModel() {}

  static Result solve(BenchCase c, int mostPlacements, double seconds) {
    Loader.loadNativeLibraries();
    double start = ProcessorTime.ofProcess();
    DottedBoard board = new DottedBoard(c, mostPlacements);
    CpModel model = new CpModel();
    BoolVar[] used =
        IntStream.range(0, board.placements())
            .mapToObj(i -> model.newBoolVar("p" + i))
            .toArray(BoolVar[]::new);
    int conflicts = addConflicts(board, model, used);
    BitSet first = GreedyDots.choose(c, board);
    for (int i = 0; i < used.length; i++) {
      model.addHint(used[i], first.get(i) ? 1 : 0);
    }
    double greedy = worth(c, board, first);
    double unit = addDemand(c, board, model, used);
    double building = secondsSince(start);
    CpSolver solver = new CpSolver();
    // On a hundred thousand clauses and more, presolve and relaxations use up the time limit.
    solver
        .getParameters()
        .setNumWorkers(WORKERS)
        .setMaxTimeInSeconds(seconds)
        .setRandomSeed(1)
        .setCpModelPresolve(false)
        .setSymmetryLevel(0)
        .setLinearizationLevel(0);
    BestSoFar best = new BestSoFar();
    CpSolverStatus status = solver.solve(model, best);
    return new Result(
        Math.max(greedy, best.value * unit),
        status == CpSolverStatus.OPTIMAL,
        board.step(),
        board.placements(),
        conflicts,
        building,
        best.seconds);
  }

  /**
   * One clause a pair. (Covering the pairs by large cliques was tried: its relaxation is tighter,
   * but CP-SAT then found less in the same time, or nothing.)
   */
  private static int addConflicts(DottedBoard board, CpModel model, BoolVar[] used) {
    int count = 0;
    for (int i = 0; i < used.length; i++) {
      Literal not = used[i].not();
      BitSet conflicts = board.conflicts(i);
      for (int j = conflicts.nextSetBit(i + 1); j >= 0; j = conflicts.nextSetBit(j + 1)) {
        model.addBoolOr(new Literal[] {not, used[j].not()});
        count++;
      }
    }
    return count;
  }

  /** Limits per kind and the objective; returns what one unit of the objective stands for. */
  private static double addDemand(BenchCase c, DottedBoard board, CpModel model, BoolVar[] used) {
    if (!c.isMixed()) {
      model.maximize(LinearExpr.sum(used));
      return 1;
    }
    double unit = 100;
    long[] worth = new long[used.length];
    for (int kind = 0; kind < c.wanted().size(); kind++) {
      List<BoolVar> ofKind = new ArrayList<>();
      for (int i = 0; i < used.length; i++) {
        if (board.kind(i) == kind) {
          ofKind.add(used[i]);
          worth[i] = Math.round(c.wanted().get(kind).piece().shape().area() / unit);
        }
      }
      model.addLessOrEqual(
          LinearExpr.sum(ofKind.toArray(BoolVar[]::new)), c.wanted().get(kind).count());
    }
    model.maximize(LinearExpr.weightedSum(used, worth));
    return unit;
  }

  private static double worth(BenchCase c, DottedBoard board, BitSet chosen) {
    if (!c.isMixed()) {
      return chosen.cardinality();
    }
    return chosen.stream()
        .mapToDouble(i -> c.wanted().get(board.kind(i)).piece().shape().area())
        .sum();
  }

  private static double secondsSince(double start) {
    return ProcessorTime.ofProcess() - start;
  }

  private static final class BestSoFar extends CpSolverSolutionCallback {
    private final double start = ProcessorTime.ofProcess();
    private double value;
    private double seconds;

    @Override
    public void onSolutionCallback() {
      if (objectiveValue() > value + 0.5) {
        value = objectiveValue();
        seconds = secondsSince(start);
      }
    }
  }
}
