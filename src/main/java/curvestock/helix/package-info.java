/**
 * The helix: what its turns ask of the wood, and whether it works.
 *
 * <p>Comes in: radii, widths, turns, heights. Goes out: the pieces wanted. Imports {@code units},
 * {@code geometry}, {@code piece}. Start reading at {@link curvestock.helix.SegmentPlan}.
 */
package curvestock.helix;
