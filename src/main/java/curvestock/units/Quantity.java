package curvestock.units;

/**
 * A figure that knows what it measures, so that whoever writes it can choose unit and rounding.
 *
 * <p>Tables and verdicts hold these; only a renderer makes text of them.
 */
public sealed interface Quantity permits Length, Angle, Money, Mass, Count, Share, Text {}
