/**
 * The choice of layouts as a bare integer problem, and its search with OptaPlanner.
 *
 * <p>Comes in: a {@link curvestock.purchase.solver.Choice} of plain numbers. Goes out: how many
 * times each layout is used. OptaPlanner needs mutable classes: {@code SheetSlot}, {@code SlotPlan}
 * and {@code SlotScore} are such, and must not be used outside this package. Imports OptaPlanner,
 * ojAlgo and nothing of Curvestock; only {@code purchase} imports this package. Start reading at
 * {@link curvestock.purchase.solver.Choice}, then {@link curvestock.purchase.solver.Tally}.
 */
package curvestock.purchase.solver;
