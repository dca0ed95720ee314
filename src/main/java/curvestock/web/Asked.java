package curvestock.web;

import curvestock.job.Job;
import java.util.Map;

/**
 * What a page asks about.
 *
 * @param fingerprint by which the page knows its question again; every answer carries it
 * @param tree the job as the page has it
 * @param job the same, read
 */
record Asked(String fingerprint, Map<String, Object> tree, Job job) {

  /** What its plan is known by. */
  String planned() {
    return JobTrees.planned(tree);
  }
}
