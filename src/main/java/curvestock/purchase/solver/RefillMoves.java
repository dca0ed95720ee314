package curvestock.purchase.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.stream.IntStream;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;

/**
 * Moves that take some random sheets out and cover what they leave wanted anew, greedily with a
 * little chance: the exchange of two or three sheets seldom finds such a set by luck.
 */
public class RefillMoves implements MoveIteratorFactory<SlotPlan, RefillMove> {

  private static final int FEWEST = 2;
  private static final int MOST = 7;
  private static final int MOST_SHEETS = 3;

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
    boolean wholeSheet = choice.mostPanels() > 1 && random.nextBoolean();
    List<SheetSlot> emptied = wholeSheet ? wholeSheets(plan, random) : some(plan, random);
    Tally tally = new Tally(choice);
    tally.add(plan.uses());
    OptionalInt left = OptionalInt.empty();
    for (SheetSlot slot : emptied) {
      if (!slot.getLayout().equals(SheetSlot.UNUSED)) {
        tally.remove(slot.getLayout());
        if (left.isEmpty() && wholeSheet) {
          left = OptionalInt.of(choice.breakdownOf[choice.panelOf[slot.getLayout()]]);
        }
      }
    }
    Greed greed =
        new Greed(choice, random, wholeSheet && random.nextBoolean() ? left : OptionalInt.empty());
    List<Integer> layouts = new ArrayList<>();
    for (int k = 0; k < emptied.size(); k++) {
      int layout = greed.best(tally);
      layouts.add(layout >= 0 ? layout : SheetSlot.UNUSED);
      if (layout >= 0) {
        tally.add(layout);
      }
    }
    return new RefillMove(emptied, layouts);
  }

  /**
   * As many slots as one, two or three sheets of some breakdown have panels, and unused ones for
   * sheets with more panels: one panel at a time never pays for another way of ripping.
   */
  private static List<SheetSlot> wholeSheets(SlotPlan plan, Random random) {
    Choice choice = plan.choice();
    int sheets = 1 + random.nextInt(MOST_SHEETS);
    List<SheetSlot> order = new ArrayList<>(plan.slots());
    Collections.shuffle(order, random);
    int[] room = IntStream.of(choice.perSheet).map(panels -> panels * sheets).toArray();
    int unused = sheets * choice.mostPanels();
    OptionalInt breakdown = OptionalInt.empty();
    List<SheetSlot> emptied = new ArrayList<>();
    for (SheetSlot slot : order) {
      int layout = slot.getLayout();
      if (layout == SheetSlot.UNUSED) {
        if (unused-- > 0) {
          emptied.add(slot);
        }
      } else {
        int panel = choice.panelOf[layout];
        if (breakdown.isEmpty()) {
          breakdown = OptionalInt.of(choice.breakdownOf[panel]);
        }
        if (choice.breakdownOf[panel] == breakdown.getAsInt() && room[panel]-- > 0) {
          emptied.add(slot);
        }
      }
    }
    return emptied;
  }

  private static List<SheetSlot> some(SlotPlan plan, Random random) {
    int size = Math.min(plan.slots().size(), FEWEST + random.nextInt(MOST - FEWEST + 1));
    List<SheetSlot> emptied = new ArrayList<>();
    while (emptied.size() < size) {
      SheetSlot slot = plan.slots().get(random.nextInt(plan.slots().size()));
      if (!emptied.contains(slot)) {
        emptied.add(slot);
      }
    }
    return emptied;
  }
}
