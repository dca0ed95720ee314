package curvestock.report;

import curvestock.helix.Assumption;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BlockPlan;
import curvestock.helix.build.Joint;
import curvestock.helix.build.PieceKind;
import curvestock.helix.build.RodPlan;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.SupportRow;
import curvestock.helix.clearance.EndClearance;
import curvestock.helix.clearance.EndClearance.End;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.course.Climb;
import curvestock.helix.spec.Direction;
import curvestock.helix.spec.GroundPlan;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.spec.Riser;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.Verdict.Result;
import curvestock.plan.Plan;
import curvestock.units.Length;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

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

  public static List<String> of(HelixReport report) {
    HelixSummary summary = new HelixSummary(report);
    summary.write();
    return List.copyOf(summary.lines);
  }

  /** For the summary of a cutting plan: what fails, in full, and what is tight, by name. */
  public static List<String> warnings(HelixReport report) {
    List<String> warnings = new ArrayList<>();
    List<String> tight = new ArrayList<>();
    for (Verdict verdict : report.verdicts()) {
      if (verdict.result() == Result.FAILS) {
        warnings.add(
            "This helix does not work: "
                + verdict.rule()
                + ": "
                + verdict.finding()
                + (verdict.mend().isEmpty() ? "" : "; to mend it, " + verdict.mend()));
      } else if (verdict.result() == Result.TIGHT) {
        tight.add(verdict.rule());
      }
    }
    if (!tight.isEmpty()) {
      warnings.add("Tight: " + String.join(", ", tight) + "; `curvestock helix` says more.");
    }
    return warnings;
  }

  private void write() {
    lines.add(report.job().title() + (report.job().invented() ? "  [invented data]" : ""));
    lines.add("");
    answer();
    figures();
    verdicts();
    budgets();
    ends();
    joints();
    pieces();
    supports();
    shopping();
    assumed();
    heading("Cautions");
    CAUTIONS.forEach(this::item);
  }

  private void answer() {
    List<Verdict> verdicts = report.verdicts();
    long fails = count(verdicts, Result.FAILS);
    long tight = count(verdicts, Result.TIGHT);
    String all = verdicts.size() + " rules";
    lines.add(
        fails > 0
            ? "This helix does not work: "
                + fails
                + " of "
                + all
                + (fails == 1 ? " fails." : " fail.")
            : tight > 0
                ? "This helix works, but "
                    + tight
                    + " of "
                    + all
                    + (tight == 1 ? " is" : " are")
                    + " tight."
                : "This helix works: all of " + all + " are met.");
    verdicts.stream()
        .filter(verdict -> verdict.result() == Result.FAILS)
        .forEach(verdict -> item(verdict.line()));
  }

  private static long count(List<Verdict> verdicts, Result result) {
    return verdicts.stream().filter(verdict -> verdict.result() == result).count();
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
            + style.format(ground.width())
            + " wide ("
            + style.format(ground.innerEdge())
            + " to "
            + style.format(ground.outerEdge())
            + ")"
            + (ground.isOval() ? ", straights of " + style.format(ground.straight()) : ""));
    item(
        "climbs "
            + style.format(climb.climb())
            + " in "
            + number(climb.turns())
            + " turns, "
            + (ground.direction() == Direction.CLOCKWISE ? "clockwise" : "counter-clockwise")
            + ", "
            + style.format(climb.risePerTurn())
            + " a turn; enters at "
            + bearing(-spec.bottom().leadIn().millimetres())
            + ", leaves at "
            + bearing(climb.ringLength() + spec.top().leadIn().millimetres()));
    for (int i = 0; i < plan.trackGrades().size(); i++) {
      item(
          "track at "
              + style.format(ground.trackRadii().get(i))
              + ": grade "
              + plan.trackGrades().get(i)
              + ", like about "
              + plan.equivalentGrades().get(i)
              + " on the straight (estimate); "
              + style.format(plan.trackLengths().get(i))
              + " of track");
    }
    item(
        String.format(Locale.ROOT, "wood from the sheets weighs about %.1f kg", plan.woodWeight()));
  }

  private void verdicts() {
    heading("Does it work?");
    for (Verdict verdict : report.verdicts()) {
      lines.add(
          "  %-5s  %s: %s".formatted(verdict.result().word(), verdict.rule(), verdict.finding()));
      if (!verdict.mend().isEmpty()) {
        lines.add("         mend: " + verdict.mend());
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
                  + style.format(clearance.overlapLength())
                  + "; at least "
                  + style.format(clearance.free(Length.ZERO))
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
  }

  private void pieces() {
    heading("Pieces of roadbed (numbers as on the cut layouts)");
    for (PieceKind kind : plan.roadbed().kinds()) {
      lines.add(
          "  %4d x %s  %s%s: %s"
              .formatted(
                  kind.count(),
                  kind.id(),
                  kind.name(),
                  kind.holes().isEmpty() ? "" : ", " + kind.holes().size() + " holes",
                  String.join(" ", plan.roadbed().numbersOf(kind))));
    }
  }

  private void supports() {
    List<SupportRow> first = plan.supports().ofTurn(1);
    heading("Supports, heights of the plywood's underside above the base");
    item(
        "turn 1: "
            + first.stream()
                .map(row -> row.station().name() + " " + style.format(row.underside()))
                .collect(Collectors.joining(", ")));
    item("supports.csv has every turn at every station");
    Riser riser = spec.supports().riser();
    if (riser instanceof Riser.WoodBlocks wood) {
      BlockPlan blocks = new BlockPlan(wood, plan.supports());
      item(blocks.count() + " riser blocks in " + blocks.blocks().size() + " heights:");
      for (BlockPlan.Block block : blocks.blocks()) {
        lines.add(
            "    %4d of %s%s, one side %s longer"
                .formatted(
                    block.count(),
                    style.format(block.height()),
                    block.onBase() ? " on the base" : " between turns",
                    style.format(block.slopeCut())));
      }
    } else if (riser instanceof Riser.ThreadedRods rods) {
      RodPlan rodPlan = new RodPlan(spec, rods, plan.supports());
      TreeSet<Length> lengths = new TreeSet<>();
      rodPlan.rods().forEach(each -> lengths.add(each.length()));
      item(
          rodPlan.count()
              + " rods "
              + rods.thread().name()
              + ", "
              + style.format(lengths.first())
              + " to "
              + style.format(lengths.last())
              + " long, "
              + rodPlan.nuts()
              + " nuts and "
              + rodPlan.washers()
              + " washers");
    }
  }

  private void shopping() {
    String currency = report.job().currency();
    heading("Shopping list");
    Money total = plan.shopping().knownPrices();
    if (report.sheets().isPresent()) {
      Plan sheets = report.sheets().get();
      sheets
          .purchase()
          .lines()
          .forEach(
              line ->
                  item(
                      line.bought()
                          + " x "
                          + line.product().stock().name()
                          + "  "
                          + line.cost().format(currency)
                          + (report.rough() ? "  (planned in haste; `plan` may do better)" : "")));
      total = total.plus(sheets.purchase().sheetCost());
    }
    long unpriced = 0;
    for (ShoppingItem item : plan.shopping().items()) {
      unpriced += item.price().isEmpty() ? 1 : 0;
      item(
          item.quantity()
              + (item.unit().equals("pieces") ? " x " : " " + item.unit() + " of ")
              + item.name()
              + "  "
              + item.price().map(price -> price.format(currency)).orElse("no price stated")
              + "  ("
              + item.note()
              + ")");
    }
    item(
        "total of stated prices "
            + total.format(currency)
            + (report.sheets().isPresent() ? ", sheets included" : ", without the sheets")
            + (unpriced > 0 ? "; " + unpriced + " without a price" : ""));
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

  /** To a tenth of a degree. */
  private String bearing(double at) {
    double degrees = plan.line().bearing(at).degrees();
    return rounded(degrees > 359.95 ? 0 : degrees, 1) + "°";
  }

  private static String number(double value) {
    return rounded(value, 3);
  }

  private static String rounded(double value, int decimals) {
    BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
