package curvestock.helix.build;

import curvestock.units.Money;
import java.util.Optional;

/**
 * Something to buy besides sheets.
 *
 * @param name what
 * @param quantity how much
 * @param unit of the quantity, for example {@code boards} or {@code g}; empty if the name says it
 * @param price of the whole quantity, if known
 * @param note where the quantity comes from
 */
public record ShoppingItem(
    String name, long quantity, String unit, Optional<Money> price, String note) {}
