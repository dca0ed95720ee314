package curvestock.web;

import curvestock.compare.Comparison;
import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.HelixSideDrawing;
import curvestock.drawing.HelixTitle;
import curvestock.job.Job;
import curvestock.report.CompareCharts;
import curvestock.report.HelixReport;

/** The drawings that the page shows as pictures; the same as in a result folder. */
final class Pictures {

  private Pictures() {}

  static String chart(Comparison comparison) {
    return CompareCharts.choices(comparison);
  }

  static String helixPlan(HelixReport report) {
    return HelixPlanDrawing.svg(report.plan(), title(report.job()));
  }

  static String helixSide(HelixReport report) {
    return HelixSideDrawing.svg(report.plan(), title(report.job()));
  }

  private static HelixTitle title(Job job) {
    return new HelixTitle(job.title(), job.style(), job.invented());
  }
}
