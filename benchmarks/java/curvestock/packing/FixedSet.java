package curvestock.packing;

import curvestock.geometry.Pose;
import curvestock.layout.Layout;
import curvestock.layout.Placement;
import curvestock.piece.Piece;
import curvestock.sheet.Cutting;
import curvestock.sheet.SheetStock;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The engine's search for a given set of pieces on a given sheet, without structured layouts: what
 * the outside checks and the growth report ask for. The only place in the reports that knows the
 * engine's insides.
 */
public final class FixedSet {

  private final List<Piece> pieces;
  private final List<Body> bodies;
  private final long seed;

  public FixedSet(List<Piece> pieces, long seed) {
    this.pieces = List.copyOf(pieces);
    this.seed = seed;
    Map<Piece, Body> known = new HashMap<>();
    bodies = this.pieces.stream().map(piece -> known.computeIfAbsent(piece, Body::new)).toList();
  }

  /**
   * A layout of all pieces, if the search finds one within {@code budget} pair tests.
   *
   * @param near layouts of the same pieces to begin from; may be empty
   */
  public Optional<Layout> layOn(SheetStock sheet, Cutting cutting, List<Layout> near, long budget) {
    Arena arena = new Arena(sheet, cutting);
    boolean[] frozen = new boolean[bodies.size()];
    List<double[]> known = near.stream().map(FixedSet::poses).toList();
    StartingPoses starts = new StartingPoses(arena, bodies, frozen, known);
    return new Search(arena, bodies, frozen, starts, seed)
        .solve(budget, Control.NONE)
        .map(poses -> layout(sheet, cutting, poses));
  }

  private Layout layout(SheetStock sheet, Cutting cutting, double[] poses) {
    List<Placement> placements = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Pose pose = new Pose(poses[3 * i], poses[3 * i + 1], poses[3 * i + 2]);
      placements.add(new Placement(pieces.get(i), pose));
    }
    return new Layout(sheet, cutting, placements);
  }

  private static double[] poses(Layout layout) {
    return layout.placements().stream()
        .map(Placement::pose)
        .flatMapToDouble(p -> java.util.stream.DoubleStream.of(p.x(), p.y(), p.rotation()))
        .toArray();
  }

  /**
   * Processor seconds that one evaluation of the search's energy with its gradient takes at this
   * layout: the least of several runs. Before each all pieces are moved together so far that
   * nothing is remembered of which were near; every other time they lie beyond the sheet's edge.
   */
  public double secondsPerEvaluation(Layout layout) {
    Overlap overlap = new Overlap(new Arena(layout.sheet(), layout.cutting()), bodies);
    double[] poses = poses(layout);
    double[] moved = poses.clone();
    for (int k = 0; k < moved.length; k += 3) {
      moved[k] += 2 * layout.sheet().length().millimetres();
    }
    double[] gradient = new double[poses.length];
    int repeats = 1 + 40_000 / bodies.size();
    double least = Double.POSITIVE_INFINITY;
    double sum = 0;
    for (int run = 0; run < 7; run++) {
      long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      for (int k = 0; k < repeats; k++) {
        sum += overlap.evaluate(k % 2 == 0 ? moved : poses, gradient);
      }
      long took = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
      least = Math.min(least, took / 1e9 / repeats);
    }
    if (!Double.isFinite(sum)) {
      throw new IllegalStateException("the energy of a valid layout must be finite");
    }
    return least;
  }
}
