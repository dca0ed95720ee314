package curvestock.report;

import curvestock.helix.Assumption;
import curvestock.helix.HelixPlan;
import curvestock.helix.Remedies;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.build.SupportRow.Part;
import curvestock.helix.build.Weight;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Construction;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Rule;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.State;
import curvestock.helix.verdict.VerdictWords;
import curvestock.plan.Plan;
import curvestock.purchase.PurchaseLine;
import curvestock.sheet.SheetStock;
import curvestock.units.Angle;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.LengthUnit;
import curvestock.units.Money;
import curvestock.units.Text;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A whole helix in words: whether it works, why, and what it takes to build it. */
public final class HelixSummary {

  private static final List<String> CAUTIONS =
      List.of(
          "These figures are planning aids: mock up a turn with your own trains before you cut.",
          "Eye and hearing protection and a dust mask at every saw, router and sander; clamp the"
              + " work.",
          "Cut ends of threaded rod are sharp: deburr and cap them, above all at head height.",
          "Two or more people lift a finished helix, with blocks under it as it rises; pad the"
              + " edges of duck-unders.",
          "Have wiring of mains voltage, and any structure fixed over people's heads, done or seen"
              + " by licensed people; local codes go first.");

  private final HelixReport report;
  private final HelixPlan plan;
  private final HelixSpec spec;
  private final LengthStyle style;
  private final List<String> lines = new ArrayList<>();

  private HelixSummary(HelixReport report) {
    this.report = report;
    this.plan = report.plan();
    this.spec = plan.spec();
    this.style = report.job().style();
  }

  /** What to read first. */
  public static List<String> of(HelixReport report) {
    HelixSummary summary = new HelixSummary(report);
    summary.write(List.of());
    return List.copyOf(summary.lines);
  }

  /** The same with all that is taken to the bench: cutting lists, assembly, heights to check. */
  public static List<String> withLists(HelixReport report) {
    HelixSummary summary = new HelixSummary(report);
    summary.write(HelixLists.of(report));
    return List.copyOf(summary.lines);
  }

  /** For the summary of a cutting plan: what fails, in full, and what is marginal, by name. */
  public static List<String> warnings(HelixReport report) {
    List<String> warnings = new ArrayList<>();
    List<String> marginal = new ArrayList<>();
    for (Verdict verdict : report.verdicts()) {
      if (verdict.state() == State.FAIL) {
        warnings.add("This helix fails: " + report.words().line(verdict));
      } else if (verdict.state() == State.MARGINAL) {
        marginal.add(VerdictWords.title(verdict));
      }
    }
    if (!marginal.isEmpty()) {
      warnings.add(
          "Marginal: " + String.join(", ", marginal) + "; `curvestock helix` has the details.");
    }
    return warnings;
  }

  private void write(List<String> lists) {
    lines.add(report.job().title() + (report.job().invented() ? "  [invented data]" : ""));
    lines.add("");
    answer();
    assumed();
    figures();
    verdicts();
    budgets();
    ends();
    joints();
    pieces();
    supports();
    shopping();
    lines.addAll(lists);
    heading("Cautions");
    CAUTIONS.forEach(this::item);
  }

  private void answer() {
    List<Verdict> verdicts = report.verdicts();
    long fail = count(verdicts, State.FAIL);
    long marginal = count(verdicts, State.MARGINAL);
    int all = verdicts.size();
    lines.add(
        fail > 0
            ? "Does not work: "
                + fail
                + " of "
                + all
                + (fail == 1 ? " checks fails." : " checks fail.")
            : marginal > 0
                ? "Works: "
                    + (all - marginal)
                    + " of "
                    + all
                    + " checks pass, "
                    + marginal
                    + " marginal."
                : "Works: all " + all + " checks pass.");
    Stream.of(Rule.values())
        .map(rule -> verdicts.stream().filter(each -> fails(each, rule)).toList())
        .filter(group -> !group.isEmpty())
        .forEach(this::failure);
    if (fail > 0) {
      remedies();
    }
  }

  private static boolean fails(Verdict verdict, Rule rule) {
    return verdict.rule() == rule && verdict.state() == State.FAIL;
  }

  /** A rule that fails in several places is told once: the worst in full, the others by name. */
  private void failure(List<Verdict> group) {
    Verdict worst =
        group.stream().min(Comparator.comparingDouble(HelixSummary::room)).orElseThrow();
    String also =
        group.stream()
            .filter(verdict -> verdict != worst)
            .flatMap(verdict -> verdict.place().stream())
            .map(Place::words)
            .collect(Collectors.joining(", "));
    item(
        VerdictWords.title(worst)
            + ": fail: "
            + report.words().finding(worst)
            + (also.isEmpty() ? "" : "; also " + also));
    boolean figures = group.stream().anyMatch(verdict -> verdict.remedy().isPresent());
    group.stream()
        .filter(verdict -> !figures || verdict.remedy().isPresent())
        .map(report.words()::fix)
        .filter(fix -> !fix.isEmpty())
        .distinct()
        .forEach(fix -> item("    fix: " + fix));
  }

