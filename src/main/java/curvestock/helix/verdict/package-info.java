/**
 * Whether it works: one verdict line for each rule, with numbers and how to mend it.
 *
 * <p>Comes in: the computed parts of a helix. Goes out: {@link curvestock.helix.verdict.Verdict}s
 * in plain words, lengths in the user's style. A rule that is common practice says so, and never
 * fails a helix by itself unless the numbers leave no room. Imports the helix packages before it.
 * Start reading at {@link curvestock.helix.verdict.HeightRule}.
 */
package curvestock.helix.verdict;
