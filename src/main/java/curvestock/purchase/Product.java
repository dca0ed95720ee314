package curvestock.purchase;

import curvestock.purchase.solver.Tier;
import curvestock.sheet.SheetStock;
import curvestock.units.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/**
 * A kind of sheet on offer with the seller's terms. {@code stock.price()} is the price of one below
 * the first break; {@code stock.available()} limits how many can be bought.
 *
 * @param minimumBuy fewest that are sold, if any are bought at all; 1 without such a rule
 * @param breaks by rising quantity and falling price; the reached price holds for all sheets
 * @param breakdowns the ways a sheet may leave the store, of which each bought sheet takes one;
 *     quantities count all of them together
 */
public record Product(
    SheetStock stock, int minimumBuy, List<PriceBreak> breaks, List<Breakdown> breakdowns) {

  /**
   * @throws IllegalArgumentException if the minimum buy is below 1 or above a stock that is not
   *     empty, the breaks do not rise in quantity and fall in price, or there is no breakdown
   */
  public Product {
    breaks = List.copyOf(breaks);
    breakdowns = List.copyOf(breakdowns);
    if (breakdowns.isEmpty()) {
      throw new IllegalArgumentException(
          stock.name() + " must leave the store in at least one way, but none was given");
    }
    if (minimumBuy < 1) {
      throw new IllegalArgumentException(
          "minimum buy of " + stock.name() + " must be at least 1, but was " + minimumBuy);
    }
    int available = stock.available().orElse(Integer.MAX_VALUE);
    if (available > 0 && minimumBuy > available) {
      throw new IllegalArgumentException(
          "minimum buy of %s must not exceed the %s available, but was %s"
              .formatted(stock.name(), available, minimumBuy));
    }
    PriceBreak last = new PriceBreak(2, stock.price());
    for (int i = 0; i < breaks.size(); i++) {
      PriceBreak next = breaks.get(i);
      if ((i > 0 && next.from() <= last.from()) || next.each().compareTo(last.each()) >= 0) {
        throw new IllegalArgumentException(
            "price breaks of %s must rise in quantity and fall in price, but %s for %s each follows %s each"
                .formatted(stock.name(), next.from(), next.each().plain(), last.each().plain()));
      }
      last = next;
    }
  }

  /** A sheet that is always carried whole. */
  public Product(SheetStock stock, int minimumBuy, List<PriceBreak> breaks) {
    this(stock, minimumBuy, breaks, List.of(Breakdown.whole(stock)));
  }

  /** A sheet sold one by one at one price. */
  public static Product of(SheetStock stock) {
    return new Product(stock, 1, List.of());
  }

  /** The same offer with another number available; its panels stay what layouts lie on. */
  public Product withAvailable(int count) {
    SheetStock more =
        new SheetStock(
            stock.name(),
            stock.outline(),
            stock.defects(),
            stock.thickness(),
            stock.nominalThickness(),
            stock.price(),
            OptionalInt.of(count),
            stock.grain());
    return new Product(more, minimumBuy, breaks, breakdowns);
  }

  /** Most sheets that can be used; {@link Integer#MAX_VALUE} for any number. */
  public int available() {
    return stock.available().orElse(Integer.MAX_VALUE);
  }

  /** Price of each sheet when {@code bought} are bought together. */
  public Money priceEach(int bought) {
    Money each = stock.price();
    for (PriceBreak step : breaks) {
      if (bought >= step.from()) {
        each = step.each();
      }
    }
    return each;
  }

  /** The least price that any quantity can reach; what lower bounds count with. */
  public Money leastPrice() {
    return priceEach(available());
  }

  /**
   * How many to buy when {@code used} are needed: the cheapest number that is at least {@code
   * used}, because the minimum buy or the next price break can make more sheets cost less. Of
   * equally cheap numbers the smallest.
   */
  public int toBuy(int used) {
    if (used == 0) {
      return 0;
    }
    int best = Math.max(used, minimumBuy);
    for (PriceBreak step : breaks) {
      if (step.from() > best
          && step.from() <= available()
          && total(step.from()).compareTo(total(best)) < 0) {
        best = step.from();
      }
    }
    return best;
  }

  /** Least money for which {@code used} sheets can be had; never falls as {@code used} rises. */
  public Money cost(int used) {
    return total(toBuy(used));
  }

  /** The least that the store's cuts in one sheet cost; zero if it may be carried whole. */
  public Money leastCutting() {
    return breakdowns.stream().map(Breakdown::cutting).min(Money::compareTo).orElse(Money.ZERO);
  }

  /** The prices by quantity, without quantities that are not sold. */
  List<Tier> tiers() {
    List<Tier> tiers = new ArrayList<>();
    Money each = stock.price();
    int from = 1;
    for (int t = 0; t <= breaks.size(); t++) {
      int to = t < breaks.size() ? breaks.get(t).from() - 1 : Integer.MAX_VALUE;
      Tier tier =
          new Tier(Math.max(from, minimumBuy), Math.min(to, available()), each.minorUnits());
      if (tier.from() <= tier.to()) {
        tiers.add(tier);
      }
      if (t < breaks.size()) {
        from = breaks.get(t).from();
        each = breaks.get(t).each();
      }
    }
    return tiers;
  }

  private Money total(int bought) {
    return priceEach(bought).times(bought);
  }
}
