/**
 * Proven upper bounds on how many pieces any layout can hold, whoever makes it.
 *
 * <p>Comes in: a piece, a sheet, the cutting gaps. Goes out: a number and how it is proven. Nothing
 * here looks at layouts that were found: a failed search is no proof. Millimetres, as in {@code
 * geometry}. Imports {@code units}, {@code geometry}, {@code piece}, {@code sheet}, and distance
 * fields of {@code packing}. Start reading at {@link curvestock.bound.Bound}.
 *
 * <p>All but the last method rest on one argument. Pieces that keep a gap k from each other, each
 * widened by k/2, share no wood. Give the sheet a weight, spread as you like. If every placement
 * that keeps the margin covers a weight of at least m with its widened piece, then n pieces cover
 * at least n·m, and so n is at most the sheet's weight over m.
 *
 * <ul>
 *   <li>{@link curvestock.bound.AreaBound}: the weight is the same everywhere, so m is the widened
 *       piece's area. A ring counts as a disc: two circles of one radius that cross or coincide
 *       belong to rings with a common point, so of rings of one size each lies outside the others,
 *       and so do their discs.
 *   <li>{@link curvestock.bound.EdgeWeightBound}: the weight is f(x) + g(y), little along the edges
 *       and in the corners, where every placement leaves wood bare. In four steps: (1) what a
 *       placement covers is the sum of a part that depends on its direction and x, and one on its
 *       direction and y, so the least of the sum is the sum of the least parts; (2) directions come
 *       in cells, of which the core of the sector covers its share whatever the direction; (3)
 *       areas left of a line are closed forms; (4) between two places the covered weight cannot
 *       sink further than its slope varies, which is bounded by how far the border of the sector
 *       goes up and down. Some tenths of a second for arcs.
 *   <li>{@link curvestock.bound.FractionalCoverBound}: the weight lies on points, and cells of
 *       placements cover a point only if their every placement does. Sharper for few large pieces,
 *       but it takes minutes.
 *   <li>{@link curvestock.bound.CaseBound}: no weights; for up to about five large sectors, all
 *       ways to lay one piece more are split into cells until in every one of them two pieces
 *       overlap.
 * </ul>
 *
 * <p>What a tighter argument would have to use: in an endless pattern every weight is as good as
 * none, so these methods never see the wood wasted under the concave edges. {@code
 * benchmarks/README.md} tells what was tried for that, and what it would be worth.
 */
package curvestock.bound;
