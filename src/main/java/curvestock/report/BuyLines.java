package curvestock.report;

import curvestock.job.Job;
import curvestock.plan.Plan;
import curvestock.purchase.Breakdown;
import curvestock.purchase.BrokenSheets;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.purchase.Purchase;
import curvestock.purchase.PurchaseLine;
import curvestock.sheet.SheetStock;
import curvestock.units.LengthStyle;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What to buy, how the store is to rip it, what it costs, and what of that is proven. */
final class BuyLines {

  private final Plan plan;
  private final Job job;
  private final LengthStyle style;
  private final Purchase purchase;

  BuyLines(Plan plan) {
    this.plan = plan;
    this.job = plan.job();
    this.style = job.style();
    this.purchase = plan.purchase();
  }

  List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add("Sheets");
    for (PurchaseLine line : purchase.lines()) {
      lines.add(bought(line));
      for (BrokenSheets way : line.broken()) {
        if (way.breakdown().isRipped()) {
          lines.add(ripped(way));
        }
      }
    }
    lines.add(cost());
    plan.carriedWhole().ifPresent(whole -> lines.add(comparison(whole)));
    lines.addAll(unused());
    return lines;
  }

  private String bought(PurchaseLine line) {
    SheetStock stock = line.product().stock();
    Money sheets = line.each().times(line.bought());
    return String.format(
        Locale.ROOT,
        "  %4d x %s (%s x %s x %s)  %s%s%s",
        line.bought(),
        stock.name(),
        style.format(stock.length()),
        style.format(stock.width()),
        style.formatGiven(stock.nominalThickness()),
        sheets.minorUnits() == 0 ? "on hand" : money(sheets),
        line.each().equals(stock.price()) ? "" : " (" + money(line.each()) + " each)",
        line.bought() > line.used() ? ", " + line.used() + " of them cut" : "");
  }

  private String ripped(BrokenSheets way) {
    Breakdown breakdown = way.breakdown();
    String panels =
        breakdown.panels().stream().map(this::described).collect(Collectors.joining(" and "));
    int cuts = breakdown.cuts() * way.sheets();
    Money price = breakdown.cutting().times(way.sheets());
    boolean free = isForBed() && price.minorUnits() == 0;
    return String.format(
        Locale.ROOT,
        "         %s %s into %s: %d cut%s%s",
        isForBed() ? "for the machine's bed rip" : "the store rips",
        way.sheets() == 1 ? "one" : way.sheets() + ", each",
        panels,
        cuts,
        cuts == 1 ? "" : "s",
        free ? "" : ", " + money(price));
  }

  private boolean isForBed() {
    return job.machine().bed().isPresent();
  }

  private String described(Panel panel) {
    String name = panel.stock().name();
    return panel.perSheet()
        + " x "
        + name.substring(name.lastIndexOf("panel "))
        + " of at least "
        + style.format(panel.stock().length())
        + " x "
        + style.format(panel.stock().width());
  }

  /** The proof stands beside the sum that is paid, tax and all. */
  private String cost() {
    Money net = purchase.sheetCost();
    Money gross = job.terms().tax().gross(net);
    Money gap = gross.minus(job.terms().tax().gross(purchase.bound().money()));
    String tax =
        job.terms().tax().isNone()
            ? ""
            : " + " + job.terms().tax() + " tax " + money(gross.minus(net)) + " = " + money(gross);
    String buy = net.equals(Money.ZERO) ? "nothing to buy; " : "";
    return "  Cost " + money(net) + tax + ": " + buy + Purchase.gapSentence(gap, job.currency());
  }

  private String comparison(Purchase whole) {
    int more = purchase.sheets() - whole.sheets();
    Money dearer =
        job.terms()
            .tax()
            .gross(purchase.sheetCost())
            .minus(job.terms().tax().gross(whole.sheetCost()));
    String carried =
        (isForBed()
                ? "  On a machine that takes them whole it would be "
                : "  Carried whole it would be ")
            + whole.sheets()
            + (whole.sheets() == 1 ? " sheet" : " sheets")
            + " for "
            + money(job.terms().tax().gross(whole.sheetCost()))
            + ": ";
    if (more <= 0 && dearer.compareTo(Money.ZERO) <= 0) {
      return carried + "ripping costs nothing.";
    }
    return carried
        + "ripping costs "
        + (more > 0 ? more + (more == 1 ? " sheet, " : " sheets, ") : "")
        + money(dearer)
        + (isForBed() ? " in all." : " in all; delivery for less would be cheaper.");
  }

  /** Sheets that nothing is cut from because no piece has their thickness. */
  private List<String> unused() {
    List<String> lines = new ArrayList<>();
    for (Product product : job.wholeProducts()) {
      boolean asked =
          job.demands().stream().anyMatch(demand -> job.suits(demand.piece(), product.stock()));
      if (!asked) {
        lines.add(
            "  Not used: "
                + product.stock().name()
                + " is "
                + style.formatGiven(product.stock().thickness())
                + " thick, and no piece asks for that.");
      }
    }
    return lines;
  }

  private String money(Money amount) {
    return amount.format(job.currency());
  }
}
