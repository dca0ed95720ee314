package curvestock.plan;

import curvestock.job.Job;
import curvestock.layout.Layout;
import curvestock.purchase.BrokenSheets;
import curvestock.purchase.Panel;
import curvestock.purchase.Product;
import curvestock.purchase.PurchaseLine;
import curvestock.sheet.SheetStock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What lies in the rack once the plan is cut: remnants, sheets and panels not cut, old stock. */
final class StockAfter {

  private static final int LONGEST_NAME = 60;

  private final Job job;
  private final List<PurchaseLine> lines;
  private final List<Layout> layouts;
  private final List<SheetStock> stock = new ArrayList<>();

  StockAfter(Job job, List<PurchaseLine> lines, List<Layout> layouts) {
    this.job = job;
    this.lines = lines;
    this.layouts = layouts;
  }

  /** Sheets on hand, names all different, prices zero, each with how many there are. */
  List<SheetStock> list() {
    for (int i = 0; i < layouts.size(); i++) {
      String name = "rest of sheet " + (i + 1) + ", " + layouts.get(i).sheet().name();
      Remnant.of(layouts.get(i)).ifPresent(remnant -> add(remnant.stock(name), shortened(name), 1));
    }
    for (PurchaseLine line : lines) {
      add(line.product().stock(), "not cut, " + line.product().stock().name(), notCut(line));
      for (BrokenSheets way : line.broken()) {
        for (Panel panel : way.breakdown().panels()) {
          int left = way.sheets() * panel.perSheet() - cut(panel.stock());
          if (way.breakdown().isRipped()) {
            add(panel.stock(), "not cut, " + panel.stock().name(), left);
          }
        }
      }
    }
    for (SheetStock sheet : job.sheets()) {
      if (job.terms().isOnHand(sheet)) {
        add(sheet, sheet.name(), sheet.available().orElse(1) - used(sheet));
      }
    }
    return List.copyOf(stock);
  }

  private int notCut(PurchaseLine line) {
    return job.terms().isOnHand(line.product().stock()) ? 0 : line.bought() - line.used();
  }

  private int cut(SheetStock panel) {
    return (int) layouts.stream().filter(layout -> layout.sheet().equals(panel)).count();
  }

  private int used(SheetStock sheet) {
    Optional<PurchaseLine> line =
        lines.stream().filter(l -> l.product().stock().equals(sheet)).findFirst();
    return line.map(PurchaseLine::used).orElse(0);
  }

  private void add(SheetStock sheet, String name, int count) {
    if (count > 0) {
      stock.add(Product.of(sheet).withAvailable(count).stock().named(shortened(name)));
    }
  }

  private static String shortened(String name) {
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME).strip();
  }
}
