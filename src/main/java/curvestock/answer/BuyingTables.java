package curvestock.answer;

import static curvestock.answer.Field.count;
import static curvestock.answer.Field.given;
import static curvestock.answer.Field.money;
import static curvestock.answer.Field.text;

import curvestock.compare.EnclosingRectangle;
import curvestock.helix.build.PieceKind;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Piece;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.plan.Capacity;
import curvestock.plan.Obstacle;
import curvestock.plan.Plan;
import curvestock.plan.Remnant;
import curvestock.purchase.PurchaseLine;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The tables of a plan. */
final class BuyingTables {

  private final Plan plan;
  private final Job job;
  private final Figures figures;

  BuyingTables(Plan plan) {
    this.plan = plan;
    this.job = plan.job();
    this.figures = Heading.of(job).figures();
  }

  Table purchase() {
    return Table.of(
        "purchase",
        "Sheets to buy",
        plan.purchase().lines(),
        text("sheet", "Sheet", line -> line.product().stock().name()),
        given("length", "Length", line -> line.product().stock().length()),
        given("width", "Width", line -> line.product().stock().width()),
        given("thickness", "Thickness", line -> line.product().stock().nominalThickness()),
        given("measured", "Measures", line -> line.product().stock().thickness()),
        count("bought", "Buy", PurchaseLine::bought),
        count("used", "Use", PurchaseLine::used),
        Field.of("each", "Each", Measure.MONEY, line -> orFree(line.each(), Text.NONE)),
        count("storeCuts", "Store cuts", PurchaseLine::cuts),
        money("storeCutting", "Store cutting", PurchaseLine::cutting),
        Field.of("cost", "Cost", Measure.MONEY, line -> orFree(line.cost(), new Text("on hand"))));
  }

  private static Quantity orFree(Money money, Text free) {
    return money.equals(Money.ZERO) ? free : money;
  }

  Table kinds() {
    Map<String, Integer> wanted =
        job.wanted().stream().collect(Collectors.toMap(d -> d.piece().id(), Demand::count));
    return Table.of(
        "pieces",
        "Pieces to cut",
        job.demands(),
        text("kind", "Kind", demand -> demand.piece().id()),
        count("count", "Count", Demand::count),
        count("spares", "Spares", demand -> demand.count() - wanted.get(demand.piece().id())),
        text("name", "What it is", demand -> demand.piece().name()),
        text("size", "Size", demand -> size(demand.piece())),
        Field.of(
            "thickness",
            "Thickness",
            Measure.GIVEN_LENGTH,
            demand -> Field.orNone(demand.piece().thickness())),
        text("numbers", "Numbers", demand -> numbers(demand.piece().id())),
        text("onSheets", "On sheets", this::onSheets));
  }

  private String size(Piece piece) {
    Shape shape = piece.shape();
    Shape blank = shape.blank();
    int holes = shape.outline().holes().size() - blank.outline().holes().size();
    String drilled = holes > 0 ? ", " + Figures.count(holes, "hole") : "";
    if (blank instanceof AnnularSector sector) {
      return "radius %s to %s, %s%s"
          .formatted(
              figures.length(sector.innerRadius()),
              figures.length(sector.outerRadius()),
              sector.sweep(),
              drilled);
    }
    if (blank instanceof Strip strip) {
      return figures.length(strip.length()) + " x " + figures.length(strip.width()) + drilled;
    }
    EnclosingRectangle around = EnclosingRectangle.of(piece);
    return "fits in %s%s".formatted(figures.sides(around.length(), around.width()), drilled);
  }

  /** The numbers of the assembly schedule. */
  private String numbers(String id) {
    return job.structure()
        .map(order -> order.plan().roadbed())
        .flatMap(
            bed ->
                bed.kinds().stream()
                    .filter(kind -> kind.id().equals(id))
                    .findFirst()
                    .map((PieceKind kind) -> String.join(" ", bed.numbersOf(kind))))
        .orElse("");
  }

