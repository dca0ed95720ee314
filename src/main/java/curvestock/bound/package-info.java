/**
 * Proven upper bounds on how many pieces any layout can hold, whoever makes it.
 *
 * <p>Comes in: a piece, a sheet, the cutting gaps. Goes out: a number and how it is proven. Nothing
 * here looks at layouts that were found: a failed search is no proof. Millimetres, as in {@code
 * geometry}. Imports {@code units}, {@code geometry}, {@code piece}, {@code sheet}. Start reading
 * at {@link curvestock.bound.Bound}.
 */
package curvestock.bound;
