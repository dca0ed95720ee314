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
  @ValueRangeProvider(id = "layouts")
  private List<Integer> layouts;

  @PlanningEntityCollectionProperty private List<SheetSlot> slots;

  @PlanningScore(bendableHardLevelsSize = 1, bendableSoftLevelsSize = 6)
  private BendableLongScore score;

  /** Shared by all clones, as the solver works on them. */
  private Runnable watch = () -> {};

  /** For OptaPlanner's cloning. */
  public SlotPlan() {}

  SlotPlan(Choice choice, List<Integer> layouts, List<SheetSlot> slots) {
    this.choice = choice;
    this.layouts = layouts;
    this.slots = slots;
  }

  public List<Integer> getColumns() {
    return layouts;
  }

  public BendableLongScore getScore() {
    return score;
  }

  /** What is done now and then while the search goes on. */
  void watch(Runnable now) {
    watch = now;
  }

  Runnable watch() {
    return watch;
  }

  Choice choice() {
    return choice;
  }

  List<SheetSlot> slots() {
    return slots;
  }

  int[] uses() {
    int[] uses = new int[choice.layouts()];
    for (SheetSlot slot : slots) {
      if (!slot.getLayout().equals(SheetSlot.UNUSED)) {
        uses[slot.getLayout()]++;
      }
    }
    return uses;
  }
}