  private String onSheets(Demand demand) {
    List<String> on = new ArrayList<>();
    for (int i = 0; i < plan.layouts().size(); i++) {
      int count = plan.layouts().get(i).count(demand.piece());
      if (count > 0) {
        on.add(count + " on sheet " + (i + 1));
      }
    }
    return String.join(", ", on);
  }

  Table perSheet() {
    return Table.of(
        "piecesPerSheet",
        "Pieces per sheet",
        plan.capacities(),
        text("kind", "Kind", capacity -> capacity.piece().id()),
        text("sheet", "Sheet", capacity -> capacity.sheet().name()),
        count("found", "Per sheet", this::found),
        count("soughtUpTo", "Looked for", Capacity::sought),
        count("limit", "Limit", capacity -> capacity.bound().count()),
        text("standing", "Status", this::standing),
        text("limitProof", "Proof of the limit", capacity -> capacity.bound().proof()),
        text("how", "How", Capacity::how));
  }

  /** Most that a layout was found for: the search for one kind alone, or a sheet of the plan. */
  private int found(Capacity capacity) {
    return plan.layouts().stream()
        .filter(layout -> layout.sheet().name().equals(capacity.sheet().name()))
        .mapToInt(layout -> layout.count(capacity.piece()))
        .reduce(capacity.found(), Math::max);
  }

  private String standing(Capacity capacity) {
    if (found(capacity) == capacity.bound().count()) {
      return "proven best";
    }
    if (capacity.isEnough()) {
      return "all you need";
    }
    return capacity.searched() ? "best found" : "best so far";
  }

  /** What any cheaper purchase would have to do, and how far what was found is from it. */
  Table obstacles() {
    return Table.of(
        "obstacles",
        "What a cheaper purchase would need",
        plan.obstacles(),
        text("kind", "Kind", obstacle -> obstacle.piece().id()),
        text("sheet", "Sheet", obstacle -> obstacle.sheet().name()),
        count("needed", "Needed", Obstacle::needed),
        count("together", "With others", Obstacle::together),
        count("found", "Found", Obstacle::found),
        count("plausible", "At best", Obstacle::plausible),
        text("searched", "Looked for", obstacle -> obstacle.searched() ? "yes" : "no"));
  }

  Table cuts() {
    List<List<String>> labels = plan.labels();
    List<Layout> layouts = plan.layouts();
    return Table.of(
        "cuts",
        "Layouts",
        IntStream.range(0, layouts.size()).boxed().toList(),
        count("number", "Sheet", i -> i + 1),
        text("sheet", "Cut from", i -> layouts.get(i).sheet().name()),
        count("pieces", "Pieces", i -> layouts.get(i).placements().size()),
        text("kinds", "Holds", i -> content(layouts.get(i))),
        Field.of("used", "Used", Measure.SHARE, i -> new Share(layouts.get(i).areaYield())),
        offcut("offcutLength", "Offcut length", layouts, Math::max),
        offcut("offcutWidth", "Offcut width", layouts, Math::min),
        text("numbers", "Numbers", i -> String.join(", ", labels.get(i))));
  }

  private static Field<Integer> offcut(
      String key, String title, List<Layout> layouts, DoubleBinaryOperator side) {
    return Field.offcut(key, title, i -> Remnant.of(layouts.get(i)), side);
  }

  private String content(Layout layout) {
    return job.demands().stream()
        .filter(demand -> layout.count(demand.piece()) > 0)
        .map(demand -> layout.count(demand.piece()) + " x " + demand.piece().id())
        .collect(Collectors.joining(", "));
  }

  Table remnants() {
    return Table.of(
        "remnants",
        "Offcuts to keep for the next job (also in remnants.yaml)",
        plan.stockAfter(),
        count("count", "Count", sheet -> sheet.available().orElse(1)),
        Field.of("length", "Length", Measure.OFFCUT, SheetStock::length),
        Field.of("width", "Width", Measure.OFFCUT, SheetStock::width),
        text("name", "What it is", SheetStock::name));
  }
}
