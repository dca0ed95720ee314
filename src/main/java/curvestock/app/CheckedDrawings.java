package curvestock.app;

import curvestock.check.JobReport;
import curvestock.job.Job;

/**
 * What became of a check.
 *
 * @param job that the drawings were judged by
 */
public record CheckedDrawings(Job job, JobReport report) {}
