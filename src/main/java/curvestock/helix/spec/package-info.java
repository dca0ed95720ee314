/**
 * What the builder states: the inputs of a helix, each record checking itself.
 *
 * <p>Comes in: lengths, angles and choices, from a job file or a test. Goes out: one {@link
 * curvestock.helix.spec.HelixSpec}, which the rest of the helix packages only read. Imports {@code
 * units} and {@code helix.standard}. Start reading at {@link curvestock.helix.spec.HelixSpec}.
 */
package curvestock.helix.spec;
