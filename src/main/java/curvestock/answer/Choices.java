package curvestock.answer;

import static curvestock.answer.Field.angle;
import static curvestock.answer.Field.count;
import static curvestock.answer.Field.length;
import static curvestock.answer.Field.money;
import static curvestock.answer.Field.text;

import curvestock.compare.AngleScan;
import curvestock.compare.BatchComparison;
import curvestock.compare.BatchRow;
import curvestock.compare.Comparison;
import curvestock.compare.JointFall;
import curvestock.compare.Reach;
import curvestock.compare.Refusal;
import curvestock.compare.SegmentOption;
import curvestock.compare.Sensitivity;
import curvestock.compare.SheetFill;
import curvestock.compare.SizeLook;
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
import java.util.function.DoubleBinaryOperator;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
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
    List<Field<SegmentOption>> fields = new ArrayList<>(decisive(comparison));
    fields.addAll(joints());
    fields.addAll(work(comparison.job().rates()));
    String caption = "Segment sizes on " + comparison.mainSheet().name();
    return Table.of("choices", caption, comparison.options(), fields);
  }

  private static Field<SegmentOption> ofFill(
      String key, String title, Function<SheetFill, Integer> number) {
    return Field.of(
        key,
        title,
        Measure.COUNT,
        option -> Field.orNone(option.fill().map(number).map(Count::new)));
  }

  private static List<Field<SegmentOption>> decisive(Comparison comparison) {
    Optional<SegmentOption> best = comparison.best();
    return List.of(
        text("segment", "Segment", o -> SegmentName.brief(o.division())),
        text("best", "Best", o -> best.equals(Optional.of(o)) ? "*" : ""),
        angle("angle", "Angle", SegmentOption::angle),
        Field.of(
            "lowerCount",
            "Lower pieces",
            Measure.COUNT,
            o -> Field.orNone(o.division().lower().map(run -> new Count(run.count())))),
        angle("upperAngle", "Upper angle", o -> o.division().segment()),
        count("pieces", "Pieces", SegmentOption::cut),
        ofFill("perSheet", "Per sheet", SheetFill::count),
        ofFill("limit", "Limit", fill -> fill.bound().count()),
        text("limitProof", "Proof", o -> o.fill().map(fill -> fill.bound().proof()).orElse("")),
        ofFill("perSheetByPattern", "Quick count", SheetFill::byPattern),
        Field.of("turnsPerSheet", "Turns per sheet", Measure.TURNS, Choices::turns),
        count("sheets", "Sheets", SegmentOption::sheets),
        count("leastSheets", "Least sheets", o -> o.cost().leastSheets()),
        money("cost", "Cost", SegmentOption::sheetCost),
        money("leastCost", "Least cost", o -> o.cost().leastPaid()),
        money("couldStillSave", "Savings not ruled out", o -> o.cost().couldStillSave()),
        text("costProof", "Proof of the least", o -> o.cost().proof()),
        Field.of("used", "Used", Measure.SHARE, o -> new Share(o.areaYield())),
        text("search", "Search", o -> words(o.effort())),
        length("largestLength", "Largest piece", o -> o.largest().length()),
        length("largestWidth", "by", o -> o.largest().width()),
        text("largestIs", "Largest is", o -> o.isLargestWithLead() ? "with its lead" : "a segment"),
        length("wholeLength", "Without a lead", o -> o.whole().length()),
        length("wholeWidth", "by", o -> o.whole().width()),
        text("tooLargeFor", "Too large for", Choices::tooLarge));
  }

  /** What the largest piece of a size is called above its column, as all or some have a lead. */
  public String largestTitle() {
    List<SegmentOption> all = comparison.options();
    return all.stream().noneMatch(SegmentOption::isLargestWithLead)
        ? "Largest piece"
        : all.stream().allMatch(SegmentOption::isLargestWithLead)
            ? "Largest piece, with its lead"
            : "Largest piece, lead included";
  }

  private static Quantity turns(SegmentOption option) {
    return option.fill().isEmpty() ? Text.NONE : Field.turned(option.turnsPerSheet());
  }

  private static String tooLarge(SegmentOption option) {
    return option.tooLargeFor().stream().map(Rates.Opening::name).collect(Collectors.joining(", "));
  }

  private static List<Field<SegmentOption>> joints() {
    return List.of(
        count("joints", "Joints", SegmentOption::joints),
        text("jointsPerTurn", "Joints per turn", Choices::perTurn),
        text("jointsFall", "Joints, turn to turn", o -> fall(o.fall())),
        angle("jointsLeastApart", "Least apart", o -> Angle.ofDegrees(o.fall().leastDegrees())),
        count("plates", "Plates", o -> o.parts().plates()),
        count("smallParts", "Plates and blocks", o -> o.small().wanted()),
        count("smallPartsInOffcuts", "Cut from offcuts", o -> o.small().nested()),
        count("extraSheets", "Extra sheets", o -> o.small().extraSheets()),
        text("smallPartsComplete", "All cut", o -> o.small().complete() ? "yes" : "no"),
        count("screws", "Screws", o -> o.parts().screws()),
        weight("glue", "Glue", o -> o.parts().glueGrams() / GRAMS));
  }

  private static String perTurn(SegmentOption option) {
    return option.division().isMixed() ? "mixed" : Figures.decimal(option.jointsPerTurn(), 1);
  }

  private static Field<SegmentOption> weight(
      String key, String title, ToDoubleFunction<SegmentOption> kilograms) {
    return Field.of(key, title, Measure.WEIGHT, o -> new Mass(kilograms.applyAsDouble(o)));
  }

  private static List<Field<SegmentOption>> work(Rates rates) {
    List<Field<SegmentOption>> fields = new ArrayList<>();
    fields.add(Field.of("cutLength", "Length of cut", Measure.RUN, SegmentOption::cutLength));
    fields.add(weight("weight", "Weight", SegmentOption::weight));
    if (rates.feedPerMinute().isPresent()) {
      fields.add(Field.of("cutMinutes", "Time to cut", Measure.MINUTES, Choices::minutes));
    }
    fields.add(offcut("offcutLength", "Offcut", Math::max));
    fields.add(offcut("offcutWidth", "by", Math::min));
    if (rates.offcutsWorth() > 0) {
      fields.add(money("offcutsWorth", "Offcuts worth", SegmentOption::offcutsWorth));
    }
    if (rates.costSomething()) {
      fields.add(money("cuttingCost", "Cutting", o -> o.work().cutting()));
      fields.add(money("jointsCost", "Joints cost", Choices::jointsCost));
      fields.add(money("total", "All", SegmentOption::total));
    }
    return fields;
  }

  /** Of the largest piece of wood kept of the sheets bought. */
  private static Field<SegmentOption> offcut(String key, String title, DoubleBinaryOperator side) {
    return Field.offcut(key, title, option -> option.offcuts().stream().findFirst(), side);
  }

  private static Quantity minutes(SegmentOption option) {
    return new Count(Math.round(option.work().cutMinutes().orElse(0)));
  }

  private static Money jointsCost(SegmentOption option) {
    return option.work().eachJoint().times(option.joints());
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
    return Table.of(
        "refused",
        "Sizes that cannot be cut",
        comparison.refused(),
        angle("angle", "Angle", Refusal::angle),
        text("reason", "Why", each -> each.reason().lines().findFirst().orElse("")));
  }

  private static Table reach(Comparison comparison) {
    return Table.of(
        "withSheets",
        "What the sheets on hand are enough for",
        comparison.reach(),
        text("segment", "Segment", each -> SegmentName.brief(each.division())),
        angle("angle", "Angle", each -> each.division().largest()),
        count("pieces", "Pieces", Reach::pieces),
        count("onRemnants", "From sheets on hand", Reach::onRemnants),
        Field.turns("turns", "Turns", Reach::turns));
  }

  private static Table steps(Comparison comparison) {
    return Table.of(
        "steps",
        "What small changes do",
        comparison.sensitivity().map(Sensitivity::steps).orElse(List.of()),
        text("what", "Changed", step -> words(step.dimension())),
        length("change", "Change", Sensitivity.Step::change),
        count("perSheet", "Per sheet", Sensitivity.Step::perSheet),
        Field.of("sheets", "Sheets", Measure.COUNT, Choices::sheets));
  }

  private static Quantity sheets(Sensitivity.Step step) {
    return step.sheets() == Sensitivity.Step.NONE
        ? new Text("cannot be cut")
        : new Count(step.sheets());
  }

  private static Table fewestPieces(Comparison comparison) {
    Optional<AngleScan.ForJob> best = comparison.scan().map(AngleScan::bestForJob);
    return Table.of(
        "fewestPieces",
        "Fewest pieces of one size for this helix",
        comparison.scan().map(AngleScan::front).orElse(List.of()),
        count("sheets", "Sheets", AngleScan.ForJob::sheets),
        angle("angle", "Angle", choice -> choice.sample().angle()),
        count("pieces", "Pieces", AngleScan.ForJob::pieces),
        text(
            "best",
            "Best",
            choice -> best.equals(Optional.of(choice)) ? "cheapest, joints included" : ""));
  }

  /** Names of enums as data and people read them. */
  private static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  /** First counts, by regular patterns. */
  public static Table firstLook(List<SizeLook> looks) {
    return Table.of(
        "firstLook",
        "Quick count; better layouts and the cost follow",
        looks,
        text("segment", "Segment", look -> SegmentName.brief(look.angle())),
        angle("angle", "Angle", SizeLook::angle),
        count("pieces", "Pieces", SizeLook::pieces),
        Field.of("perSheet", "Per sheet", Measure.COUNT, look -> some(look.perSheet())),
        Field.turns(
            "turnsPerSheet",
            "Turns per sheet",
            look -> look.perSheet() * look.angle().degrees() / 360),
        Field.of("sheets", "Sheets (about)", Measure.COUNT, look -> some(look.sheets())),
        Field.of("cost", "Cost (about)", Measure.MONEY, Choices::about),
        count("joints", "Joints", SizeLook::joints),
        length("longest", "Largest piece", look -> look.largest().length()));
  }

  private static Quantity some(int count) {
    return count == 0 ? new Text("none") : new Count(count);
  }

  private static Quantity about(SizeLook look) {
    return look.sheets() == 0 ? Text.NONE : look.paid();
  }

  /** Several jobs together in each size. */
  public static Table ofBatch(BatchComparison found) {
    return Table.of(
        "together",
        "All jobs together",
        found.rows(),
        text("segment", "All in", Choices::together),
        count("pieces", "Pieces", row -> row.batch().plan().pieces()),
        count("sheets", "Sheets", BatchRow::sheets),
        money("cost", "Cost", BatchRow::sheetCost),
        money("couldStillSave", "Savings not ruled out", row -> row.cost().couldStillSave()),
        count("joints", "Joints", BatchRow::joints),
        Field.of("used", "Used", Measure.SHARE, r -> new Share(r.batch().plan().areaYield())));
  }

  private static String together(BatchRow row) {
    return row.common().map(SegmentName::brief).orElse("each its own best");
  }

  public Job job() {
    return comparison.job();
  }
}
