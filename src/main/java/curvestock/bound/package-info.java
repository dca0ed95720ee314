/**
 * Proven upper bounds on how many pieces any layout can hold, whoever makes it.
 *
 * <p>Comes in: a piece, a sheet, the cutting gaps. Goes out: a number and how it is proven. Nothing
 * here looks at layouts that were found: a failed search is no proof. Millimetres, as in {@code
 * geometry}. Three methods: area ({@link curvestock.bound.AreaBound}), weights on points ({@link
 * curvestock.bound.FractionalCoverBound}), and proof by cases for few large sectors ({@link
 * curvestock.bound.CaseBound}). Imports {@code units}, {@code geometry}, {@code piece}, {@code
 * sheet}, and distance fields of {@code packing}. Start reading at {@link curvestock.bound.Bound}.
 */
package curvestock.bound;
