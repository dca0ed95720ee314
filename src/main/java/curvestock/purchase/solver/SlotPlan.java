package curvestock.purchase.solver;

import java.util.List;
import org.optaplanner.core.api.domain.solution.PlanningEntityCollectionProperty;
import org.optaplanner.core.api.domain.solution.PlanningScore;
import org.optaplanner.core.api.domain.solution.PlanningSolution;
import org.optaplanner.core.api.domain.solution.ProblemFactCollectionProperty;
import org.optaplanner.core.api.domain.solution.ProblemFactProperty;
import org.optaplanner.core.api.domain.valuerange.ValueRangeProvider;
import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;

/** All slots of one purchase. Mutable, for OptaPlanner alone. */
@PlanningSolution
public class SlotPlan {

  @ProblemFactProperty private Choice choice;

  @ProblemFactCollectionProperty
  @ValueRangeProvider(id = "columns")
  private List<Integer> columns;

  @PlanningEntityCollectionProperty private List<SheetSlot> slots;

  @PlanningScore(bendableHardLevelsSize = 1, bendableSoftLevelsSize = 4)
  private BendableLongScore score;

  /** For OptaPlanner's cloning. */
  public SlotPlan() {}

  SlotPlan(Choice choice, List<Integer> columns, List<SheetSlot> slots) {
    this.choice = choice;
    this.columns = columns;
    this.slots = slots;
  }

  public List<Integer> getColumns() {
    return columns;
  }

  public BendableLongScore getScore() {
    return score;
  }

  Choice choice() {
    return choice;
  }

  List<SheetSlot> slots() {
    return slots;
  }

  int[] uses() {
    int[] uses = new int[choice.columns()];
    for (SheetSlot slot : slots) {
      if (!slot.getColumn().equals(SheetSlot.UNUSED)) {
        uses[slot.getColumn()]++;
      }
    }
    return uses;
  }
}
