package curvestock.helix;

/**
 * A figure that the builder did not state and the plan took from the trade.
 *
 * @param field where it would be stated, for example {@code bottom.vertical-curve}
 * @param value as printed
 * @param reason where it comes from
 */
public record Assumption(String field, String value, String reason) {}
