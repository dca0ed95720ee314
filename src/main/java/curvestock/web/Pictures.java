package curvestock.web;

import curvestock.answer.Answer;
import curvestock.compare.Comparison;
import curvestock.drawing.HelixPlanDrawing;
import curvestock.drawing.HelixSideDrawing;
import curvestock.drawing.HelixTitle;
import curvestock.report.CompareCharts;

/** The drawings that the page shows as pictures; the same as in a result folder. */
final class Pictures {

  private Pictures() {}

  static String chart(Comparison comparison) {
    return CompareCharts.choices(comparison);
  }

  static String helixPlan(Answer report) {
    return HelixPlanDrawing.svg(report.building().orElseThrow().plan(), title(report));
  }

  static String helixSide(Answer report) {
    return HelixSideDrawing.svg(report.building().orElseThrow().plan(), title(report));
  }

  private static HelixTitle title(Answer answer) {
    return new HelixTitle(
        answer.heading().title(), answer.figures().style(), answer.heading().invented());
  }
}
