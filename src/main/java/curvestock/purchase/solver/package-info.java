/**
 * The choice of layouts as a bare integer problem, and its search with OptaPlanner.
 *
 * <p>Comes in: a {@link curvestock.purchase.solver.Choice} of plain numbers, a seed and a limit on
 * score calculations. Goes out: how many times each layout is used. Layouts lie on panels; a sheet
 * carried whole is its own and only panel. OptaPlanner needs mutable and public classes: {@code
 * SheetSlot}, {@code SlotPlan}, {@code SlotScore} and {@code RefillMoves} are such, and must not be
 * used outside this package. Imports OptaPlanner, ojAlgo and nothing of Curvestock; only {@code
 * purchase} imports this package. Start reading at {@link curvestock.purchase.solver.Levels}, then
 * {@code Tally}, then {@link curvestock.purchase.solver.SlotSearch}.
 */
package curvestock.purchase.solver;
