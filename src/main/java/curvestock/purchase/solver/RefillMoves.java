package curvestock.purchase.solver;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Random;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * Moves that take some random sheets out and cover what they leave wanted anew, greedily with a
 * little chance: the exchange of two or three sheets seldom finds such a set by luck.
 */
public class RefillMoves implements MoveIteratorFactory<SlotPlan, RefillMove> {

  private static final int FEWEST = 2;
  private static final int MOST = 7;

  @Override
  public long getSize(ScoreDirector<SlotPlan> director) {
    return director.getWorkingSolution().slots().size();
  }

  @Override
  public Iterator<RefillMove> createOriginalMoveIterator(ScoreDirector<SlotPlan> director) {
    throw new UnsupportedOperationException("refills are drawn at random only");
  }

  @Override
  public Iterator<RefillMove> createRandomMoveIterator(
      ScoreDirector<SlotPlan> director, Random random) {
    return new Iterator<>() {
      @Override
      public boolean hasNext() {
        return true;
      }

      @Override
      public RefillMove next() {
        return refill(director.getWorkingSolution(), random);
      }
    };
  }

  private static RefillMove refill(SlotPlan plan, Random random) {
    Choice choice = plan.choice();
    int size = Math.min(plan.slots().size(), FEWEST + random.nextInt(MOST - FEWEST + 1));
    List<SheetSlot> emptied = new ArrayList<>();
    while (emptied.size() < size) {
      SheetSlot slot = plan.slots().get(random.nextInt(plan.slots().size()));
      if (!emptied.contains(slot)) {
        emptied.add(slot);
      }
    }
    Tally tally = new Tally(choice);
    tally.add(plan.uses());
    for (SheetSlot slot : emptied) {
      if (!slot.getColumn().equals(SheetSlot.UNUSED)) {
        tally.remove(slot.getColumn());
      }
    }
    Greed greed = new Greed(choice, random);
    List<Integer> columns = new ArrayList<>();
    for (int k = 0; k < size; k++) {
      int column = greed.best(tally);
      columns.add(column >= 0 ? column : SheetSlot.UNUSED);
      if (column >= 0) {
        tally.add(column);
      }
    }
    return new RefillMove(emptied, columns);
  }
}
