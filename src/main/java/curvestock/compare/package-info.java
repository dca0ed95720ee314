/**
 * The decision before buying: which segment angle, how many sheets, for how much, and what would
 * change the answer.
 *
 * <p>Comes in: a job with a helix and a {@link curvestock.compare.Question}. Goes out: a {@link
 * curvestock.compare.Comparison}: one {@link curvestock.compare.SegmentOption} for each angle, each
 * with a whole plan behind it, a recommendation, how far the answer holds, and on wish a scan over
 * all angles. Every figure was computed by laying pieces out; nothing is extrapolated. Imports all
 * packages up to {@code plan}; knows no files, no screens, no clock. Start reading at {@link
 * curvestock.compare.Comparer}.
 */
package curvestock.compare;
