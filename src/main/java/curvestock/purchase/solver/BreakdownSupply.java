package curvestock.purchase.solver;

/**
 * A way in which a sheet becomes panels.
 *
 * @param product index of the product whose sheets it takes
 * @param cutting money for each sheet, beyond its price
 */
public record BreakdownSupply(int product, long cutting) {}
