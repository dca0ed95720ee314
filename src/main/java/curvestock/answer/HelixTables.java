package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.PieceKind;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.verdict.Verdict;
import curvestock.units.Angle;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Mass;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.List;

/** The tables that tell whether a helix works and what it is like. */
final class HelixTables {

  private final HelixOrder order;
  private final HelixPlan plan;
  private final Figures figures;

  HelixTables(HelixOrder order, Figures figures) {
    this.order = order;
    this.plan = order.plan();
    this.figures = figures;
  }

  Table checks(List<Verdict> verdicts) {
    Table.Rows rows =
        new Table.Rows("verdicts", "Does the helix work?")
            .text("result", "Check")
            .text("rule", "Rule")
            .text("finding", "Finding")
            .text("fix", "Fix");
    for (Verdict verdict : verdicts) {
      rows.add(
          new Text(verdict.result().word()),
          new Text(verdict.rule()),
          new Text(verdict.finding()),
          new Text(verdict.mend()));
    }
    return rows.done();
  }

  Table figures() {
    Table.Rows rows =
        new Table.Rows("figures", "The helix at a glance")
            .text("scale", "Scale")
            .column("grade", "Grade", Measure.SHARE)
            .column("turns", "Turns", Measure.TURNS)
            .length("climb", "Climb")
            .length("risePerTurn", "Rise per turn")
            .column("runPerTurn", "Run per turn", Measure.LENGTH)
            .length("freeHeight", "Clearance")
            .length("across", "Diameter")
            .length("opening", "Opening inside")
            .column("track", "Track to lay", Measure.RUN)
            .column("weight", "Weight without track", Measure.WEIGHT);
    Length beyond = plan.spec().beyondEdges();
    rows.add(
        new Text(plan.spec().scale().name()),
        new Share(plan.climb().grade().ratio()),
        Angle.ofDegrees(plan.climb().turns() * Angle.FULL_TURN.degrees()),
        plan.climb().climb(),
        plan.climb().risePerTurn(),
        plan.climb().runPerTurn(),
        plan.budgets().get(0).free(),
        plan.spec().ground().outerEdge().plus(beyond).times(2),
        plan.spec().ground().innerEdge().minus(beyond).times(2),
        plan.trackLengths().stream().reduce(Length.ZERO, Length::plus),
        wood().plus(base()).plus(risers()));
    return rows.done();
  }

  private Mass wood() {
    return new Mass(plan.woodWeight());
  }

  private Mass base() {
    return order
        .base()
        .map(frame -> plan.weightOf(frame.demand().piece()) * frame.demand().count())
        .map(Mass::new)
        .orElse(Mass.ZERO);
  }

  private Mass risers() {
    return new Mass(plan.riserWeight());
  }

  Table tracks() {
    Table.Rows rows =
        new Table.Rows("tracks", "Tracks")
            .length("radius", "Radius")
            .column("gradePercent", "Grade", Measure.SHARE)
            .column("withCurveDragPercent", "Pulls like", Measure.SHARE)
            .column("length", "On the ring", Measure.RUN);
    for (int i = 0; i < plan.trackGrades().size(); i++) {
      rows.add(
          plan.spec().ground().trackRadii().get(i),
          new Share(plan.trackGrades().get(i).ratio()),
          new Share(plan.equivalentGrades().get(i).ratio()),
          plan.trackLengths().get(i));
    }
    return rows.done();
  }

  Table budgets() {
    Table.Rows rows =
        new Table.Rows("heightBudgets", "Height from rail top to rail top")
            .count("budget", "Budget")
            .text("item", "Item")
            .column("height", "Height", Measure.GIVEN_LENGTH);
    int number = 0;
    for (HeightBudget budget : plan.budgets()) {
      number++;
      Count of = new Count(number);
      rows.add(of, new Text("rise per turn"), budget.risePerTurn());
      budget.items().forEach(item -> rows.add(of, new Text(item.name()), item.height()));
      rows.add(of, new Text("free"), budget.free());
    }
    return rows.done();
  }

  Table kinds() {
    Table.Rows rows =
        new Table.Rows("kinds", "Pieces of roadbed (numbers as on the cut layouts)")
            .text("kind", "Kind")
            .count("count", "Count")
            .text("name", "What it is")
            .count("holes", "Holes")
            .column("weight", "Each", Measure.WEIGHT)
            .text("numbers", "Numbers");
    for (PieceKind kind : plan.roadbed().kinds()) {
      rows.add(
          new Text(kind.id()),
          new Count(kind.count()),
          new Text(kind.name()),
          new Count(kind.holes().size()),
          new Mass(plan.weightOf(kind.demand().piece())),
          new Text(String.join(" ", plan.roadbed().numbersOf(kind))));
    }
    return rows.done();
  }

  Table assumed() {
    Table.Rows rows =
        new Table.Rows("assumed", "Assumed, since the job does not say; check these")
            .text("field", "Field")
            .text("value", "Taken as")
            .text("reason", "Why");
    order
        .assumed()
        .forEach(
            each ->
                rows.add(new Text(each.field()), new Text(each.value()), new Text(each.reason())));
    return rows.done();
  }

  /** {@code 12.3 lb of pieces from the sheets, 4 lb of blocks}. */
  static String weights(HelixOrder order, Figures figures, String risersAre) {
    HelixTables tables = new HelixTables(order, figures);
    return figures.weight(tables.wood())
        + " of pieces from the sheets"
        + (tables.risers().kilograms() > 0
            ? ", " + figures.weight(tables.risers()) + " of " + risersAre
            : "")
        + (tables.base().kilograms() > 0 ? ", " + figures.weight(tables.base()) + " of base" : "");
  }
}