  /** What is left over what is needed; below zero where it is not enough. */
  private static double room(Verdict verdict) {
    boolean lengths =
        verdict.measured().orElse(Text.NONE) instanceof Length
            && verdict.needed().orElse(Text.NONE) instanceof Length;
    return lengths
        ? ((Length) verdict.measured().get()).minus((Length) verdict.needed().get()).millimetres()
        : 0;
  }

  /** Whole helixes that work, with what they change. */
  private void remedies() {
    List<HelixPlan> others = Remedies.of(plan);
    if (others.isEmpty()) {
      lines.add("");
      lines.add(
          "No other turns, radius or width make it work with all else as stated, nor with tracks"
              + " and plates fixed; fix the points above one by one.");
      return;
    }
    heading("What would work, all else as stated");
    others.forEach(this::remedy);
  }

  private void remedy(HelixPlan other) {
    List<String> changes = new ArrayList<>();
    if (Math.abs(other.climb().turns() - plan.climb().turns()) > 1e-9) {
      changes.add(
          number(other.climb().turns()) + " turns (now " + number(plan.climb().turns()) + ")");
    }
    GroundPlan ground = other.spec().ground();
    change(changes, "climb", other.climb().climb(), plan.climb().climb());
    change(
        changes, "radius to the roadbed's middle", ground.bedRadius(), spec.ground().bedRadius());
    change(changes, "roadbed as wide as", ground.width(), spec.ground().width());
    if (ground.trackSpacing().isPresent()) {
      Length before = spec.ground().trackSpacing().orElseThrow();
      change(changes, "from track to track", ground.trackSpacing().get(), before);
    }
    if (other.spec().construction() instanceof Construction.ButtWithPlate now
        && spec.construction() instanceof Construction.ButtWithPlate before) {
      change(changes, "inset of the splice plates", now.plate().inset(), before.plate().inset());
    }
    if (!other.spec().construction().title().equals(spec.construction().title())) {
      changes.add(other.spec().construction().title());
    }
    change(
        changes,
        "climb lead at the entry",
        other.spec().bottom().climbLead(),
        spec.bottom().climbLead());
    change(
        changes, "climb lead at the exit", other.spec().top().climbLead(), spec.top().climbLead());
    if (!other.spec().supports().firstAt().equals(spec.supports().firstAt())) {
      changes.add("first support placed by the plan (leave `first-at` out)");
    }
    if (other.spec().supports().perTurn() != spec.supports().perTurn()) {
      changes.add(other.spec().supports().perTurn() + " supports a turn");
    }
    item(
        String.join(", ", changes)
            + ": "
            + style.formatMade(other.climb().risePerTurn())
            + " a turn, grade "
            + other.trackGrades().get(0)
            + ", "
            + style.formatMade(other.budgets().get(0).free())
            + " free; leaves at "
            + bearing(other.line().bearing(other.climb().ringLength()))
            + marginal(other));
  }

  private static String marginal(HelixPlan other) {
    List<String> rules =
        other.verdicts().stream()
            .filter(verdict -> verdict.state() == State.MARGINAL)
            .map(VerdictWords::title)
            .toList();
    return rules.isEmpty() ? "" : "; marginal: " + String.join(", ", rules);
  }

  private void change(List<String> changes, String what, Length now, Length before) {
    if (Math.abs(now.minus(before).millimetres()) > 1e-9) {
      changes.add(what + " " + style.formatMade(now) + " (now " + style.formatMade(before) + ")");
    }
  }

  private static long count(List<Verdict> verdicts, State state) {
    return verdicts.stream().filter(verdict -> verdict.state() == state).count();
  }

