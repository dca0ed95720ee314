package curvestock.answer;

import static curvestock.answer.Field.count;
import static curvestock.answer.Field.given;
import static curvestock.answer.Field.length;
import static curvestock.answer.Field.text;
import static curvestock.answer.Field.turns;

import curvestock.geometry.Box;
import curvestock.helix.Assumption;
import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.BedPiece;
import curvestock.helix.build.PieceKind;
import curvestock.helix.clearance.HeightBudget;
import curvestock.helix.spec.Grade;
import curvestock.helix.spec.HelixSpec;
import curvestock.helix.verdict.Place;
import curvestock.helix.verdict.Verdict;
import curvestock.helix.verdict.VerdictWords;
import curvestock.units.Length;
import curvestock.units.Mass;
import curvestock.units.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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
    VerdictWords words = new VerdictWords(figures.style());
    return Table.of(
        "verdicts",
        "Does the helix work?",
        verdicts,
        text("state", "Result", verdict -> verdict.state().word()),
        text("code", "Code", verdict -> verdict.rule().key()),
        text("place", "Place", verdict -> verdict.place().map(Place::key).orElse("")),
        text("title", "What is checked", VerdictWords::title),
        text("finding", "Finding", words::finding),
        text("fix", "Fix", words::fix));
  }

  Table figures() {
    return Table.of(
        "figures",
        "The helix at a glance",
        List.of(plan),
        text("scale", "Scale", p -> p.spec().scale().name()),
        Field.of("grade", "Grade", Measure.SHARE, p -> new Share(p.climb().grade().ratio())),
        turns("turns", "Turns", p -> p.climb().turns()),
        length("climb", "Climb", p -> p.climb().climb()),
        length("risePerTurn", "Rise per turn", p -> p.climb().risePerTurn()),
        length("runPerTurn", "Run per turn", p -> p.climb().runPerTurn()),
        length("freeHeight", "Clearance", p -> p.budgets().get(0).free()),
        Field.of(
            "tallestTrain", "Tallest train", Measure.OFFCUT, p -> Field.orNone(p.tallestTrain())),
        length(
            "across",
            "Diameter",
            p -> p.spec().ground().outerEdge().plus(p.beyondEdge(true)).times(2)),
        length(
            "opening",
            "Inside",
            p -> p.spec().ground().innerEdge().minus(p.beyondEdge(false)).times(2)),
        length("roomLength", "Length with leads", p -> roomLength()),
        length("roomWidth", "Width with leads", p -> roomWidth()),
        length("roomHeight", "Height to the rail top", HelixTables::roomHeight),
        Field.of("track", "Track to lay, leads included", Measure.RUN, HelixTables::track),
        Field.of(
            "weight",
            "Weight",
            Measure.WEIGHT,
            p -> wood().plus(base()).plus(risers()).plus(bought())));
  }

  /**
   * What the roadbed and its base cover, both leads and what stands beyond its edges included. Ears
   * are part of the pieces; edge strips lie along the ring, not along the leads.
   */
  private Box room() {
    Map<String, PieceKind> kinds =
        plan.roadbed().kinds().stream().collect(Collectors.toMap(PieceKind::id, kind -> kind));
    List<BedPiece> pieces = plan.roadbed().pieces();
    double ears = plan.spec().earReach().millimetres();
    double everywhere = plan.spec().beyondEdges().millimetres() - ears;
    double onRing = plan.beyondEdge(true).millimetres() - ears;
    Box bed =
        IntStream.range(0, pieces.size())
            .mapToObj(
                i -> {
                  boolean end = i == 0 || i == pieces.size() - 1;
                  Box box = kinds.get(pieces.get(i).kindId()).at(pieces.get(i).pose()).box();
                  return grown(box, end ? everywhere : onRing);
                })
            .reduce(Box::union)
            .orElseThrow();
    return plan.spec().ground().isOval() ? bed : bed.union(box(order.across()));
  }

  private static Box box(Length across) {
    double half = across.millimetres() / 2;
    return new Box(-half, -half, half, half);
  }

  private static Box grown(Box box, double by) {
    return new Box(box.minX() - by, box.minY() - by, box.maxX() + by, box.maxY() + by);
  }

  private Length roomLength() {
    Box room = room();
    return Length.ofMillimetres(Math.max(room.width(), room.height()));
  }

  private Length roomWidth() {
    Box room = room();
    return Length.ofMillimetres(Math.min(room.width(), room.height()));
  }

  /** Where the climb ends, maybe beyond the last support. */
  private static Length roomHeight(HelixPlan plan) {
    HelixSpec spec = plan.spec();
    return spec.supports().footHeight().plus(plan.climb().climb()).plus(spec.railAboveUnderside());
  }

  private static Length track(HelixPlan plan) {
    HelixSpec spec = plan.spec();
    Length leads = spec.bottom().leadIn().plus(spec.top().leadIn());
    return plan.trackLengths().stream().map(leads::plus).reduce(Length.ZERO, Length::plus);
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

  private Mass bought() {
    return new Mass(plan.boughtWoodWeight());
  }

  Table tracks() {
    return Table.of(
        "tracks",
        "Tracks",
        IntStream.range(0, plan.trackGrades().size()).boxed().toList(),
        length("radius", "Radius", i -> plan.spec().ground().trackRadii().get(i)),
        grade("gradePercent", "Grade", plan.trackGrades()),
        grade("withCurveDragPercent", "Pulls like", plan.equivalentGrades()),
        Field.of("length", "On the ring", Measure.RUN, i -> plan.trackLengths().get(i)));
  }

  private static Field<Integer> grade(String key, String title, List<Grade> grades) {
    return Field.of(key, title, Measure.SHARE, i -> new Share(grades.get(i).ratio()));
  }

  /** An item of a budget. */
  private record Taken(int budget, String item, Length height) {}

  Table budgets() {
    List<Taken> rows = new ArrayList<>();
    int number = 0;
    for (HeightBudget budget : plan.budgets()) {
      int of = ++number;
      rows.add(new Taken(of, "rise per turn", budget.risePerTurn()));
      budget.items().forEach(item -> rows.add(new Taken(of, item.name(), item.height())));
      rows.add(new Taken(of, "clearance", budget.free()));
    }
    return Table.of(
        "heightBudgets",
        "Height from rail top to rail top",
        rows,
        count("budget", "Budget", Taken::budget),
        text("item", "Item", Taken::item),
        given("height", "Height", Taken::height));
  }

  Table kinds() {
    return Table.of(
        "kinds",
        "Pieces of roadbed (numbers as on the cut layouts)",
        plan.roadbed().kinds(),
        text("kind", "Kind", PieceKind::id),
        count("count", "Count", PieceKind::count),
        text("name", "What it is", PieceKind::name),
        count("holes", "Holes", kind -> kind.holes().size()),
        Field.of("weight", "Weight each", Measure.WEIGHT, this::weight),
        text("numbers", "Numbers", kind -> String.join(" ", plan.roadbed().numbersOf(kind))));
  }

  private Mass weight(PieceKind kind) {
    return new Mass(plan.weightOf(kind.demand().piece()));
  }

  Table assumed() {
    return Table.of(
        "assumed",
        "Assumed, because your job does not say: check these",
        order.assumed(),
        text("what", "What", each -> AssumedWords.of(each.field())),
        text("value", "Assumed", Assumption::value),
        text("reason", "Why", Assumption::reason),
        text("field", "Key in the job file", Assumption::field));
  }

  /** {@code 4 lb of riser blocks}, and what else is not cut from the sheets. */
  static List<String> weights(HelixOrder order, Figures figures, String risersAre) {
    HelixTables tables = new HelixTables(order, figures);
    List<String> parts = new ArrayList<>();
    add(parts, figures, tables.risers(), " of " + risersAre);
    add(parts, figures, tables.bought(), " of other wood on the shopping list");
    add(parts, figures, tables.base(), " of base");
    return parts;
  }

  private static void add(List<String> parts, Figures figures, Mass mass, String what) {
    if (mass.kilograms() > 0) {
      parts.add(figures.weight(mass) + what);
    }
  }
}
