package curvestock.purchase.solver;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A sheet that may be cut, and the layout it is cut by. Mutable, for OptaPlanner alone. */
@PlanningEntity
public class SheetSlot {

  /** Stands for a layout when the slot is not used. */
  static final Integer UNUSED = -1;

  @PlanningId private int id;

  @PlanningVariable(valueRangeProviderRefs = "layouts")
  private Integer layout;

  /** For OptaPlanner's cloning. */
  public SheetSlot() {}

  SheetSlot(int id, Integer layout) {
    this.id = id;
    this.layout = layout;
  }

  public Integer getLayout() {
    return layout;
  }

  public void setLayout(Integer layout) {
    this.layout = layout;
  }

  @Override
  public String toString() {
    return "slot " + id;
  }
}
