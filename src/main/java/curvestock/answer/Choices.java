package curvestock.answer;

import curvestock.compare.AngleScan;
import curvestock.compare.BatchComparison;
import curvestock.compare.Comparison;
import curvestock.compare.FirstLook;
import curvestock.compare.JointFall;
import curvestock.compare.SegmentOption;
import curvestock.compare.Sensitivity;
import curvestock.compare.SheetFill;
import curvestock.job.Job;
import curvestock.job.Rates;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Mass;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Segment sizes side by side.
 *
 * @param comparison that was made
 * @param options a row for each choice, with everything that is known of it
 * @param refused sizes that cannot be cut
 * @param reach turns that the sheets asked about give
 * @param steps what changes of a length would change
 * @param fewestPieces for each number of sheets, of all angles looked at; empty without a scan
 */
public record Choices(
    Comparison comparison,
    Table options,
    Table refused,
    Table reach,
    Table steps,
    Table fewestPieces) {

  private static final double GRAMS = 1000;

  /** A row's figure under its heading. */
  private record Cell(
      String key, String title, Measure measure, Function<SegmentOption, Quantity> figure) {}

  public static Choices of(Comparison comparison) {
    return new Choices(
        comparison,
        options(comparison),
        refused(comparison),
        reach(comparison),
        steps(comparison),
        fewestPieces(comparison));
  }

  public Heading heading() {
    return Heading.of(comparison.job());
  }

  /** Whether the job prices more than sheets. */
  public boolean priced() {
    return comparison.job().rates().costSomething();
  }

  private static Table options(Comparison comparison) {
    List<Cell> cells = new ArrayList<>(decisive(comparison));
    cells.addAll(joints());
    cells.addAll(work(comparison.job().rates()));
    Table.Rows rows =
        new Table.Rows("choices", "Segment sizes, counted on " + comparison.mainSheet().name());
    cells.forEach(cell -> rows.column(cell.key(), cell.title(), cell.measure()));
    for (SegmentOption option : comparison.options()) {
      rows.add(cells.stream().map(cell -> cell.figure().apply(option)).toList());
    }
    return rows.done();
  }

  private static Cell cell(
      String key, String title, Measure measure, Function<SegmentOption, Quantity> figure) {
    return new Cell(key, title, measure, figure);
  }

  private static Cell count(String key, String title, Function<SegmentOption, Integer> number) {
    return cell(key, title, Measure.COUNT, option -> new Count(number.apply(option)));
  }

  private static Cell ofFill(String key, String title, Function<SheetFill, Quantity> figure) {
    return cell(key, title, Measure.COUNT, option -> Table.orNone(option.fill().map(figure)));
  }

  private static List<Cell> decisive(Comparison comparison) {
    Optional<SegmentOption> best = comparison.best();
    return List.of(
        cell("segment", "Segment", Measure.TEXT, o -> new Text(SegmentName.brief(o.division()))),
        cell("best", "Best", Measure.TEXT, o -> new Text(best.equals(Optional.of(o)) ? "*" : "")),
        cell("angle", "Angle", Measure.ANGLE, SegmentOption::angle),
        cell(
            "lowerCount",
            "Lower pieces",
            Measure.COUNT,
            o -> Table.orNone(o.division().lower().map(run -> new Count(run.count())))),
        cell("upperAngle", "Upper angle", Measure.ANGLE, o -> o.division().segment()),
        count("pieces", "Pieces", SegmentOption::pieces),
        ofFill("perSheet", "Per sheet", fill -> new Count(fill.count())),
        ofFill("limit", "Limit", fill -> new Count(fill.bound().count())),
        ofFill("limitProof", "Proof", fill -> new Text(fill.bound().proof())),
        ofFill("perSheetByPattern", "By pattern", fill -> new Count(fill.byPattern())),
        cell("turnsPerSheet", "Turns per sheet", Measure.TURNS, Choices::turns),
        count("sheets", "Sheets", SegmentOption::sheets),
        count("leastSheets", "Least sheets", o -> o.cost().leastSheets()),
        cell("cost", "Cost", Measure.MONEY, SegmentOption::sheetCost),
        cell("leastCost", "Least cost", Measure.MONEY, o -> o.cost().leastPaid()),
        cell("couldStillSave", "Could still save", Measure.MONEY, o -> o.cost().couldStillSave()),
        cell("costProof", "Proof of the least", Measure.TEXT, o -> new Text(o.cost().proof())),
        cell("used", "Used", Measure.SHARE, o -> new Share(o.areaYield())),
        cell(
            "search",
            "Search",
            Measure.TEXT,
            o -> new Text(o.effort().name().toLowerCase(Locale.ROOT))),
        cell("largestLength", "Largest piece", Measure.LENGTH, o -> o.largest().length()),
        cell("largestWidth", "by", Measure.LENGTH, o -> o.largest().width()),
        cell("tooLargeFor", "Too large for", Measure.TEXT, Choices::tooLarge));
  }

  private static Quantity turns(SegmentOption option) {
    return option.fill().isEmpty()
        ? Text.NONE
        : Angle.ofDegrees(option.turnsPerSheet() * Angle.FULL_TURN.degrees());
  }

  private static Quantity tooLarge(SegmentOption option) {
    return new Text(
        option.tooLargeFor().stream().map(Rates.Opening::name).collect(Collectors.joining(", ")));
  }

  private static List<Cell> joints() {
    return List.of(
        count("joints", "Joints", SegmentOption::joints),
        cell(
            "jointsPerTurn",
            "A turn",
            Measure.TEXT,
            o ->
                new Text(o.division().isMixed() ? "mixed" : Figures.decimal(o.jointsPerTurn(), 1))),
        cell("jointsFall", "Turn over turn", Measure.TEXT, o -> new Text(fall(o.fall()))),
        cell(
            "jointsLeastApart",
            "Least apart",
            Measure.ANGLE,
            o -> Angle.ofDegrees(o.fall().leastDegrees())),
        count("plates", "Plates", o -> o.parts().plates()),
        count("smallParts", "Plates, blocks", o -> o.small().wanted()),
        count("smallPartsInOffcuts", "Cut from offcuts", o -> o.small().nested()),
        count("extraSheets", "Extra sheets", o -> o.small().extraSheets()),
        cell(
            "smallPartsComplete",
            "All cut",
            Measure.TEXT,
            o -> new Text(o.small().complete() ? "yes" : "no")),
        count("screws", "Screws", o -> o.parts().screws()),
        cell("glue", "Glue", Measure.WEIGHT, o -> new Mass(o.parts().glueGrams() / GRAMS)));
  }

  private static List<Cell> work(Rates rates) {
    List<Cell> cells =
        new ArrayList<>(
            List.of(
                cell("cutLength", "Length of cut", Measure.RUN, SegmentOption::cutLength),
                cell("weight", "Weight", Measure.WEIGHT, o -> new Mass(o.weight()))));
    if (rates.feedPerMinute().isPresent()) {
      cells.add(
          cell("cutMinutes", "Time to cut", Measure.MINUTES, o -> minutes(o.work().cutMinutes())));
    }
    if (rates.costSomething()) {
      cells.add(cell("cuttingCost", "Cutting", Measure.MONEY, o -> o.work().cutting()));
      cells.add(cell("jointsCost", "Joints cost", Measure.MONEY, Choices::jointsCost));
      cells.add(cell("total", "All", Measure.MONEY, SegmentOption::total));
    }
    return cells;
  }

  private static Quantity minutes(OptionalDouble minutes) {
    return new Count(Math.round(minutes.orElse(0)));
  }

  private static Money jointsCost(SegmentOption option) {
    return option.work().eachJoint().times(option.joints()).plus(option.work().parts());
  }

  private static String fall(JointFall fall) {
    return switch (fall.line()) {
      case IN_LINE -> "in line";
      case STAGGERED_BY_HALF -> "staggered";
      case PARTLY_IN_LINE -> "partly in line";
      case WANDERING -> Figures.decimal(fall.leastDegrees(), 0) + "° apart";
      case NONE_ABOVE -> "one turn";
    };
  }

  private static Table refused(Comparison comparison) {
    Table.Rows rows =
        new Table.Rows("refused", "Sizes that cannot be cut")
            .column("angle", "Angle", Measure.ANGLE)
            .text("reason", "Why");
    comparison
        .refused()
        .forEach(
            each -> rows.add(each.angle(), new Text(each.reason().lines().findFirst().orElse(""))));
    return rows.done();
  }

  private static Table reach(Comparison comparison) {
    Table.Rows rows =
        new Table.Rows("withSheets", "What the sheets at hand reach for")
            .text("segment", "Segment")
            .column("angle", "Angle", Measure.ANGLE)
            .count("pieces", "Pieces")
            .count("onRemnants", "From what is on hand")
            .column("turns", "Turns", Measure.TURNS);
    comparison
        .reach()
        .forEach(
            each ->
                rows.add(
                    new Text(SegmentName.brief(each.division())),
                    each.division().largest(),
                    new Count(each.pieces()),
                    new Count(each.onRemnants()),
                    Angle.ofDegrees(each.turns() * Angle.FULL_TURN.degrees())));
    return rows.done();
  }

  private static Table steps(Comparison comparison) {
    Table.Rows rows =
        new Table.Rows("steps", "What a change would change")
            .text("what", "Length")
            .length("change", "Change")
            .count("perSheet", "Per sheet")
            .count("sheets", "Sheets");
    comparison
        .sensitivity()
        .ifPresent(
            found ->
                found
                    .steps()
                    .forEach(
                        step ->
                            rows.add(
                                new Text(words(step.dimension())),
                                step.change(),
                                new Count(step.perSheet()),
                                step.sheets() == Sensitivity.Step.NONE
                                    ? new Text("cannot be cut")
                                    : new Count(step.sheets()))));
    return rows.done();
  }

  private static Table fewestPieces(Comparison comparison) {
    Table.Rows rows =
        new Table.Rows("fewestPieces", "Fewest pieces of one size for this helix")
            .count("sheets", "Sheets")
            .column("angle", "Angle", Measure.ANGLE)
            .count("pieces", "Pieces")
            .text("best", "Best");
    comparison.scan().ifPresent(scan -> fewestPieces(rows, scan));
    return rows.done();
  }

  private static void fewestPieces(Table.Rows rows, AngleScan scan) {
    for (AngleScan.ForJob choice : scan.front()) {
      rows.add(
          new Count(choice.sheets()),
          choice.sample().angle(),
          new Count(choice.pieces()),
          new Text(choice.equals(scan.bestForJob()) ? "cheapest, joints included" : ""));
    }
  }

  /** Names of enums as data and people read them. */
  static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** First counts, by regular patterns. */
  public static Table firstLook(List<FirstLook> looks) {
    Table.Rows rows =
        new Table.Rows("firstLook", "Regular patterns; fuller layouts and the purchase follow")
            .text("segment", "Segment")
            .column("angle", "Angle", Measure.ANGLE)
            .count("pieces", "Pieces")
            .count("perSheet", "Per sheet")
            .column("turnsPerSheet", "Turns per sheet", Measure.TURNS);
    for (FirstLook look : looks) {
      rows.add(
          new Text(SegmentName.brief(look.angle())),
          look.angle(),
          new Count(look.pieces()),
          look.perSheet() == 0 ? new Text("none") : new Count(look.perSheet()),
          Angle.ofDegrees(look.turnsPerSheet() * Angle.FULL_TURN.degrees()));
    }
    return rows.done();
  }

  /** Several jobs together in each size. */
  public static Table ofBatch(BatchComparison found) {
    Table.Rows rows =
        new Table.Rows("together", "All jobs together")
            .text("segment", "All in")
            .count("pieces", "Pieces")
            .count("sheets", "Sheets")
            .money("cost", "Cost")
            .money("couldStillSave", "Could still save")
            .count("joints", "Joints")
            .column("used", "Used", Measure.SHARE);
    found
        .rows()
        .forEach(
            row ->
                rows.add(
                    new Text(row.common().map(SegmentName::brief).orElse("each its own best")),
                    new Count(row.batch().plan().pieces()),
                    new Count(row.sheets()),
                    row.sheetCost(),
                    row.cost().couldStillSave(),
                    new Count(row.joints()),
                    new Share(row.batch().plan().areaYield())));
    return rows.done();
  }

  /** The job's own name of what was compared. */
  public Job job() {
    return comparison.job();
  }
}
