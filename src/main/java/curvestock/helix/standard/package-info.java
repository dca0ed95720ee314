/**
 * What the field has published: scales, clearances, track spacing, easements, and how sure each
 * figure is.
 *
 * <p>Comes in: CSV tables beside this package, whose headers name their sources. Goes out: {@link
 * curvestock.helix.standard.Sourced sourced} figures. A figure tagged {@link
 * curvestock.helix.standard.Certainty#MEMORY} is never printed as fact. Imports {@code units}.
 * Start reading at {@link curvestock.helix.standard.Scale}.
 */
package curvestock.helix.standard;
