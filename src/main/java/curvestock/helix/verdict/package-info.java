/**
 * Whether it works: one verdict for each rule, as data, and the words for it.
 *
 * <p>Comes in: the computed parts of a helix. Goes out: {@link curvestock.helix.verdict.Verdict}s
 * (rule, place, state, what was measured, what is needed, what to change), judged once for a plan;
 * {@link curvestock.helix.verdict.VerdictWords} alone makes sentences of them. A rule of thumb says
 * so, and never fails a helix by itself unless the numbers leave no room. Imports the helix
 * packages before it. Start reading at {@link curvestock.helix.verdict.HeightRule}.
 */
package curvestock.helix.verdict;