  private void figures() {
    GroundPlan ground = spec.ground();
    Climb climb = plan.climb();
    heading("Helix");
    item(
        "scale "
            + spec.scale().name()
            + ", "
            + (ground.trackRadii().size() == 1 ? "one track at " : "two tracks at ")
            + ground.trackRadii().stream().map(style::format).collect(Collectors.joining(" and "))
            + " radius, roadbed "
            + style.formatMade(ground.width())
            + " wide ("
            + style.formatMade(ground.innerEdge())
            + " to "
            + style.formatMade(ground.outerEdge())
            + ")"
            + (ground.isOval() ? ", straights of " + style.formatMade(ground.straight()) : ""));
    item(
        "climbs "
            + style.formatMade(climb.climb())
            + " in "
            + number(climb.turns())
            + " turns, "
            + (ground.direction() == Direction.CLOCKWISE ? "clockwise" : "counter-clockwise")
            + ", "
            + style.formatMade(climb.risePerTurn())
            + " a turn; enters at "
            + bearing(-spec.bottom().leadIn().millimetres())
            + ", leaves at "
            + bearing(climb.ringLength() + spec.top().leadIn().millimetres()));
    for (int i = 0; i < plan.trackGrades().size(); i++) {
      item(
          "track at "
              + style.formatMade(ground.trackRadii().get(i))
              + ": grade "
              + plan.trackGrades().get(i)
              + ", like about "
              + plan.equivalentGrades().get(i)
              + " on the straight (estimate); "
              + far(plan.trackLengths().get(i))
              + " of track on the ring");
    }
    Length outer = ground.outerEdge().plus(spec.beyondEdges()).times(2);
    item(
        "takes up "
            + (ground.isOval() ? style.formatMade(outer.plus(ground.straight())) + " by " : "")
            + style.formatMade(outer)
            + (ground.isOval() ? "" : " across")
            + " without the leads; "
            + style.formatMade(ground.innerEdge().minus(spec.beyondEdges()).times(2))
            + " clear inside");
    weights();
  }

  private void weights() {
    double base =
        report
            .order()
            .base()
            .map(frame -> plan.weightOf(frame.demand().piece()) * frame.demand().count())
            .orElse(0.0);
    double risers = plan.riserWeight();
    boolean rods = spec.supports().riser() instanceof Riser.ThreadedRods;
    item(
        "weighs about "
            + weight(plan.woodWeight() + base + risers)
            + " without track: "
            + weight(plan.woodWeight())
            + " of pieces from the sheets"
            + (risers > 0 ? ", " + weight(risers) + (rods ? " of rods" : " of riser blocks") : "")
            + (base > 0 ? ", " + weight(base) + " of base" : ""));
  }

  private String weight(double kilograms) {
    return HelixLists.weight(kilograms, style);
  }

  /** A length too long for a ruler: feet, or metres. */
  private String far(Length length) {
    return far(length, style);
  }

  /** A long way, in feet or metres. */
  static String far(Length length, LengthStyle style) {
    LengthUnit unit = style.unit().isImperial() ? LengthUnit.FOOT : LengthUnit.METRE;
    return rounded(length.in(unit), 1) + " " + unit.symbol();
  }

  private void verdicts() {
    heading("Does it work?");
    for (Verdict verdict : report.verdicts()) {
      lines.add(
          "  %-8s  %s: %s"
              .formatted(
                  verdict.state().word(),
                  VerdictWords.title(verdict),
                  report.words().finding(verdict)));
      String fix = report.words().fix(verdict);
      if (!fix.isEmpty()) {
        lines.add("            fix: " + fix);
      }
    }
  }

  private void budgets() {
    heading("Height from rail top to rail top");
    // Decimals, so that the sum can be checked by hand.
    LengthStyle decimals = new LengthStyle(style.unit(), 0);
    for (HeightBudget budget : plan.budgets()) {
      item(
          decimals.format(budget.risePerTurn())
              + budget.items().stream()
                  .filter(item -> item.height().millimetres() > 0)
                  .map(item -> " - " + decimals.number(item.height()) + " " + item.name())
                  .collect(Collectors.joining())
              + " = "
              + decimals.format(budget.free())
              + " free");
    }
  }

  private void ends() {
    heading("Entry and exit");
    for (End end : End.values()) {
      EndClearance clearance = plan.clearanceAt(end);
      String place = end == End.BOTTOM ? "entry" : "exit";
      item(
          clearance.applies()
              ? place
                  + ": the straight lies "
                  + (end == End.BOTTOM ? "under" : "over")
                  + " the ring for "
                  + style.formatMade(clearance.overlapLength())
                  + "; at least "
                  + style.formatMade(clearance.free(Length.ZERO))
                  + " free there, nothing hanging below"
              : place + ": no turn lies over another here");
    }
  }

  private void joints() {
    heading("Joints: " + spec.construction().title());
    if (plan.joints().all().isEmpty()) {
      item("none");
      return;
    }
    int turns = (int) Math.ceil(plan.climb().turns() - 1e-9);
    for (int turn = 1; turn <= turns; turn++) {
      List<Joint> here = plan.joints().ofTurn(turn);
      if (!here.isEmpty()) {
        item(
            "turn "
                + turn
                + ": "
                + here.stream()
                    .map(joint -> joint.name() + " at " + bearing(joint.at()))
                    .collect(Collectors.joining(", ")));
      }
    }
    if (spec.construction() instanceof Construction.HalfLap halved) {
      item(
          "each lap is "
              + style.formatGiven(halved.lap())
              + " long; cut half the thickness away above at a piece's upper end and below at its"
              + " lower one, so that each piece is laid on the one before");
    }
  }

