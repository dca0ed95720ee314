package curvestock.purchase.solver;

import org.optaplanner.core.api.score.buildin.bendablelong.BendableLongScore;
import org.optaplanner.core.api.score.calculator.IncrementalScoreCalculator;

/** Gives OptaPlanner the {@link Levels} of a plan, kept up to date by a {@link Tally}. */
public class SlotScore implements IncrementalScoreCalculator<SlotPlan, BendableLongScore> {

  /** So many scores pass between two looks at whether to go on: some milliseconds. */
  private static final int SCORES_PER_LOOK = 5_000;

  private Tally tally;
  private Runnable watch = () -> {};
  private int scores;

  @Override
  public void resetWorkingSolution(SlotPlan plan) {
    tally = new Tally(plan.choice());
    plan.slots().forEach(this::add);
    watch = plan.watch();
  }

  @Override
  public void beforeEntityAdded(Object entity) {}

  @Override
  public void afterEntityAdded(Object entity) {
    add((SheetSlot) entity);
  }

  @Override
  public void beforeVariableChanged(Object entity, String variableName) {
    remove((SheetSlot) entity);
  }

  @Override
  public void afterVariableChanged(Object entity, String variableName) {
    add((SheetSlot) entity);
  }

  @Override
  public void beforeEntityRemoved(Object entity) {
    remove((SheetSlot) entity);
  }

  @Override
  public void afterEntityRemoved(Object entity) {}

  @Override
  public BendableLongScore calculateScore() {
    if (++scores % SCORES_PER_LOOK == 0) {
      watch.run();
    }
    return score(tally.levels());
  }

  static BendableLongScore score(Levels levels) {
    return BendableLongScore.of(
        new long[] {-levels.missing()},
        new long[] {
          -levels.money(),
          -levels.sheets(),
          levels.wood(),
          -levels.late(),
          levels.remnant(),
          -levels.surplus()
        });
  }

  private void add(SheetSlot slot) {
    if (!slot.getLayout().equals(SheetSlot.UNUSED)) {
      tally.add(slot.getLayout());
    }
  }

  private void remove(SheetSlot slot) {
    if (!slot.getLayout().equals(SheetSlot.UNUSED)) {
      tally.remove(slot.getLayout());
    }
  }
}
