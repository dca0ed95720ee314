package curvestock.answer;

import curvestock.geometry.Box;
import curvestock.helix.build.PieceKind;
import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.AnnularSector;
import curvestock.piece.Demand;
import curvestock.piece.Shape;
import curvestock.piece.Strip;
import curvestock.plan.Capacity;
import curvestock.plan.Plan;
import curvestock.plan.Remnant;
import curvestock.purchase.PurchaseLine;
import curvestock.sheet.SheetStock;
import curvestock.units.Count;
import curvestock.units.Length;
import curvestock.units.Money;
import curvestock.units.Quantity;
import curvestock.units.Share;
import curvestock.units.Text;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

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
    Table.Rows rows =
        new Table.Rows("purchase", "Sheets to buy")
            .text("sheet", "Sheet")
            .column("length", "Length", Measure.GIVEN_LENGTH)
            .column("width", "Width", Measure.GIVEN_LENGTH)
            .column("thickness", "Thickness", Measure.GIVEN_LENGTH)
            .count("bought", "Buy")
            .count("used", "Cut")
            .money("each", "Each")
            .count("storeCuts", "Store cuts")
            .money("storeCutting", "Store cutting")
            .money("cost", "Cost");
    for (PurchaseLine line : plan.purchase().lines()) {
      SheetStock stock = line.product().stock();
      rows.add(
          new Text(stock.name()),
          stock.length(),
          stock.width(),
          stock.nominalThickness(),
          new Count(line.bought()),
          new Count(line.used()),
          line.each(),
          new Count(line.cuts()),
          line.cutting(),
          line.cost().equals(Money.ZERO) ? new Text("on hand") : line.cost());
    }
    return rows.done();
  }

  Table kinds() {
    Table.Rows rows =
        new Table.Rows("pieces", "Pieces to cut")
            .text("kind", "Kind")
            .count("count", "Count")
            .count("spares", "Spares")
            .text("name", "What it is")
            .text("size", "Size")
            .column("thickness", "Thickness", Measure.GIVEN_LENGTH)
            .text("numbers", "Numbers")
            .text("onSheets", "On sheets");
    List<Demand> wanted = job.wanted();
    List<Demand> demands = job.demands();
    for (int i = 0; i < demands.size(); i++) {
      Demand demand = demands.get(i);
      rows.add(
          new Text(demand.piece().id()),
          new Count(demand.count()),
          new Count(demand.count() - wanted.get(i).count()),
          new Text(demand.piece().name()),
          new Text(size(demand.piece().shape())),
          Table.orNone(demand.piece().thickness()),
          new Text(numbers(demand.piece().id())),
          new Text(onSheets(demand)));
    }
    return rows.done();
  }

  private String size(Shape shape) {
    Shape blank = shape.blank();
    int holes = shape.outline().holes().size() - blank.outline().holes().size();
    String drilled = holes > 0 ? ", " + Figures.count(holes, "hole") : "";
    if (blank instanceof AnnularSector sector) {
      return "R "
          + figures.length(sector.innerRadius())
          + " to "
          + figures.length(sector.outerRadius())
          + ", "
          + sector.sweep()
          + drilled;
    }
    if (blank instanceof Strip strip) {
      return figures.length(strip.length()) + " x " + figures.length(strip.width()) + drilled;
    }
    Box box = blank.outline().box();
    return "within "
        + figures.length(Length.ofMillimetres(box.width()))
        + " x "
        + figures.length(Length.ofMillimetres(box.height()))
        + drilled;
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
    Table.Rows rows =
        new Table.Rows("piecesPerSheet", "Pieces per sheet")
            .text("kind", "Kind")
            .text("sheet", "Sheet")
            .count("found", "Per sheet")
            .count("soughtUpTo", "Looked for")
            .count("limit", "Limit")
            .text("standing", "Standing")
            .text("limitProof", "Proof of the limit")
            .text("how", "How");
    for (Capacity capacity : plan.capacities()) {
      rows.add(
          new Text(capacity.piece().id()),
          new Text(capacity.sheet().name()),
          new Count(capacity.found()),
          new Count(capacity.sought()),
          new Count(capacity.bound().count()),
          new Text(
              capacity.isProvenBest()
                  ? "proven best"
                  : capacity.isEnough() ? "all you need" : "best found"),
          new Text(capacity.bound().proof()),
          new Text(capacity.how()));
    }
    return rows.done();
  }

  Table cuts() {
    Table.Rows rows =
        new Table.Rows("cuts", "Layouts")
            .count("number", "Sheet")
            .text("sheet", "Cut from")
            .count("pieces", "Pieces")
            .text("kinds", "Kinds")
            .column("used", "Used", Measure.SHARE)
            .column("offcutLength", "Offcut length", Measure.OFFCUT)
            .column("offcutWidth", "Offcut width", Measure.OFFCUT)
            .text("numbers", "Numbers");
    List<List<String>> labels = plan.labels();
    for (int i = 0; i < plan.layouts().size(); i++) {
      Layout layout = plan.layouts().get(i);
      Optional<Box> offcut = Remnant.of(layout).map(Remnant::where);
      rows.add(
          new Count(i + 1),
          new Text(layout.sheet().name()),
          new Count(layout.placements().size()),
          new Text(content(layout)),
          new Share(layout.areaYield()),
          side(offcut.map(box -> Math.max(box.width(), box.height()))),
          side(offcut.map(box -> Math.min(box.width(), box.height()))),
          new Text(String.join(", ", labels.get(i))));
    }
    return rows.done();
  }

  private static Quantity side(Optional<Double> millimetres) {
    return Table.orNone(millimetres.map(Length::ofMillimetres));
  }

  private String content(Layout layout) {
    return job.demands().stream()
        .filter(demand -> layout.count(demand.piece()) > 0)
        .map(demand -> layout.count(demand.piece()) + " x " + demand.piece().id())
        .collect(Collectors.joining(", "));
  }

  Table remnants() {
    Table.Rows rows =
        new Table.Rows("remnants", "Offcuts kept in remnants.yaml for the next job")
            .count("count", "Count")
            .column("length", "Length", Measure.OFFCUT)
            .column("width", "Width", Measure.OFFCUT)
            .text("name", "What it is");
    for (SheetStock sheet : plan.stockAfter()) {
      rows.add(
          new Count(sheet.available().orElse(1)),
          sheet.length(),
          sheet.width(),
          new Text(sheet.name()));
    }
    return rows.done();
  }
}
