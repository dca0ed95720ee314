package curvestock.report;

import curvestock.answer.Answer;
import curvestock.answer.Choices;
import curvestock.answer.Figures;
import curvestock.answer.SegmentName;
import curvestock.answer.Shares;
import curvestock.compare.BatchComparison;
import curvestock.compare.BatchRow;
import curvestock.plan.BatchPlan;
import java.util.List;

/** Several jobs together. */
public final class BatchPaper {

  private BatchPaper() {}

  /** The summary of the whole plan, then what falls to each job. */
  public static List<String> text(BatchPlan batch, Answer answer) {
    return shared(PlanPaper.parts(batch.plan().job(), answer), batch, answer);
  }

  /** What decides, then what falls to each job. */
  public static List<String> brief(BatchPlan batch, Answer answer) {
    return shared(PlanPaper.briefly(batch.plan().job(), answer), batch, answer);
  }

  private static List<String> shared(Parts parts, BatchPlan batch, Answer answer) {
    parts.table(Shares.of(batch));
    parts.bullets(
        List.of("The cost is split by the area of the pieces, with half the gap around each."));
    return TextPaper.of(answer.heading(), parts.done());
  }

  /** A comparison of several jobs: all together in each size, and what sharing saves. */
  public static List<String> text(BatchComparison found) {
    Answer answer = Answer.of(found.rows().get(found.best()).batch().plan());
    Figures figures = answer.figures();
    BatchRow best = found.rows().get(found.best());
    Parts parts = new Parts();
    parts.say(
        "Cut %s: %s, %s. Planned apart, each in its own best size, they need %s, %s."
            .formatted(
                best.common()
                    .map(common -> "all in " + SegmentName.plural(common))
                    .orElse("each in its own best size"),
                Figures.count(best.sheets(), "sheet"),
                figures.money(best.sheetCost()),
                Figures.count(found.apartSheets(), "sheet"),
                figures.money(found.apartCost())));
    parts.say(
        (found.joint().assumed() ? "Each joint is assumed to cost %s." : "Each joint costs %s.")
            .formatted(figures.money(found.joint().each())));
    if (found.stopped()) {
      parts.notice(ComparePaper.STOPPED);
    }
    parts.table(Choices.ofBatch(found));
    parts.table(Shares.of(found));
    return TextPaper.of(answer.heading(), parts.done());
  }
}
