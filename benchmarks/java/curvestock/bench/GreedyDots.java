package curvestock.bench;

import curvestock.piece.Demand;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A first solution of the grid model, so that the solver need not start from nothing: the largest
 * kind first, and always the placement that excludes the fewest of those still open.
 */
final class GreedyDots {

  private GreedyDots() {}

  static BitSet choose(BenchCase c, DottedBoard board) {
    BitSet open = new BitSet();
    open.set(0, board.placements());
    BitSet chosen = new BitSet();
    List<Integer> kinds = new ArrayList<>(IntStream.range(0, c.wanted().size()).boxed().toList());
    kinds.sort(Comparator.comparingDouble(k -> -c.wanted().get(k).piece().shape().area()));
    for (int kind : kinds) {
      Demand demand = c.wanted().get(kind);
      int next = leastHarm(board, open, kind);
      for (int left = demand.count(); left > 0 && next >= 0; left--) {
        chosen.set(next);
        open.clear(next);
        open.andNot(board.conflicts(next));
        next = leastHarm(board, open, kind);
      }
    }
    return chosen;
  }

  private static int leastHarm(DottedBoard board, BitSet open, int kind) {
    int best = -1;
    int least = Integer.MAX_VALUE;
    for (int i = open.nextSetBit(0); i >= 0; i = open.nextSetBit(i + 1)) {
      if (board.kind(i) == kind) {
        BitSet harmed = (BitSet) board.conflicts(i).clone();
        harmed.and(open);
        if (harmed.cardinality() < least) {
          least = harmed.cardinality();
          best = i;
        }
      }
    }
    return best;
  }
}
