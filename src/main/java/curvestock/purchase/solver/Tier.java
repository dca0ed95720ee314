package curvestock.purchase.solver;

/**
 * A price that holds for a range of quantities of one product.
 *
 * @param from fewest bought at this price
 * @param to most bought at this price
 * @param each price of each
 */
public record Tier(int from, int to, long each) {}
