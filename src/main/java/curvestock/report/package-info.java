/**
 * A plan in words and as data: the summary on the terminal and {@code plan.json}.
 *
 * <p>Comes in: a {@link curvestock.plan.Plan}. Goes out: text. Imports the packages before it and
 * Jackson.
 */
package curvestock.report;
