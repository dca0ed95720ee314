/**
 * Room for the trains: heights between turns, at the ends, and beside the track.
 *
 * <p>Comes in: {@code helix.spec} and {@code helix.course}. Goes out: free heights and widths as
 * lengths; whether they are enough is judged in {@code helix.verdict}. Start reading at {@link
 * curvestock.helix.clearance.HeightBudget}.
 */
package curvestock.helix.clearance;
