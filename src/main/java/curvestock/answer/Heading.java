package curvestock.answer;

import curvestock.job.Job;

/**
 * Whose answer it is and how its figures are written.
 *
 * @param title of the job
 * @param invented whether its data are made up, which every output must say
 * @param figures in the job's units and currency
 */
public record Heading(String title, boolean invented, Figures figures) {

  static Heading of(Job job) {
    return new Heading(job.title(), job.invented(), Figures.of(job));
  }
}
