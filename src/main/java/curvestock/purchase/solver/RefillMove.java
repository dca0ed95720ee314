package curvestock.purchase.solver;

import java.util.List;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.AbstractMove;

/** Gives several slots new columns at once. Only valid while the plan it was made for lasts. */
final class RefillMove extends AbstractMove<SlotPlan> {

  private final List<SheetSlot> slots;
  private final List<Integer> columns;

  RefillMove(List<SheetSlot> slots, List<Integer> columns) {
    this.slots = List.copyOf(slots);
    this.columns = List.copyOf(columns);
  }

  @Override
  public boolean isMoveDoable(ScoreDirector<SlotPlan> director) {
    return !slots.stream().map(SheetSlot::getColumn).toList().equals(columns);
  }

  @Override
  protected RefillMove createUndoMove(ScoreDirector<SlotPlan> director) {
    return new RefillMove(slots, slots.stream().map(SheetSlot::getColumn).toList());
  }

  @Override
  protected void doMoveOnGenuineVariables(ScoreDirector<SlotPlan> director) {
    for (int k = 0; k < slots.size(); k++) {
      SheetSlot slot = slots.get(k);
      director.beforeVariableChanged(slot, "column");
      slot.setColumn(columns.get(k));
      director.afterVariableChanged(slot, "column");
    }
  }
}
