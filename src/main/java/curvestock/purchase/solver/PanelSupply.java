package curvestock.purchase.solver;

/**
 * A kind of panel that layouts lie on.
 *
 * @param breakdown index of the breakdown that it comes from
 * @param perSheet how many of it one sheet gives
 * @param area of one
 */
public record PanelSupply(int breakdown, int perSheet, long area) {}
