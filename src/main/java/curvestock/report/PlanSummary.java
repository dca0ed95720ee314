package curvestock.report;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.piece.Demand;
import curvestock.plan.Capacity;
import curvestock.plan.Plan;
import curvestock.sheet.SheetStock;
import curvestock.units.LengthStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The short summary of a plan, a line a fact. */
public final class PlanSummary {

  private final Plan plan;
  private final Job job;
  private final LengthStyle style;

  private PlanSummary(Plan plan) {
    this.plan = plan;
    this.job = plan.job();
    this.style = job.style();
  }

  public static List<String> of(Plan plan) {
    return new PlanSummary(plan).lines();
  }

  private List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(job.title() + (job.invented() ? "  [invented data]" : ""));
    job.structure()
        .map(order -> new HelixReport(job, order, Optional.of(plan), false))
        .ifPresent(report -> lines.addAll(HelixSummary.warnings(report)));
    MachineNotes.overTheEdge(job).ifPresent(lines::add);
    lines.add("");
    pieces(lines);
    lines.addAll(new BuyLines(plan).lines());
    capacities(lines);
    sheets(lines);
    if (plan.stopped()) {
      lines.add("");
      lines.add("Stopped early: this is the best found so far; a full run may find better.");
    }
    return lines;
  }

  private void pieces(List<String> lines) {
    lines.add("Pieces to cut");
    List<Demand> wanted = job.wanted();
    for (int i = 0; i < wanted.size(); i++) {
      Demand demand = job.demands().get(i);
      int spare = demand.count() - wanted.get(i).count();
      lines.add(
          String.format(
              Locale.ROOT,
              "  %4d x %s  %s%s%s",
              demand.count(),
              demand.piece().id(),
              demand.piece().name(),
              demand
                  .piece()
                  .thickness()
                  .map(t -> ", " + style.formatGiven(t) + " thick")
                  .orElse(""),
              spare > 0
                  ? ", " + spare + (spare == 1 ? " of them a spare" : " of them spares")
                  : ""));
    }
  }

  private void capacities(List<String> lines) {
    lines.add("");
    lines.add("Pieces per sheet");
    for (Capacity capacity : plan.capacities()) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %4d of %s on %s: %s",
              capacity.found(),
              capacity.piece().id(),
              capacity.sheet().name(),
              verdict(capacity)));
    }
    List<String> proofs =
        plan.capacities().stream().map(capacity -> capacity.bound().proof()).distinct().toList();
    proofs.forEach(proof -> lines.add("  Limits are proven " + proof + "."));
  }

  private static String verdict(Capacity capacity) {
    String limit = "no layout holds more than " + capacity.bound().count();
    if (capacity.isProvenBest()) {
      return "proven best possible";
    }
    return capacity.isEnough() ? "all that are wanted; " + limit : limit;
  }

  private void sheets(List<String> lines) {
    lines.add("");
    lines.add("Layouts");
    int number = 1;
    for (Layout layout : plan.layouts()) {
      List<String> parts = new ArrayList<>();
      for (Demand demand : job.demands()) {
        int count = layout.count(demand.piece());
        if (count > 0) {
          parts.add(count + " x " + demand.piece().id());
        }
      }
      lines.add(
          String.format(
              Locale.ROOT,
              "  sheet %d, %s: %s; %s of the sheet becomes pieces; left over: %s",
              number++,
              layout.sheet().name(),
              String.join(", ", parts),
              percent(layout.areaYield()),
              Leftover.of(layout).describe(style)));
    }
    lines.add("  all sheets: " + percent(plan.areaYield()) + " becomes pieces");
    left(lines);
  }

  private void left(List<String> lines) {
    List<SheetStock> stock = plan.stockAfter();
    if (stock.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("Left over, kept in remnants.yaml for the next job");
    for (SheetStock sheet : stock) {
      lines.add(
          String.format(
              Locale.ROOT,
              "  %4d x %s x %s  %s",
              sheet.available().orElse(1),
              style.formatDown(sheet.length()),
              style.formatDown(sheet.width()),
              sheet.name()));
    }
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
