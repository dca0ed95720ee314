package curvestock.purchase;

/**
 * Sheets of one product that leave the store in the same way.
 *
 * @param sheets how many; above zero
 */
public record BrokenSheets(Breakdown breakdown, int sheets) {}
