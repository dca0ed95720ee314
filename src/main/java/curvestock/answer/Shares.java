package curvestock.answer;

import static curvestock.answer.Field.count;
import static curvestock.answer.Field.money;
import static curvestock.answer.Field.text;

import curvestock.compare.BatchComparison;
import curvestock.compare.BatchRow;
import curvestock.compare.Comparison;
import curvestock.compare.Division;
import curvestock.compare.SegmentOption;
import curvestock.plan.BatchPlan;
import curvestock.units.Count;
import curvestock.units.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** What falls to each of several jobs that share sheets. */
public final class Shares {

  private Shares() {}

  /** Of a plan. */
  public static Table of(BatchPlan batch) {
    return Table.of(
        "jobs",
        "Jobs (each job's letter stands before its piece numbers)",
        batch.shares(),
        text("letter", "Job", share -> share.member().tag()),
        text("title", "Title", share -> share.member().job().title()),
        count("pieces", "Pieces", BatchPlan.Share::pieces),
        Field.of("partOfArea", "Of the area", Measure.SHARE, share -> new Share(share.part())),
        money("cost", "Of the cost", BatchPlan.Share::cost),
        text("sheets", "On sheets", share -> ranges(share.sheets())));
  }

  /** Of a comparison. */
  public static Table of(BatchComparison found) {
    BatchRow best = found.rows().get(found.best());
    List<BatchPlan.Share> shares = best.batch().shares();
    List<Optional<SegmentOption>> alone =
        found.apart().stream().map(each -> each.flatMap(Comparison::best)).toList();
    return Table.of(
        "jobs",
        "Job by job",
        IntStream.range(0, shares.size()).boxed().toList(),
        text("letter", "Job", i -> shares.get(i).member().tag()),
        text("title", "Title", i -> shares.get(i).member().job().title()),
        text(
            "apart",
            "Apart: best",
            i -> brief(alone.get(i).map(SegmentOption::division), "no helix")),
        Field.of(
            "sheetsApart",
            "Sheets",
            Measure.COUNT,
            i -> Field.orNone(alone.get(i).map(option -> new Count(option.sheets())))),
        text("together", "Together", i -> brief(best.divisions().get(i), "")),
        money("cost", "Of the cost", i -> shares.get(i).cost()));
  }

  private static String brief(Optional<Division> division, String none) {
    return division.map(SegmentName::brief).orElse(none);
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
