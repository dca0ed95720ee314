package curvestock.answer;

import curvestock.compare.BatchComparison;
import curvestock.compare.Comparison;
import curvestock.compare.SegmentOption;
import curvestock.plan.BatchPlan;
import curvestock.units.Count;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** What falls to each of several jobs that share sheets. */
public final class Shares {

  private Shares() {}

  /** Of a plan. */
  public static Table of(BatchPlan batch) {
    Table.Rows rows =
        new Table.Rows("jobs", "Jobs, their letters before the numbers of their pieces")
            .text("letter", "Job")
            .text("title", "Title")
            .count("pieces", "Pieces")
            .column("partOfArea", "Of the area", Measure.SHARE)
            .money("cost", "Of the cost")
            .text("sheets", "On sheets");
    for (BatchPlan.Share share : batch.shares()) {
      rows.add(
          new Text(share.member().tag()),
          new Text(share.member().job().title()),
          new Count(share.pieces()),
          new Share(share.part()),
          share.cost(),
          new Text(ranges(share.sheets())));
    }
    return rows.done();
  }

  /** Of a comparison. */
  public static Table of(BatchComparison found) {
    Table.Rows rows =
        new Table.Rows("jobs", "Job by job")
            .text("letter", "Job")
            .text("title", "Title")
            .text("apart", "Apart: best")
            .count("sheetsApart", "Sheets")
            .text("together", "Together")
            .money("cost", "Of the cost");
    List<BatchPlan.Share> shares = found.rows().get(found.best()).batch().shares();
    for (int i = 0; i < shares.size(); i++) {
      Optional<SegmentOption> alone = found.apart().get(i).flatMap(Comparison::best);
      rows.add(
          new Text(shares.get(i).member().tag()),
          new Text(shares.get(i).member().job().title()),
          new Text(alone.map(o -> SegmentName.brief(o.division())).orElse("no helix")),
          Table.orNone(alone.map(option -> new Count(option.sheets()))),
          new Text(
              found.rows().get(found.best()).divisions().get(i).map(SegmentName::brief).orElse("")),
          shares.get(i).cost());
    }
    return rows.done();
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
