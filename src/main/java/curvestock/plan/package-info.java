/**
 * From a job to a plan: the line that all data takes, a step a line, in {@link
 * curvestock.plan.Planner}.
 *
 * <p>Comes in: a {@link curvestock.job.Job}. Goes out: a {@link curvestock.plan.Plan} with the
 * purchase, the layout of every sheet and the proven bounds beside them. No files, no screens.
 * Imports the packages before it: {@code units} to {@code purchase}, and {@code job}.
 */
package curvestock.plan;
