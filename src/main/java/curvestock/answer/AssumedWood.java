package curvestock.answer;

import curvestock.helix.HelixOrder;
import curvestock.helix.HelixPlan;
import curvestock.helix.build.ShoppingItem;
import curvestock.helix.build.Weight;
import curvestock.helix.spec.HelixSpec;
import curvestock.job.Job;
import curvestock.piece.Demand;
import curvestock.sheet.SheetStock;
import curvestock.units.Mass;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the plywood costs that only assumed values ask for: straight leads and plates.
 *
 * @param leads area of assumed straights, in square millimetres
 * @param plates area of assumed plates
 * @param money their share of the price of a sheet
 */
record AssumedWood(double leads, double plates, Mass weight, Money money) {

  private static final String SCREWS = "joint.plate.screws-each-side";

  /** Empty if nothing assumed takes plywood. */
  static Optional<AssumedWood> of(Job job, HelixOrder order) {
    HelixPlan plan = order.plan();
    HelixSpec spec = plan.spec();
    double width = spec.ground().width().millimetres() * spec.construction().layers();
    double leads =
        (isAssumed(order, "bottom.lead-in") ? spec.bottom().leadIn().millimetres() * width : 0)
            + (isAssumed(order, "top.lead-in") ? spec.top().leadIn().millimetres() * width : 0);
    boolean assumedPlates =
        order.assumed().stream()
            .anyMatch(each -> each.field().matches("joint|joint\\.(plate|side-plates)\\.length"));
    double plates =
        assumedPlates
            ? plan.smallParts().stream()
                .filter(demand -> demand.piece().name().contains("plate"))
                .mapToDouble(AssumedWood::area)
                .sum()
            : 0;
    if (leads + plates == 0) {
      return Optional.empty();
    }
    SheetStock sheet = job.sheets().get(0);
    double share = (leads + plates) / sheet.area();
    return Optional.of(
        new AssumedWood(
            leads,
            plates,
            new Mass(new Weight(spec.woodDensity()).ofWood(leads + plates, sheet.thickness())),
            new Money(Math.round(share * sheet.price().minorUnits()))));
  }

  private static boolean isAssumed(HelixOrder order, String field) {
    return order.assumed().stream().anyMatch(each -> each.field().equals(field));
  }

  private static double area(Demand demand) {
    return demand.count() * demand.piece().shape().area();
  }

  /**
   * What else the job does not say and the shop is paid for: the supports, and the screws of
   * assumed joints, each with the price where one is known. Empty if the job states them.
   */
  static String bought(HelixOrder order, Figures figures) {
    List<String> parts = new ArrayList<>();
    boolean supports = isAssumed(order, "supports.per-turn") || isAssumed(order, "supports");
    boolean screws = isAssumed(order, "joint") || isAssumed(order, SCREWS);
    for (ShoppingItem item : order.plan().shopping().items()) {
      boolean small = item.name().equals("screws") || item.name().contains("plate");
      boolean glue = item.name().equals("glue");
      if (!glue && (small ? screws : supports)) {
        String price = item.price().map(figures::money).orElse("no price given");
        parts.add(item.quantity() + " × " + item.name() + " (" + price + ")");
      }
    }
    String turn = order.plan().spec().supports().perTurn() + " supports per turn";
    String assumed = supports ? turn + (screws ? " and joints" : "") : "joints";
    return parts.isEmpty()
        ? ""
        : "The assumed %s need %s.".formatted(assumed, String.join(", ", parts));
  }

  /** In a sentence. */
  String words(Figures figures) {
    String what =
        plates == 0 ? "straight leads" : leads == 0 ? "plates" : "straight leads and plates";
    String cost =
        money.equals(Money.ZERO)
            ? ""
            : ", about %s of a sheet's price".formatted(figures.money(money));
    return "The assumed %s take %s of plywood%s; give your own sizes if you know them."
        .formatted(what, figures.weight(weight), cost);
  }
}
