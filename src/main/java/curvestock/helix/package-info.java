/**
 * The helix: what its turns ask of the wood, and whether it works.
 *
 * <p>Comes in: a {@link curvestock.helix.spec.HelixSpec}. Goes out: a {@link
 * curvestock.helix.HelixPlan} with pieces wanted, tables, lists and verdicts. Pure computing: no
 * files, no drawing. A map of the sub-packages, each importing only those before it:
 *
 * <ol>
 *   <li>{@code standard}: published figures with their sources
 *   <li>{@code spec}: what the builder states
 *   <li>{@code course}: the line in plan, the climb, and heights along it
 *   <li>{@code clearance}: room for the trains
 *   <li>{@code build}: joints, stations, pieces, supports, schedule, shopping
 *   <li>{@code verdict}: one line for each rule, with how to mend it
 * </ol>
 *
 * <p>Imports {@code units}, {@code geometry}, {@code piece}. Start reading at {@link
 * curvestock.helix.HelixPlan}; {@link curvestock.helix.SegmentPlan} is the short way for a plain
 * ring of segments.
 */
package curvestock.helix;
