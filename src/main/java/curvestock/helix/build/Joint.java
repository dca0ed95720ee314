package curvestock.helix.build;

/**
 * Where two pieces of a layer meet.
 *
 * @param name as on schedule and drawing, for example {@code J3}
 * @param layer 1 for the lower layer
 * @param at distance along the line in millimetres; the middle of a half-lap
 */
public record Joint(String name, int layer, double at) {}