  private void pieces() {
    heading("Pieces of roadbed (numbers as on the cut layouts)");
    for (PieceKind kind : plan.roadbed().kinds()) {
      lines.add(
          "  %4s x %s  %s%s, %s each: %s"
              .formatted(
                  kind.count(),
                  kind.id(),
                  kind.name(),
                  kind.holes().isEmpty() ? "" : ", " + kind.holes().size() + " holes",
                  weight(plan.weightOf(kind.demand().piece())),
                  String.join(" ", plan.roadbed().numbersOf(kind))));
    }
  }

  private void supports() {
    heading("Supports, heights of the plywood's underside above the base");
    heights("lead of the entry", plan.supports().of(Part.ENTRY));
    heights("turn 1", plan.supports().ofTurn(1));
    heights("lead of the exit", plan.supports().of(Part.EXIT));
    item("helix.txt and supports.csv of a written result have every turn at every station");
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks wood) {
      BlockPlan blocks = new BlockPlan(wood, plan.supports());
      BlockPlan.Block most =
          blocks.blocks().stream().max(Comparator.comparing(BlockPlan.Block::count)).orElseThrow();
      item(
          blocks.count()
              + " riser blocks in "
              + blocks.blocks().size()
              + " heights; "
              + most.count()
              + " of them are alike, "
              + style.formatMade(most.height())
              + HelixLists.exactly(most.height(), style)
              + (most.onBase() ? " on the base" : " between turns")
              + String.format(
                  Locale.ROOT,
                  "; their ends are cut to the slope, %.1f°",
                  Math.toDegrees(Math.atan(most.slope()))));
    } else if (riser instanceof Riser.ThreadedRods rods) {
      RodPlan rodPlan = new RodPlan(spec, rods, plan.supports());
      TreeSet<Length> lengths = new TreeSet<>();
      rodPlan.rods().forEach(each -> lengths.add(each.length()));
      item(
          rodPlan.count()
              + " rods "
              + rods.thread().name()
              + ", "
              + style.formatMade(lengths.first())
              + " to "
              + style.formatMade(lengths.last())
              + " long, "
              + rodPlan.nuts()
              + " nuts and "
              + rodPlan.washers()
              + " washers");
    }
  }

  private void heights(String place, List<SupportRow> rows) {
    if (!rows.isEmpty()) {
      item(
          place
              + ": "
              + rows.stream()
                  .map(row -> row.station().name() + " " + style.formatMade(row.underside()))
                  .collect(Collectors.joining(", ")));
    }
  }

  private void shopping() {
    String currency = report.job().currency();
    heading("Shopping list");
    TextTable table = new TextTable().wordsLast();
    Money total = plan.shopping().knownPrices();
    if (report.sheets().isPresent()) {
      Plan sheets = report.sheets().get();
      sheets.purchase().lines().forEach(line -> table.row(sheetRow(line, currency)));
      total = total.plus(sheets.purchase().sheetCost());
    }
    long unpriced = 0;
    for (ShoppingItem item : plan.shopping().items()) {
      unpriced += item.price().isEmpty() ? 1 : 0;
      table.row(
          List.of(
              "  " + item.name(),
              item.quantity() + (item.unit().equals("pieces") ? "" : " " + item.unit()),
              item.price().map(price -> price.format(currency)).orElse("no price stated"),
              item.note()));
    }
    lines.addAll(table.lines());
    item(
        "total of stated prices "
            + total.format(currency)
            + (report.sheets().isPresent() ? ", sheets included" : ", without the sheets")
            + (unpriced > 0 ? "; " + unpriced + " without a price" : ""));
  }

  private List<String> sheetRow(PurchaseLine line, String currency) {
    SheetStock sheet = line.product().stock();
    double weight = new Weight(spec.woodDensity()).ofWood(sheet.area(), sheet.thickness());
    return List.of(
        "  " + sheet.name(),
        line.bought() + (line.bought() == 1 ? " sheet" : " sheets"),
        line.cost().format(currency),
        weight(weight)
            + " each"
            + (report.rough() ? "; planned in haste, `plan` may do better" : ""));
  }

  private void assumed() {
    if (report.order().assumed().isEmpty()) {
      return;
    }
    heading("Assumed, because the job does not say; check these");
    for (Assumption assumption : report.order().assumed()) {
      item(assumption.field() + ": " + assumption.value() + " (" + assumption.reason() + ")");
    }
  }

  private void heading(String text) {
    lines.add("");
    lines.add(text);
  }

  private void item(String text) {
    lines.add("  " + text);
  }

  private String bearing(double at) {
    return bearing(plan.line().bearing(at));
  }

  /** To a tenth of a degree. */
  static String bearing(Angle angle) {
    return rounded(angle.degrees() > 359.95 ? 0 : angle.degrees(), 1) + "°";
  }

  private static String number(double value) {
    return rounded(value, 3);
  }

  private static String rounded(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
