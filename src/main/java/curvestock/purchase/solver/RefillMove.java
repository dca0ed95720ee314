package curvestock.purchase.solver;

import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Gives several slots new layouts at once. Only valid while the plan it was made for lasts. */
final class RefillMove extends AbstractMove<SlotPlan> {

  private final List<SheetSlot> slots;
  private final List<Integer> layouts;

  RefillMove(List<SheetSlot> slots, List<Integer> layouts) {
    this.slots = List.copyOf(slots);
    this.layouts = List.copyOf(layouts);
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<SlotPlan> director) {
    return !slots.stream().map(SheetSlot::getLayout).toList().equals(layouts);
  }

  @Override
  protected RefillMove createUndoMove(ScoreDirector<SlotPlan> director) {
    return new RefillMove(slots, slots.stream().map(SheetSlot::getLayout).toList());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<SlotPlan> director) {
    for (int k = 0; k < slots.size(); k++) {
      SheetSlot slot = slots.get(k);
      director.beforeVariableChanged(slot, "layout");
      slot.setLayout(layouts.get(k));
      director.afterVariableChanged(slot, "layout");
    }
  }
}
