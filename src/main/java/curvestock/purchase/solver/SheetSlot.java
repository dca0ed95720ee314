package curvestock.purchase.solver;

import org.optaplanner.core.api.domain.entity.PlanningEntity;
import org.optaplanner.core.api.domain.lookup.PlanningId;
import org.optaplanner.core.api.domain.variable.PlanningVariable;

/** A sheet that may be cut, and the column it is cut by. Mutable, for OptaPlanner alone. */
@PlanningEntity
public class SheetSlot {

  /** Stands for a column when the slot is not used. */
  static final Integer UNUSED = -1;

  @PlanningId private int id;

  @PlanningVariable(valueRangeProviderRefs = "columns")
  private Integer column;

  /** For OptaPlanner's cloning. */
  public SheetSlot() {}

  SheetSlot(int id, Integer column) {
    this.id = id;
    this.column = column;
  }

  public Integer getColumn() {
    return column;
  }

  public void setColumn(Integer column) {
    this.column = column;
  }

  @Override
  public String toString() {
    return "slot " + id;
  }
}
