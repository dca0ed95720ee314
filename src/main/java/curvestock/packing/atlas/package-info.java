/**
 * Layouts of one shape of arc that long searches found, kept in the program so that no job need
 * search for them again.
 *
 * <p>Comes in: the {@link curvestock.packing.atlas.Proportions} of a question, all over the short
 * side of the sheet. Goes out: the {@link curvestock.packing.atlas.Chart charts} most like it. What
 * a chart says is a start for {@code packing}, never an answer: it is scaled, relaxed and judged
 * there each time. The table is a resource, read once, when a first question is put; it is made by
 * a command of {@code benchmarks/}. Imports nothing of the project.
 */
package curvestock.packing.atlas;
