package curvestock.report;

import curvestock.compare.BatchComparison;
import curvestock.compare.BatchRow;
import curvestock.compare.Comparison;
import curvestock.compare.SegmentOption;
import curvestock.plan.BatchPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What falls to each job of a batch, as a table with its legend. */
public final class BatchWords {

  private BatchWords() {}

  /** The summary of the whole plan, then the jobs. */
  public static List<String> summary(BatchPlan batch) {
    List<String> lines = new ArrayList<>(PlanSummary.of(batch.plan()));
    lines.add("");
    lines.add("Jobs, their letters before the numbers of their pieces");
    TextTable table =
        new TextTable().row(List.of("Job", "Pieces", "Of the area", "Of the cost", "On sheets"));
    String currency = batch.plan().job().currency();
    for (BatchPlan.Share share : batch.shares()) {
      table.row(
          List.of(
              share.member().tag() + "  " + share.member().job().title(),
              Integer.toString(share.pieces()),
              String.format(Locale.ROOT, "%.1f %%", 100 * share.part()),
              share.cost().format(currency),
              ranges(share.sheets())));
    }
    lines.addAll(table.lines());
    lines.add("The sheets' cost is split by the area of the pieces, half the spacing around each.");
    return lines;
  }

  /** A comparison of several jobs: all together in each size, and what sharing saves. */
  public static List<String> of(BatchComparison found) {
    String currency = found.batch().members().get(0).job().currency();
    List<String> lines = new ArrayList<>();
    lines.add(found.batch().members().size() + " jobs together: which segment size?");
    lines.add("");
    TextTable table =
        new TextTable()
            .row(
                List.of(
                    "All in",
                    "Pieces",
                    "Sheets",
                    "Their cost",
                    "Any layout saves at most",
                    "Joints",
                    "Becomes pieces"));
    for (BatchRow row : found.rows()) {
      table.row(
          List.of(
              row.common().map(SegmentName::brief).orElse("each its own best"),
              Integer.toString(row.batch().plan().pieces()),
              Integer.toString(row.sheets()),
              row.sheetCost().format(currency),
              row.cost().couldStillSave().format(currency),
              Integer.toString(row.joints()),
              String.format(Locale.ROOT, "%.0f %%", 100 * row.batch().plan().areaYield())));
    }
    lines.addAll(table.lines());
    lines.add("");
    BatchRow best = found.rows().get(found.best());
    lines.add(
        "Recommended: "
            + best.common()
                .map(common -> "all in " + SegmentName.plural(common))
                .orElse("each in its own best size")
            + ", "
            + best.sheets()
            + " sheets for "
            + best.sheetCost().format(currency)
            + "; planned apart, each in its own best size, they take "
            + found.apartSheets()
            + " sheets for "
            + found.apartCost().format(currency)
            + ".");
    lines.add(
        "A joint is taken at "
            + found.joint().each().format(currency)
            + (found.joint().assumed() ? " (assumed)." : "."));
    lines.add("");
    lines.addAll(members(found, best, currency));
    if (found.stopped()) {
      lines.add("");
      lines.add("Stopped early: this is what was compared until then.");
    }
    return lines;
  }

  private static List<String> members(BatchComparison found, BatchRow best, String currency) {
    TextTable table =
        new TextTable()
            .row(List.of("Job", "Apart: best", "Sheets", "Together", "Its part of the cost"));
    List<BatchPlan.Share> shares = best.batch().shares();
    for (int i = 0; i < shares.size(); i++) {
      Optional<SegmentOption> alone = found.apart().get(i).flatMap(Comparison::best);
      table.row(
          List.of(
              found.batch().members().get(i).tag()
                  + "  "
                  + found.batch().members().get(i).job().title(),
              alone.map(option -> SegmentName.brief(option.division())).orElse("no helix"),
              alone.map(option -> Integer.toString(option.sheets())).orElse(""),
              best.divisions().get(i).map(SegmentName::brief).orElse(""),
              shares.get(i).cost().format(currency)));
    }
    return table.lines();
  }

  /** {@code 1-3, 5}. */
  static String ranges(List<Integer> numbers) {
    List<List<Integer>> runs = new ArrayList<>();
    for (int number : numbers) {
      List<Integer> last = runs.isEmpty() ? List.of() : runs.get(runs.size() - 1);
      if (!last.isEmpty() && last.get(last.size() - 1) == number - 1) {
        last.add(number);
      } else {
        runs.add(new ArrayList<>(List.of(number)));
      }
    }
    return runs.stream()
        .map(
            run ->
                run.size() == 1
                    ? run.get(0).toString()
                    : run.get(0) + "-" + run.get(run.size() - 1))
        .collect(Collectors.joining(", "));
  }
}
